package present

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
	"golang.org/x/image/draw"

	"homeside/app/gesture"
	"homeside/app/looks"
	"homeside/app/session"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/pick"
	"homeside/canvas/raster"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// stage is the picture that fills the presenter's window.
type stage struct {
	widget.BaseWidget
	session *session.Session
	painted func()
	raster  *fynecanvas.Raster

	level Level
	pair  Pair
	sight int  // of sights
	help  bool // the keys are shown

	img   *image.RGBA
	parts []part
	drawn key

	strokes []stroke
	line    stroke // under the hand
	second  bool   // the hand holds the other button
	apex    gesture.Apex
}

// part is one play in its place of the stage.
type part struct {
	picture compose.Picture
	layout  compose.Layout
	frames  *raster.Frames
	left    int
}

// key is everything the still layers depend on.
type key struct {
	revision, width, height int
	level                   Level
	pair                    Pair
	sight                   int
	look                    *look.Look
	measures                words.Measures
}

// sights are the ways of seeing that a key goes through.
var sights = []compose.Sight{{}, {Behind: compose.TheReceiver}, {Behind: compose.TheServers}, {Turn: canvas.Lying}}

var (
	_ desktop.Mouseable = (*stage)(nil)
	_ fyne.Draggable    = (*stage)(nil)
)

func newStage(s *session.Session, painted func()) *stage {
	g := &stage{session: s, painted: painted, help: true}
	g.raster = fynecanvas.NewRaster(g.paint)
	g.ExtendBaseWidget(g)
	return g
}

// CreateRenderer implements fyne.Widget.
func (g *stage) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(g.raster) }

// MinSize implements fyne.Widget.
func (g *stage) MinSize() fyne.Size { return fyne.NewSize(480, 320) }

// Refresh asks for a paint.
func (g *stage) Refresh() { g.raster.Refresh() }

// footShare is the height of the line at the foot as a share of the stage's.
const footShare = 0.055

