package panel

import (
	"image"

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
// units; a point takes so many of them.
func smallCourt(r *rally.Rally, surface court.Rect, size fyne.Size, point float64, at units.Seconds) image.Image {
	l := compose.Bare(int(size.Width)*sharply, int(size.Height)*sharply, canvas.Upright, surface, point*sharply)
	p := compose.Of(r, surface, canvas.Upright)
	p.Look = looks.Now()
	return raster.NewFrames(p.StaticIn(l)).Draw(p.MovingIn(l, at))
}
