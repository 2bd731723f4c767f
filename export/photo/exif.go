package photo

import (
	"bytes"
	"encoding/binary"
	"image"
)

// way is how a camera was held: the value of Exif's orientation tag, 1 to 8 (Exif
// 2.32, CIPA DC-008, 4.6.4 A). What each does to the picture is in TIFF 6.0, p. 36.
type way uint8

const upright way = 1

// orientation is that of a JPEG file; upright where it says none.
func orientation(data []byte) way {
	if !bytes.HasPrefix(data, []byte{0xff, 0xd8}) {
		return upright
	}
	for at := 2; at+4 <= len(data) && data[at] == 0xff && data[at+1] != 0xda; {
		size := int(binary.BigEndian.Uint16(data[at+2:]))
		end := at + 2 + size
		if size < 2 || end > len(data) {
			break
		}
		const app1, exif = 0xe1, "Exif\x00\x00"
		if body := data[at+4 : end]; data[at+1] == app1 && bytes.HasPrefix(body, []byte(exif)) {
			return tagged(body[len(exif):])
		}
		at = end
	}
	return upright
}

// tagged looks for the orientation in the first directory of a TIFF header.
func tagged(tiff []byte) way {
	var order binary.ByteOrder
	switch {
	case bytes.HasPrefix(tiff, []byte("II*\x00")):
		order = binary.LittleEndian
	case bytes.HasPrefix(tiff, []byte("MM\x00*")):
		order = binary.BigEndian
	default:
		return upright
	}
	if len(tiff) < 8 {
		return upright
	}
	const entry, orientationTag, short = 12, 0x0112, 3
	at := int64(order.Uint32(tiff[4:]))
	if at+2 > int64(len(tiff)) {
		return upright
	}
	n := int64(order.Uint16(tiff[at:]))
	for i := range n {
		e := at + 2 + i*entry
		if e+entry > int64(len(tiff)) {
			break
		}
		if order.Uint16(tiff[e:]) == orientationTag && order.Uint16(tiff[e+2:]) == short {
			if w := way(order.Uint16(tiff[e+8:])); w >= 1 && w <= 8 {
				return w
			}
		}
	}
	return upright
}

// lies says whether the stored rows are the picture's columns.
func (w way) lies() bool { return w >= 5 }

// turn puts a picture upright.
func (w way) turn(img *image.RGBA) *image.RGBA {
	if w == upright {
		return img
	}
	size := img.Rect.Size()
	out := image.NewRGBA(image.Rect(0, 0, size.X, size.Y))
	if w.lies() {
		out = image.NewRGBA(image.Rect(0, 0, size.Y, size.X))
	}
	for y := range out.Rect.Dy() {
		for x := range out.Rect.Dx() {
			sx, sy := w.stored(x, y, size)
			copy(out.Pix[out.PixOffset(x, y):][:4], img.Pix[img.PixOffset(sx, sy):][:4])
		}
	}
	return out
}

// stored is where a pixel of the upright picture stands in the stored one.
func (w way) stored(x, y int, size image.Point) (int, int) {
	if w.lies() {
		x, y = y, x
	}
	if w == 2 || w == 3 || w == 7 || w == 8 {
		x = size.X - 1 - x
	}
	if w == 3 || w == 4 || w == 6 || w == 7 {
		y = size.Y - 1 - y
	}
	return x, y
}