// paint draws the moment at a size in device pixels. The image is the stage's own.
func (g *stage) paint(w, h int) image.Image {
	w, h = max(w, 1), max(h, 1)
	if g.img == nil || g.img.Rect.Dx() != w || g.img.Rect.Dy() != h {
		g.img = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	foot := h - int(float64(h)*footShare)
	g.arrange(w, foot)
	lk := looks.Now()
	draw.Draw(g.img, g.img.Rect, image.NewUniform(lk.Paper), image.Point{}, draw.Src)
	for _, p := range g.parts {
		img := p.frames.Draw(p.picture.MovingIn(p.layout, g.session.Now()))
		draw.Draw(g.img, img.Rect.Add(image.Pt(p.left, 0)), img, image.Point{}, draw.Src)
	}
	raster.New(g.img).Draw(g.over(w, h, lk))
	if g.painted != nil {
		g.painted()
	}
	return g.img
}

// arrange draws the still layers anew where they have changed.
func (g *stage) arrange(w, h int) {
	k := key{g.session.Revision(), w, h, g.level, g.pair, g.sight, looks.Now(), words.Measured()}
	if k == g.drawn && g.parts != nil {
		return
	}
	rise := units.Feet(0)
	if g.session.Previewing() && len(g.parts) > 0 {
		rise = g.parts[0].layout.RiseTop // the court stays still under a hand
	}
	g.drawn, g.parts = k, nil
	r, other := g.session.Current(), g.session.Compared()
	switch {
	case r == nil:
	case g.pair == Beside && other != nil:
		g.parts = append(g.parts, g.part(r, 0, w/2, h, rise), g.part(other, w/2, w-w/2, h, rise))
	default:
		g.parts = append(g.parts, g.part(r, 0, w, h, rise))
	}
}

func (g *stage) part(r *rally.Rally, left, w, h int, rise units.Feet) part {
	p := compose.Of(r, g.session.Lesson().Venue.Surface(), canvas.Upright).Seen(sights[g.sight])
	p.Look, p.Show, p.Rise = looks.Now(), g.level.show(), rise
	if g.pair == Overlaid {
		p.Twin = g.session.Compared()
	}
	l := p.ForScreen(w, h)
	return part{p, l, raster.NewFrames(p.StaticIn(l)), left}
}

// over is what is drawn over the pictures: the line at the foot and the strokes.
func (g *stage) over(w, h int, lk *look.Look) *canvas.Scene {
	pt := float64(min(w, h)) / 360
	s := &canvas.Scene{Width: w, Height: h, PxPerPoint: pt, Panels: []canvas.Panel{{Name: "foot", View: canvas.View{PxPerFoot: 1}}}}
	down := canvas.Points(float64(h)/pt) - 6
	text := func(id, words string, at canvas.Points, size canvas.Points, a canvas.Align, bold bool) {
		c := lk.Quiet
		if bold {
			c = lk.Ink
		}
		s.Panels[0].Add(canvas.Shape{ID: id, Layer: canvas.Labels, Label: words, Text: &canvas.Text{At: canvas.Pos{Right: at, Down: down}, Text: words, Size: size, Bold: bold, Align: a, Colour: c}})
	}
	if r := g.session.Current(); r != nil {
		text("event", g.level.line(g.session.Lesson(), r, g.session.Now()), 10, look.TitleSize, canvas.Start, true)
	}
	if g.help {
		text("keys", words.T("Arrows: event · Space: run · 1 2 3: detail · C: two plays · V: view · draw, E: erase · H: hide this · Esc: leave"), canvas.Points(float64(w)/pt)-10, 7.5, canvas.Finish, false)
	}
	all := g.strokes
	if len(g.line) > 1 {
		all = append(all[:len(all):len(all)], g.line)
	}
	drawn(s, lk, all)
	return s
}

func (g *stage) scale() float64 {
	if width := g.Size().Width; width > 0 && g.img != nil {
		return float64(g.img.Rect.Dx()) / float64(width)
	}
	return 1
}

func (g *stage) toPx(p fyne.Position) canvas.Px {
	k := g.scale()
	return canvas.Px{X: float64(p.X) * k, Y: float64(p.Y) * k}
}

// share is a pixel as shares of the stage's sides.
func (g *stage) share(px canvas.Px) canvas.Px {
	return canvas.Px{X: px.X / float64(g.img.Rect.Dx()), Y: px.Y / float64(g.img.Rect.Dy())}
}

// reach is how far beside the apex handle, in points, the pointer still takes it.
const reach = 6

// onApex says whether a pixel is on the apex handle of the play shown.
func (g *stage) onApex(px canvas.Px) bool {
	if len(g.parts) == 0 || g.parts[0].layout.RiseTop <= 0 {
		return false
	}
	p := g.parts[0]
	_, ok := pick.At(p.picture.MovingIn(p.layout, g.session.Now()), px, reach*p.layout.PxPerPoint, func(id string) bool { return id == compose.ApexHandle })
	return ok
}

// MouseDown implements desktop.Mouseable: it takes the apex handle or begins a
// stroke.
func (g *stage) MouseDown(e *desktop.MouseEvent) {
	r := g.session.Current()
	if r == nil || g.img == nil {
		return
	}
	px := g.toPx(e.Position)
	g.second = e.Button == desktop.MouseButtonSecondary
	if !g.second && g.onApex(px) {
		i := r.ShotAt(g.session.Now())
		g.apex.Press(g.session, i, r.Strokes[i].Planned.Apex.State.Height().Feet(), g.parts[0].layout.HeightAt(px), r.ContactHeight(i))
		return
	}
	g.line = stroke{g.share(px)}
}

// Dragged implements fyne.Draggable.
func (g *stage) Dragged(e *fyne.DragEvent) {
	px := g.toPx(e.Position)
	switch {
	case g.apex.Down():
		g.apex.Move(g.parts[0].layout.HeightAt(px))
	case len(g.line) > 0:
		g.line = append(g.line, g.share(px))
		g.Refresh()
	}
}

// MouseUp implements desktop.Mouseable.
func (g *stage) MouseUp(*desktop.MouseEvent) { g.release() }

// DragEnd implements fyne.Draggable.
func (g *stage) DragEnd() { g.release() }

// tremble is how far a hand moves in a click, in points.
const tremble = 4

// release ends a drag; a click that drew nothing steps to the next event, one with
// the other button to the previous one.
func (g *stage) release() {
	if g.apex.Down() {
		name := ""
		if r := g.session.Current(); r != nil {
			name = words.HeightStep(r.ShotAt(g.session.Now()))
		}
		g.apex.Release(name)
		return
	}
	line := g.line
	g.line = nil
	if len(line) == 0 || g.img == nil {
		return
	}
	w, h := float64(g.img.Rect.Dx()), float64(g.img.Rect.Dy())
	switch {
	case line.long(w, h, tremble*min(w, h)/360):
		g.strokes = append(g.strokes, line)
		g.Refresh()
	case g.second:
		g.step(g.session.PreviousEvent)
	default:
		g.step(g.session.NextEvent)
	}
}

// step goes to another event. The keys are known by then.
func (g *stage) step(to func()) {
	g.help = false
	to()
	g.Refresh()
}

// erase clears the strokes.
func (g *stage) erase() {
	g.strokes, g.line = nil, nil
	g.Refresh()
}

// cancel drops what the hand is doing and says whether that was anything.
func (g *stage) cancel() bool {
	if !g.apex.Down() && len(g.line) == 0 {
		return false
	}
	g.apex.Cancel()
	g.line = nil
	g.Refresh()
	return true
}

// eventName is the event shown as a lesson's file calls it, for the trace.
func (g *stage) eventName() string {
	r := g.session.Current()
	if r == nil {
		return ""
	}
	if e, ok := r.EventAt(g.session.Now()); ok {
		return e.Name.String()
	}
	return lesson.ShotName(0) + ".before"
}
