package drilling

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
	"golang.org/x/image/draw"

	"homeside/app/frameclock"
	"homeside/app/looks"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/drill"
	"homeside/model/units"
)

// stage is the picture of a board, and the clock of its film.
type stage struct {
	widget.BaseWidget
	raster  *fynecanvas.Raster
	painted func() // called from within the first paint of a board, in every size
	board   board

	img   *image.RGBA
	drawn struct {
		made int
		look *look.Look
	}
	made  int // boards shown
	clock *frameclock.Clock
}

func newStage(painted func()) *stage {
	g := &stage{painted: painted}
	g.raster = fynecanvas.NewRaster(g.paint)
	g.clock = frameclock.New(func() bool { return g.board.film != nil && g.board.film.passing() }, g.pass)
	g.ExtendBaseWidget(g)
	return g
}

// CreateRenderer implements fyne.Widget.
func (g *stage) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(g.raster) }

// MinSize implements fyne.Widget.
func (g *stage) MinSize() fyne.Size { return fyne.NewSize(360, 200) }

// Refresh asks for a paint.
func (g *stage) Refresh() { g.raster.Refresh() }

// show shows a board.
func (g *stage) show(b board) {
	g.board = b
	g.made++
	g.clock.Follow()
	g.Refresh()
}

// pass lets the film's time pass.
func (g *stage) pass(dt units.Seconds) {
	g.board.film.run.Advance(dt)
	g.Refresh()
}

// paint draws the board at a size in device pixels. The image is the stage's own.
func (g *stage) paint(w, h int) image.Image {
	w, h = max(w, 1), max(h, 1)
	fresh := false
	if size := image.Rect(0, 0, w, h); g.img == nil || g.img.Rect != size || g.drawn.made != g.made || g.drawn.look != looks.Now() {
		g.drawn.made, g.drawn.look = g.made, looks.Now()
		g.img, fresh = g.still(w, h), true
	}
	if f := g.board.film; f != nil {
		r := g.board.room(w, h).left
		draw.Draw(g.img, r, f.draw(r.Dx(), r.Dy()), image.Point{}, draw.Src)
	}
	if fresh {
		g.painted()
	}
	return g.img
}

// still is the board without its film.
func (g *stage) still(w, h int) *image.RGBA {
	lk := looks.Now()
	img := raster.Scene(g.board.scene(w, h, lk))
	if g.board.sign != nil {
		r := g.board.room(w, h)
		at := r.left
		if g.board.film != nil {
			at = r.small
		}
		drawSign(img, at, *g.board.sign, lk)
	}
	return img
}

// drawSign draws a sign in the middle of a part of an image.
func drawSign(img *image.RGBA, at image.Rectangle, sign drill.Sign, lk *look.Look) {
	side := max(min(at.Dx(), at.Dy()), 1)
	hand := raster.Scene(compose.Hand(sign, side, lk))
	corner := at.Min.Add(image.Pt((at.Dx()-side)/2, (at.Dy()-side)/2))
	draw.Draw(img, image.Rectangle{corner, corner.Add(image.Pt(side, side))}, hand, image.Point{}, draw.Over)
}
