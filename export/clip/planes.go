package clip

import (
	"image"

	"homeside/canvas/raster"
)

// planes is a picture of even sides as video has it: brightness, then the two
// colours at half the size (ITU-R BT.709, 16 to 235 and 16 to 240).
type planes struct {
	width, height int
	pix           []byte
}

func newPlanes(img *image.RGBA) *planes {
	p := &planes{width: img.Rect.Dx(), height: img.Rect.Dy()}
	p.pix = make([]byte, p.width*p.height*3/2)
	all := raster.NewTiles(p.width, p.height)
	all.Fill()
	p.update(img, all)
	return p
}

// update takes over the tiles that changed.
func (p *planes) update(img *image.RGBA, changed *raster.Tiles) {
	for box := range changed.Boxes() {
		for y := box.Min.Y; y < box.Max.Y; y += 2 {
			for x := box.Min.X; x < box.Max.X; x += 2 {
				p.four(img, x, y)
			}
		}
	}
}

// four takes over two pixels by two. The weights are 65536ths.
func (p *planes) four(img *image.RGBA, x, y int) {
	var r, g, b int
	for _, at := range [4]image.Point{{x, y}, {x + 1, y}, {x, y + 1}, {x + 1, y + 1}} {
		c := img.Pix[img.PixOffset(at.X, at.Y):]
		pr, pg, pb := int(c[0]), int(c[1]), int(c[2])
		p.pix[at.Y*p.width+at.X] = uint8((11966*pr + 40254*pg + 4064*pb + 16<<16 + 1<<15) >> 16)
		r, g, b = r+pr, g+pg, b+pb
	}
	at := p.width*p.height + y/2*(p.width/2) + x/2
	p.pix[at] = uint8((-6596*r - 22189*g + 28784*b + 512<<16 + 1<<17) >> 18)
	p.pix[at+p.width*p.height/4] = uint8((28784*r - 26145*g - 2639*b + 512<<16 + 1<<17) >> 18)
}
