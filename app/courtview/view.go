package courtview

import (
	"fmt"
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
	"homeside/canvas/pick"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// reach is how far beside a player, in points, the pointer still takes hold.
const reach = 6

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
	drawn   key // what frames was made for
	drag    gesture.Drag
	hold    canvas.Px // from the pointer to the feet of the player it holds
	apex    gesture.Apex
}

// Events are what the view tells the window; nil means nobody listens.
type Events struct {
	Status  func(text string) // what the hand is doing, "" when it rests
	Painted func(revision int)
	Key     func(*fyne.KeyEvent) // a key that the view has no use for
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
}

// Show says what the court shows beside the play itself. The zero value shows
// ticks and the ghosts of the late, and no cover.
type Show struct {
	NoTicks, NoGhosts bool
	Cover             bool
	CoverShot         cover.Shot // what the opponents hit; the zero Shot is a drive of 15 m/s
}

var (
	_ desktop.Mouseable = (*View)(nil)
	_ fyne.Draggable    = (*View)(nil)
)

// New is a view of a session.
func New(s *session.Session, e Events) *View {
	v := &View{session: s, events: e, ring: ring.New()}
	v.raster = fynecanvas.NewRaster(v.paint)
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer implements fyne.Widget.
func (v *View) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(v.ring.Over(v.raster))
}

// MinSize implements fyne.Widget.
func (v *View) MinSize() fyne.Size { return fyne.NewSize(220, 200) }

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
	if k := (key{v.session.Revision(), w, h, v.sight, v.show, words.Measured(), looks.Now(), looks.Point(), struck}); v.frames == nil || k != v.drawn {
		surface := v.session.Lesson().Venue.Surface()
		v.picture = compose.Of(r, surface, canvas.Upright).Seen(v.sight)
		v.picture.Look = k.look
		v.picture.Findings, v.picture.Twin = v.session.Findings(), v.session.Compared()
		v.picture.Show = compose.Show{NoTicks: v.show.NoTicks, NoGhosts: v.show.NoGhosts, Cover: v.cover(r, max(struck, 0))}
		v.arrange(r, w, h)
		v.frames = raster.NewFrames(v.picture.StaticIn(v.layout))
		v.drawn = k
	}
	p := v.picture
	scene := p.MovingIn(v.layout, v.session.Now())
	if id, at, ok := v.drag.Active(); ok {
		p.Measure(scene, id, at)
	}
	if id, ok := v.session.Pointed(); ok {
		p.PointOut(scene, id, v.session.Now())
	}
	if v.events.Painted != nil {
		v.events.Painted(v.session.Revision())
	}
	return v.frames.Draw(scene)
}

