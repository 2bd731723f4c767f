package courtview

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"homeside/app/gesture"
	"homeside/app/looks"
	"homeside/app/ring"
	"homeside/app/session"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// View is the widget.
type View struct {
	widget.BaseWidget
	session *session.Session
	raster  *fynecanvas.Raster
	ring    *ring.Ring
	events  Events

	sight   compose.Sight
	show    Show
	picture compose.Picture // of the revision in drawn
	layout  compose.Layout
	frames  *raster.Frames
	still   *canvas.Scene // what frames was made from
	drawn   key           // what it was made for
	zoom    zoom
	hand    gesture.Hand
	hold    canvas.Px // from the pointer to the feet of the player it holds
	apex    gesture.Apex
	hover   edit.Part
	marking *lesson.MarkKind // the next press places such a mark
	pointer fyne.Position    // where it was last seen
	inside  bool             // it is over the view
	said    string           // the line last told
	pan     pan
	space   space
}

// Events are what the view tells the window; nil means nobody listens.
type Events struct {
	Status  func(text string) // what the hand is doing, "" when it rests
	Painted func(revision int)
	Frame   func(revision, pixels int)                         // a frame was drawn, and how much of it anew
	Key     func(*fyne.KeyEvent)                               // a key that the view has no use for
	Menu    func(at fyne.Position, a edit.Part, p court.Point) // asked for what is there
	Zoomed  func(scale float64)
	Marked  func()     // a mark was placed and is picked
	Dragged func()     // the hand has moved something
	Rune    func(rune) // a letter typed
	Focused func()     // the view has got the keys
}

// key is everything the static layer depends on.
type key struct {
	revision, width, height int
	sight                   compose.Sight
	show                    Show
	measures                words.Measures
	look                    *look.Look
	point                   float64
	struck                  int // the shot whose cover is shown; -1 for none
	zoom                    zoom
}

// Show says what the court shows beside the play itself. The zero value shows
// ticks and the ghosts of the late, and no cover.
type Show struct {
	NoTicks, NoGhosts bool
	Cover             bool
	CoverShot         cover.Shot // what the opponents hit; the zero Shot is a drive of 15 m/s
}

var (
	_ desktop.Mouseable  = (*View)(nil)
	_ desktop.Hoverable  = (*View)(nil)
	_ desktop.Cursorable = (*View)(nil)
	_ fyne.Draggable     = (*View)(nil)
	_ fyne.Scrollable    = (*View)(nil)
)

// New is a view of a session.
func New(s *session.Session, e Events) *View {
	v := &View{session: s, events: e, ring: ring.New(), zoom: fitted}
	v.hand.Snapping = gesture.Snapping{Lines: true, HalfFeet: true, Mirror: true}
	v.raster = fynecanvas.NewRaster(v.paint)
	v.raster.ScaleMode = fynecanvas.ImageScalePixels // it is drawn pixel for pixel
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer implements fyne.Widget.
func (v *View) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(v.ring.Over(v.raster))
}

// leastHeight is the height in which players and their labels are told apart, in
// ordinary letters: in a lower window the page scrolls.
const leastHeight = 220

// MinSize implements fyne.Widget.
func (v *View) MinSize() fyne.Size { return fyne.NewSize(220, leastHeight*looks.Letters()) }

// Refresh asks for a paint; many calls before it make one.
func (v *View) Refresh() { v.raster.Refresh() }

// SetSight chooses how the court is seen.
func (v *View) SetSight(s compose.Sight) {
	v.sight = s
	v.Refresh()
}

// Sight is how the court is seen.
func (v *View) Sight() compose.Sight { return v.sight }

// SetShow chooses what the court shows beside the play.
func (v *View) SetShow(s Show) {
	v.show = s
	v.Refresh()
}

// Shown is what it shows.
func (v *View) Shown() Show { return v.show }

// paint draws the moment at a size in device pixels. The image is the view's
// own and is drawn over by the next paint.
func (v *View) paint(w, h int) image.Image {
	r := v.session.Current()
	if r == nil || w < 2 || h < 2 {
		return image.NewRGBA(image.Rect(0, 0, max(w, 1), max(h, 1)))
	}
	struck := -1
	if v.show.Cover {
		struck = r.ShotAt(v.session.Now())
	}
	if k := (key{v.session.Revision(), w, h, v.sight, v.show, words.Measured(), looks.Now(), looks.Point(), struck, v.zoom}); v.frames == nil || k != v.drawn {
		surface := v.session.Lesson().Venue.Surface()
		v.picture = compose.Of(r, surface, canvas.Upright).Seen(v.sight)
		v.picture.Look = k.look
		v.picture.Findings, v.picture.Twin = v.session.Findings(), v.session.Compared()
		v.picture.Show = compose.Show{NoTicks: v.show.NoTicks, NoGhosts: v.show.NoGhosts, Cover: v.cover(r, max(struck, 0))}
		v.arrange(r, w, h)
		v.still = v.picture.StaticIn(v.layout)
		if v.frames == nil {
			v.frames = raster.NewFrames(v.still)
		} else {
			v.frames.Restart(v.still)
		}
		v.drawn = k
	}
	p := v.picture
	scene := p.MovingIn(v.layout, v.session.Now())
	v.addHands(scene)
	if id, ok := v.session.Pointed(); ok {
		p.PointOut(scene, id, v.session.Now())
	}
	if v.events.Painted != nil {
		v.events.Painted(v.session.Revision())
	}
	img := v.frames.Draw(scene)
	if v.events.Frame != nil {
		v.events.Frame(v.session.Revision(), v.frames.Changed().Pixels())
	}
	return img
}

// arrange divides the picture. While a hand moves something a camera behind a
// player stays where it is.
func (v *View) arrange(r *rally.Rally, w, h int) {
	still := v.sight.Behind != compose.Nobody && v.sight == v.drawn.sight && v.drawn.width == w && v.drawn.height == h && v.zoom == v.drawn.zoom
	if still && v.session.Previewing() {
		return
	}
	v.layout = v.zoom.of(v.picture.ForWindow(w, h, v.rise(r), v.scale(w)*looks.Point()))
}

// rise is the height that the strip shows. While a hand moves something it does
// not shrink, so that the court stays where it is.
func (v *View) rise(r *rally.Rally) units.Feet {
	rise := compose.RiseOf(r)
	if v.session.Previewing() {
		rise = max(rise, v.layout.RiseTop)
	}
	return rise
}

// scale is how many device pixels make one of the toolkit's units.
func (v *View) scale(w int) float64 {
	if width := v.Size().Width; width > 0 {
		return float64(w) / float64(width)
	}
	return 1
}
