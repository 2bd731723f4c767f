package clip

import (
	"encoding/binary"
	"image"

	"homeside/canvas/raster"
	"homeside/internal/large"
)

// deep is a picture as planes of 10 bits in two bytes each: brightness and two
// colours for every pixel (ITU-R BT.709, 64 to 940 and 64 to 960), and alpha from
// 0 to 1023 if it is asked for. With alpha, colours are straight.
type deep struct {
	width, height int
	clear         bool
	pix           []byte
}

func newDeep(width, height int, clear bool) *deep {
	count := 3
	if clear {
		count = 4
	}
	return &deep{width, height, clear, large.Bytes(2 * count * width * height)}
}

func (d *deep) bytes() []byte { return d.pix }

func (d *deep) update(img *image.RGBA, changed *raster.Tiles) {
	for box := range changed.Boxes() {
		for y := box.Min.Y; y < box.Max.Y; y++ {
			for x := box.Min.X; x < box.Max.X; x++ {
				d.pixel(img.Pix[img.PixOffset(x, y):][:4], y*d.width+x)
			}
		}
	}
}

// pixel takes over one. The weights are 65536ths.
func (d *deep) pixel(c []byte, at int) {
	r, g, b := int(c[0]), int(c[1]), int(c[2])
	if a := int(c[3]); d.clear && a < 255 {
		r, g, b = straight(r, a), straight(g, a), straight(b, a)
	}
	d.put(0, at, (47864*r+161018*g+16255*b+64<<16+1<<15)>>16)
	d.put(1, at, (-26383*r-88755*g+115138*b+512<<16+1<<15)>>16)
	d.put(2, at, (115138*r-104580*g-10558*b+512<<16+1<<15)>>16)
	if d.clear {
		d.put(3, at, (int(c[3])*1023+127)/255)
	}
}

func (d *deep) put(plane, at, v int) {
	binary.LittleEndian.PutUint16(d.pix[2*(plane*d.width*d.height+at):], uint16(v))
}
