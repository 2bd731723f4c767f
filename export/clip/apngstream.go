package clip

import (
	"encoding/binary"
	"hash/crc32"
	"image"
)

// The pieces of an animated PNG file: W3C, Portable Network Graphics (PNG)
// Specification (Third Edition, 2025), which has animation. Numbers are
// big-endian.

func appendChunk(b []byte, kind string, data []byte) []byte {
	b = binary.BigEndian.AppendUint32(b, uint32(len(data)))
	from := len(b)
	b = append(append(b, kind...), data...)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(b[from:]))
}

func bigEndian(numbers ...int) []byte {
	var b []byte
	for _, n := range numbers {
		b = binary.BigEndian.AppendUint32(b, uint32(n))
	}
	return b
}

// apngHead is the start of a file of a number of frames that repeats for ever.
func apngHead(width, height, frames int) []byte {
	b := appendChunk([]byte("\x89PNG\r\n\x1a\n"), "IHDR", append(bigEndian(width, height), 8, 6, 0, 0, 0)) // red, green, blue, alpha
	return appendChunk(b, "acTL", bigEndian(frames, 0))
}

// apngFrame is frame i in a box, shown for one fps-th of a second. It replaces
// what it covers, or is laid over it.
func apngFrame(i int, box image.Rectangle, fps int, replaces bool, packed []byte) []byte {
	order := max(2*i-1, 0) // of the chunks that have a number: one for the first frame, two for every other
	control := append(bigEndian(order, box.Dx(), box.Dy(), box.Min.X, box.Min.Y), 0, 1, 0, byte(fps), 0, 1)
	if replaces || i == 0 {
		control[len(control)-1] = 0
	}
	b := appendChunk(make([]byte, 0, len(packed)+64), "fcTL", control)
	if i == 0 {
		return appendChunk(b, "IDAT", packed)
	}
	return appendChunk(b, "fdAT", append(bigEndian(order+1), packed...))
}
