package panel

import (
	"image"
	"slices"

	"fyne.io/fyne/v2"

	"homeside/app/looks"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/rally"
	"homeside/model/units"
)

// sharply is how many pixels of a small court make one of the window's units.
const sharply = 2

// smallCourt draws a rally at a moment on a court of a size in the window's
// units; a point takes so many of them. The run-off fills it, and what nobody
// could read at such a size is left out: the words of marks.
func smallCourt(r *rally.Rally, surface court.Rect, size fyne.Size, point float64, at units.Seconds) image.Image {
	l := compose.Bare(int(size.Width)*sharply, int(size.Height)*sharply, canvas.Upright, surface, point*sharply)
	p := compose.Of(r, surface, canvas.Upright)
	lk := *looks.Now()
	lk.Paper = lk.Surface
	p.Look = &lk
	return raster.NewFrames(wordless(p.StaticIn(l))).Draw(wordless(p.MovingIn(l, at)))
}

// wordless is a scene without its labels.
func wordless(s *canvas.Scene) *canvas.Scene {
	for i := range s.Panels {
		s.Panels[i].Shapes = slices.DeleteFunc(s.Panels[i].Shapes, func(shape canvas.Shape) bool { return shape.Layer == canvas.Labels })
	}
	return s
}
