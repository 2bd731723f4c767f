package clip

import "encoding/hex"

// The tables of ITU-T T.81 (JPEG), annex K: K.1 and K.2 in zigzag order, and the
// usual Huffman codes K.3 to K.6.

// baseQuant are the steps of brightness and of colour at quality 50.
var baseQuant = [2][64]int32{{
	16, 11, 12, 14, 12, 10, 16, 14, 13, 14, 18, 17, 16, 19, 24, 40,
	26, 24, 22, 22, 24, 49, 35, 37, 29, 40, 58, 51, 61, 60, 57, 51,
	56, 55, 64, 72, 92, 78, 64, 68, 87, 69, 55, 56, 80, 109, 81, 87,
	95, 98, 103, 104, 103, 62, 77, 113, 121, 112, 100, 120, 92, 101, 103, 99,
}, {
	17, 18, 18, 24, 21, 24, 47, 26, 26, 47, 99, 66, 56, 66, 99, 99,
	99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
	99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
	99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
}}

// zigzag is where in a block, row by row, the coefficients stand in their order.
var zigzag = [64]uint8{
	0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5,
	12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14, 21, 28,
	35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51,
	58, 59, 52, 45, 38, 31, 39, 46, 53, 60, 61, 54, 47, 55, 62, 63,
}

// scaledQuant are the steps at a quality of 50 to 100, as the Independent JPEG
// Group scales them.
func scaledQuant(quality int32) [2][64]int32 {
	scaled, scale := baseQuant, 200-2*quality
	for i := range scaled {
		for k, v := range scaled[i] {
			scaled[i][k] = min(max((v*scale+50)/100, 1), 255)
		}
	}
	return scaled
}

// huffman is a table of codes: how many there are of each length from 1 bit on,
// and what they stand for.
type huffman struct {
	class  byte // as the file numbers it: 0 DC, 0x10 AC, plus 1 for colour
	counts [16]byte
	values []byte
}

// usual are the tables that suit pictures of all kinds: DC and AC of brightness,
// then of colour.
var usual = tables{
	{0x00, [16]byte{0, 1, 5, 1, 1, 1, 1, 1, 1}, mustHex("000102030405060708090a0b")},
	{0x10, [16]byte{0, 2, 1, 3, 3, 2, 4, 3, 5, 5, 4, 4, 0, 0, 1, 125}, mustHex(
		"0102030004110512213141061351610722711432" + "8191a1082342b1c11552d1f02433627282090a16" +
			"1718191a25262728292a3435363738393a434445" + "464748494a535455565758595a63646566676869" +
			"6a737475767778797a838485868788898a929394" + "95969798999aa2a3a4a5a6a7a8a9aab2b3b4b5b6" +
			"b7b8b9bac2c3c4c5c6c7c8c9cad2d3d4d5d6d7d8" + "d9dae1e2e3e4e5e6e7e8e9eaf1f2f3f4f5f6f7f8" + "f9fa")},
	{0x01, [16]byte{0, 3, 1, 1, 1, 1, 1, 1, 1, 1, 1}, mustHex("000102030405060708090a0b")},
	{0x11, [16]byte{0, 2, 1, 2, 4, 4, 3, 4, 7, 5, 4, 4, 0, 1, 2, 119}, mustHex(
		"0001020311040521310612415107617113223281" + "08144291a1b1c109233352f0156272d10a162434" +
			"e125f11718191a262728292a35363738393a4344" + "45464748494a535455565758595a636465666768" +
			"696a737475767778797a82838485868788898a92" + "939495969798999aa2a3a4a5a6a7a8a9aab2b3b4" +
			"b5b6b7b8b9bac2c3c4c5c6c7c8c9cad2d3d4d5d6" + "d7d8d9dae2e3e4e5e6e7e8e9eaf2f3f4f5f6f7f8" + "f9fa")},
}

func mustHex(s string) []byte {
	b, err := hex.DecodeString(s)
	if err != nil {
		panic(err) // a table above is mistyped
	}
	return b
}

// code is a Huffman code: its bits and how many.
type code struct {
	bits uint32
	n    uint8
}

// codes are the table's codes by what they stand for.
func (h huffman) codes() (all [256]code) {
	next, k := uint32(0), 0
	for i, count := range h.counts {
		for range count {
			all[h.values[k]] = code{next, uint8(i + 1)}
			next++
			k++
		}
		next <<= 1
	}
	return all
}
