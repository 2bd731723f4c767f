package clip

import (
	"image"

	"homeside/canvas/raster"
	"homeside/internal/large"
)

// planes is a picture of even sides as video has it: brightness, then the two
// colours at half the size (ITU-R BT.709, 16 to 235 and 16 to 240), and alpha if
// it is asked for. With alpha, colours are straight.
type planes struct {
	width, height int
	clear         bool
	pix           []byte
}

func newPlanes(width, height int, clear bool) *planes {
	size := width * height * 3 / 2
	if clear {
		size += width * height
	}
	return &planes{width, height, clear, large.Bytes(size)}
}

func (p *planes) bytes() []byte { return p.pix }

func (p *planes) update(img *image.RGBA, changed *raster.Tiles) {
	for box := range changed.Boxes() {
		for y := box.Min.Y; y < box.Max.Y; y += 2 {
			for x := box.Min.X; x < box.Max.X; x += 2 {
				if p.clear {
					p.clearFour(img, x, y)
				} else {
					p.four(img, x, y)
				}
			}
		}
	}
}

// four takes over two pixels by two.
func (p *planes) four(img *image.RGBA, x, y int) {
	var r, g, b int
	for _, at := range [4]image.Point{{x, y}, {x + 1, y}, {x, y + 1}, {x + 1, y + 1}} {
		c := img.Pix[img.PixOffset(at.X, at.Y):]
		pr, pg, pb := int(c[0]), int(c[1]), int(c[2])
		p.pix[at.Y*p.width+at.X] = brightness(pr, pg, pb)
		r, g, b = r+pr, g+pg, b+pb
	}
	p.colour(x, y, r, g, b)
}

// clearFour takes over two pixels by two with their alpha. A pixel of which
// nothing is seen has the colour of those beside it, so that no edge has a seam
// of another colour after packing.
func (p *planes) clearFour(img *image.RGBA, x, y int) {
	var sum [4]int // premultiplied
	places := [4]image.Point{{x, y}, {x + 1, y}, {x, y + 1}, {x + 1, y + 1}}
	for _, at := range places {
		for k, v := range img.Pix[img.PixOffset(at.X, at.Y):][:4] {
			sum[k] += int(v)
		}
	}
	var mean [3]int
	for k := range mean {
		mean[k] = straight(sum[k], sum[3])
	}
	alpha := p.pix[p.width*p.height*3/2:]
	for _, at := range places {
		c := img.Pix[img.PixOffset(at.X, at.Y):][:4]
		rgb := mean
		if a := int(c[3]); a > 0 {
			rgb = [3]int{straight(int(c[0]), a), straight(int(c[1]), a), straight(int(c[2]), a)}
		}
		p.pix[at.Y*p.width+at.X] = brightness(rgb[0], rgb[1], rgb[2])
		alpha[at.Y*p.width+at.X] = c[3]
	}
	p.colour(x, y, 4*mean[0], 4*mean[1], 4*mean[2])
}

// straight is a colour with the alpha taken out, rounded; 0 without alpha.
func straight(v, alpha int) int {
	if alpha == 0 {
		return 0
	}
	return min((v*255+alpha/2)/alpha, 255)
}

// brightness and colour have weights of 65536ths; r, g and b of colour are sums
// of four.
func brightness(r, g, b int) uint8 {
	return uint8((11966*r + 40254*g + 4064*b + 16<<16 + 1<<15) >> 16)
}

func (p *planes) colour(x, y, r, g, b int) {
	at := p.width*p.height + y/2*(p.width/2) + x/2
	p.pix[at] = uint8((-6596*r - 22189*g + 28784*b + 512<<16 + 1<<17) >> 18)
	p.pix[at+p.width*p.height/4] = uint8((28784*r - 26145*g - 2639*b + 512<<16 + 1<<17) >> 18)
}
