package rehearse

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
	"golang.org/x/image/draw"

	"homeside/app/looks"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// stage is the court with what is said beside it.
type stage struct {
	widget.BaseWidget
	painted func()
	raster  *fynecanvas.Raster

	rally   *rally.Rally // nil shows no court
	surface court.Rect
	view    view
	pair    court.End
	moment  units.Seconds
	telling telling

	img     *image.RGBA
	drawn   key
	picture compose.Picture
	layout  compose.Layout
	frames  *raster.Frames
}

// key is everything the still layer depends on.
type key struct {
	rally         *rally.Rally
	width, height int
	view          view
	pair          court.End
	look          *look.Look
	measures      words.Measures
}

func newStage(painted func()) *stage {
	g := &stage{painted: painted}
	g.raster = fynecanvas.NewRaster(g.paint)
	g.ExtendBaseWidget(g)
	return g
}

// CreateRenderer implements fyne.Widget.
func (g *stage) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(g.raster) }

// MinSize implements fyne.Widget: the stage takes what there is.
func (g *stage) MinSize() fyne.Size { return fyne.NewSize(1, 1) }

// Refresh asks for a paint.
func (g *stage) Refresh() { g.raster.Refresh() }

// show shows a moment and what is said at it, if that is anything new.
func (g *stage) show(moment units.Seconds, t telling) {
	if g.moment == moment && g.telling.same(t) {
		return
	}
	g.moment, g.telling = moment, t
	g.Refresh()
}

// paint draws the moment at a size in device pixels. The image is the stage's own.
func (g *stage) paint(w, h int) image.Image {
	w, h = max(w, 1), max(h, 1)
	if g.img == nil || g.img.Rect.Dx() != w || g.img.Rect.Dy() != h {
		g.img = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	lk := looks.Now()
	draw.Draw(g.img, g.img.Rect, image.NewUniform(lk.Paper), image.Point{}, draw.Src)
	rooms := roomsOf(w, h, g.view)
	if g.rally != nil {
		g.arrange(rooms)
		img := g.frames.Draw(g.picture.MovingIn(g.layout, g.moment))
		draw.Draw(g.img, img.Rect, img, image.Point{}, draw.Src)
	}
	raster.New(g.img).Draw(g.telling.scene(rooms, lk))
	if g.painted != nil {
		g.painted()
	}
	return g.img
}

// arrange draws the still layer anew where it has changed.
func (g *stage) arrange(r rooms) {
	w, h := int(r.court.Max.X), int(r.court.Max.Y)
	k := key{g.rally, w, h, g.view, g.pair, looks.Now(), words.Measured()}
	if k == g.drawn {
		return
	}
	g.drawn = k
	g.picture = compose.Of(g.rally, g.surface, canvas.Upright).Seen(g.view.sight(g.rally, g.pair))
	g.picture.Look, g.picture.Show = looks.Now(), compose.Show{NoTicks: true}
	g.layout = g.picture.Bare(w, h, r.point)
	g.frames = raster.NewFrames(g.picture.StaticIn(g.layout))
}