// arrange divides the picture. While a hand moves something a camera behind a
// player stays where it is.
func (v *View) arrange(r *rally.Rally, w, h int) {
	still := v.sight.Behind != compose.Nobody && v.sight == v.drawn.sight && v.drawn.width == w && v.drawn.height == h
	if still && v.session.Previewing() {
		return
	}
	v.layout = v.picture.ForWindow(w, h, v.rise(r), v.scale(w)*looks.Point())
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

// toPx is a position in the widget in device pixels.
func (v *View) toPx(p fyne.Position) canvas.Px {
	k := v.scale(v.layout.Width)
	return canvas.Px{X: float64(p.X) * k, Y: float64(p.Y) * k}
}

// OnScreen is where each player and the apex handle are in the window, in
// device pixels, by the player's name and "apex".
func (v *View) OnScreen() map[string]canvas.Px {
	out := map[string]canvas.Px{}
	r := v.session.Current()
	if r == nil {
		return out
	}
	corner := fyne.CurrentApp().Driver().AbsolutePositionForObject(v)
	k := v.scale(v.layout.Width)
	put := func(name string, px canvas.Px) {
		out[name] = canvas.Px{X: px.X + float64(corner.X)*k, Y: px.Y + float64(corner.Y)*k}
	}
	for id, p := range r.At(v.session.Now()).Players {
		put(game.Player(id).String(), v.layout.Court.ToPx(p.Drawn.Place))
	}
	put("apex", v.layout.ApexPx(r, r.ShotAt(v.session.Now())))
	return out
}

// toCourt is the point of the court under the pointer, or under the feet of the
// player it holds.
func (v *View) toCourt(p fyne.Position) court.Point {
	px := v.toPx(p)
	return v.layout.Court.ToCourt(canvas.Px{X: px.X + v.hold.X, Y: px.Y + v.hold.Y})
}

// feetFrom is from a pixel where a player is held to where the player stands: in
// perspective the court seen beside a head is far behind it. From straight above
// a player is moved by the way the pointer goes on the court.
func (v *View) feetFrom(px canvas.Px, at court.Point) canvas.Px {
	if !v.layout.Court.Lens.On() {
		return canvas.Px{}
	}
	feet := v.layout.Court.ToPx(at)
	return canvas.Px{X: feet.X - px.X, Y: feet.Y - px.Y}
}

// MouseDown implements desktop.Mouseable: it takes hold of a player.
func (v *View) MouseDown(e *desktop.MouseEvent) {
	ring.Take(v)
	if v.frames == nil || e.Button != desktop.MouseButtonPrimary {
		return
	}
	px := v.toPx(e.Position)
	if v.onApex(px) {
		r := v.session.Current()
		i := r.ShotAt(v.session.Now())
		v.apex.Press(v.session, i, r.Strokes[i].Planned.Apex.State.Height().Feet(), v.layout.HeightAt(px), r.ContactHeight(i))
		return
	}
	id, ok := v.playerAt(px)
	if !ok {
		return
	}
	v.session.Select(id)
	at := v.session.Current().At(v.session.Now()).Players[id].Drawn.Place
	v.hold = v.feetFrom(px, at)
	v.drag.Press(v.session, id, at, v.toCourt(e.Position))
}

// MouseUp implements desktop.Mouseable.
func (v *View) MouseUp(*desktop.MouseEvent) { v.release() }

// Dragged implements fyne.Draggable.
func (v *View) Dragged(e *fyne.DragEvent) {
	if v.apex.Down() {
		v.apex.Move(v.layout.HeightAt(v.toPx(e.Position)))
		v.say(v.shotLine())
		return
	}
	v.drag.Move(v.toCourt(e.Position))
	if id, at, ok := v.drag.Active(); ok {
		v.say(v.session.Lesson().NameOf(id) + ": " + words.Place(id.Team(), at))
	}
}

// DragEnd implements fyne.Draggable.
func (v *View) DragEnd() { v.release() }

func (v *View) release() {
	if v.apex.Down() {
		v.apex.Release("change the height of the " + v.shotName())
		v.say("")
		return
	}
	if id, _, ok := v.drag.Active(); ok {
		v.drag.Release("move " + v.session.Lesson().NameOf(id))
	}
	v.drag.Release("")
	v.say("")
}

// Cancel drops a drag under way and says whether there was one.
func (v *View) Cancel() bool {
	if !v.drag.Down() && !v.apex.Down() {
		return false
	}
	v.drag.Cancel()
	v.apex.Cancel()
	v.say("")
	v.Refresh()
	return true
}

func (v *View) say(s string) {
	if v.events.Status != nil {
		v.events.Status(s)
	}
}

// onApex says whether a pixel is on the apex handle.
func (v *View) onApex(px canvas.Px) bool {
	r := v.session.Current()
	if r == nil || v.layout.RiseTop <= 0 {
		return false
	}
	scene := v.picture.MovingIn(v.layout, v.session.Now())
	_, ok := pick.At(scene, px, reach*v.layout.PxPerPoint, func(id string) bool { return id == compose.ApexHandle })
	return ok
}

func (v *View) shotName() string {
	if r := v.session.Current(); r != nil {
		return lesson.ShotName(r.ShotAt(v.session.Now()))
	}
	return ""
}

// shotLine says what the hand is making of the shot in play.
func (v *View) shotLine() string {
	r := v.session.Current()
	if r == nil {
		return ""
	}
	i := r.ShotAt(v.session.Now())
	top := r.Strokes[i].Planned.Apex.State.Height().Feet()
	return fmt.Sprintf("%s: top at %s (%s), %s in the air", lesson.ShotName(i), words.Length(top), words.TimesNet(top, r.NetTop(i)), words.Seconds(r.Strokes[i].Planned.Duration))
}

// playerAt is the player under a pixel.
func (v *View) playerAt(px canvas.Px) (game.Player, bool) {
	r := v.session.Current()
	if r == nil {
		return 0, false
	}
	scene := v.picture.MovingIn(v.layout, v.session.Now())
	isPlayer := func(id string) bool { _, ok := compose.PlayerOfShape(id); return ok }
	id, ok := pick.At(scene, px, reach*v.layout.PxPerPoint, isPlayer)
	if !ok {
		return 0, false
	}
	return compose.PlayerOfShape(id)
}
