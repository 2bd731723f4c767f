package clip

import (
	"encoding/binary"
	"image"
	"math/bits"
)

// The pieces of a GIF file: CompuServe, Graphics Interchange Format, Version
// 89a (1990). Numbers are little-endian.

const gifTrailer = 0x3B

// indexBits is the width of an index into a palette of n colours: 2 to 8.
func indexBits(n int) int { return max(bits.Len(uint(n-1)), 2) }

// gifHeader is the start of a file that repeats for ever: header, screen, global
// colour table with room for a transparent index, and the application extension NETSCAPE2.0 with 0 repeats.
func gifHeader(width, height int, palette []rgb) []byte {
	size := indexBits(len(palette) + 1)
	b := []byte("GIF89a")
	b = binary.LittleEndian.AppendUint16(b, uint16(width))
	b = binary.LittleEndian.AppendUint16(b, uint16(height))
	b = append(b, 0x80|0x70|byte(size-1), 0, 0) // a global table of 8-bit colours; background; no aspect
	for i := range 1 << size {
		c := rgb(0)
		if i < len(palette) {
			c = palette[i]
		}
		b = append(b, byte(c>>16), byte(c>>8), byte(c))
	}
	b = append(b, 0x21, 0xFF, 11)
	b = append(b, "NETSCAPE2.0"...)
	return append(b, 3, 1, 0, 0, 0)
}

// gifFrame is the start of a picture laid over a box of the one before for a
// number of hundredths of a second: graphic control, image descriptor, and the
// width of the indices.
func gifFrame(box image.Rectangle, hundredths int, transparent byte, bits int) []byte {
	b := []byte{0x21, 0xF9, 4, 1<<2 | 1} // stays when the next comes; has a transparent index
	b = binary.LittleEndian.AppendUint16(b, uint16(hundredths))
	b = append(b, transparent, 0, 0x2C)
	for _, v := range [4]int{box.Min.X, box.Min.Y, box.Dx(), box.Dy()} {
		b = binary.LittleEndian.AppendUint16(b, uint16(v))
	}
	return append(b, 0, byte(bits))
}

// appendSubBlocks appends data in blocks of at most 255 bytes and an empty one.
func appendSubBlocks(b, data []byte) []byte {
	for len(data) > 0 {
		n := min(len(data), 255)
		b = append(b, byte(n))
		b = append(b, data[:n]...)
		data = data[n:]
	}
	return append(b, 0)
}
