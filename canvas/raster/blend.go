package raster

import (
	"encoding/binary"
	"image"
	"image/color"
)

// blend lays a colour on the pixels of img in a part of a box through a mask whose
// corner is that of the box. Most masks are nothing or everything for long
// stretches, which are taken eight pixels at a time.
func blend(img *image.RGBA, box, in image.Rectangle, mask *image.Alpha, c color.NRGBA) {
	for y := in.Min.Y; y < in.Max.Y; y++ {
		from := (y-box.Min.Y)*mask.Stride + in.Min.X - box.Min.X
		at := img.PixOffset(in.Min.X, y)
		blendRow(img.Pix[at:at+4*in.Dx()], mask.Pix[from:from+in.Dx()], c)
	}
}

const everything = 1<<64 - 1 // eight full bytes of a mask

func blendRow(pix, mask []byte, c color.NRGBA) {
	solid := uint64(c.R) | uint64(c.G)<<8 | uint64(c.B)<<16 | 0xFF<<24
	solid |= solid << 32
	for len(mask) >= 8 {
		switch eight := binary.LittleEndian.Uint64(mask); {
		case eight == 0:
		case eight == everything && c.A == 255:
			for i := 0; i < 32; i += 8 {
				binary.LittleEndian.PutUint64(pix[i:], solid)
			}
		default:
			blendPixels(pix[:32], mask[:8], c)
		}
		pix, mask = pix[32:], mask[8:]
	}
	blendPixels(pix, mask, c)
}

func blendPixels(pix, mask []byte, c color.NRGBA) {
	for i, m := range mask {
		if m == 0 {
			continue
		}
		k := part(uint32(m) * uint32(c.A))
		p := pix[4*i : 4*i+4 : 4*i+4]
		p[0] = uint8(part(uint32(p[0])*(255-k) + uint32(c.R)*k))
		p[1] = uint8(part(uint32(p[1])*(255-k) + uint32(c.G)*k))
		p[2] = uint8(part(uint32(p[2])*(255-k) + uint32(c.B)*k))
		p[3] = uint8(part(uint32(p[3])*(255-k) + 255*k))
	}
}

// part is v/255, rounded, for v up to 255 squared.
func part(v uint32) uint32 {
	v += 128
	return (v + v>>8) >> 8
}
