package raster

import (
	"image"
	"math"

	"golang.org/x/image/draw"

	"homeside/canvas"
)

// images keeps images at the sizes that they are drawn in. Its zero value is ready;
// it is not safe for two goroutines at once.
type images struct{ scaled map[imageKey]*image.RGBA }

type imageKey struct {
	pix  *image.NRGBA
	w, h int
}

// mostImages is how many are kept: an image whose size changes from frame to frame
// must not fill the memory.
const mostImages = 16

// of is an image scaled to a size in pixels.
func (g *images) of(pix *image.NRGBA, size image.Point) *image.RGBA {
	key := imageKey{pix, size.X, size.Y}
	if img, ok := g.scaled[key]; ok {
		return img
	}
	if g.scaled == nil || len(g.scaled) >= mostImages {
		g.scaled = map[imageKey]*image.RGBA{}
	}
	img := image.NewRGBA(image.Rectangle{Max: size})
	draw.CatmullRom.Scale(img, img.Rect, pix, pix.Rect, draw.Src, nil)
	g.scaled[key] = img
	return img
}

// imageBox is where an image is drawn, in whole pixels.
func imageBox(g canvas.PxImage) image.Rectangle {
	at := func(p canvas.Px) image.Point { return image.Pt(int(math.Round(p.X)), int(math.Round(p.Y))) }
	return image.Rectangle{Min: at(g.Min), Max: at(g.Max)}
}

// largestImage is the side in pixels of the largest image that is drawn: a larger one
// is a mistake and would fill the memory.
const largestImage = 16384

// Image implements canvas.Surface.
func (r *Raster) Image(_ canvas.Info, g canvas.PxImage) {
	box := imageBox(g)
	if box.Empty() || max(box.Dx(), box.Dy()) > largestImage || !box.Overlaps(r.img.Rect) {
		return
	}
	img := r.images.of(g.Pix, box.Size())
	if r.only == nil {
		draw.Draw(r.img, box, img, image.Point{}, draw.Over)
		return
	}
	for part := range r.only.Stretches(box) {
		draw.Draw(r.img, part, img, part.Min.Sub(box.Min), draw.Over)
	}
}
