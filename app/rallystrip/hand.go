package rallystrip

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/app/gesture"
	"homeside/app/ring"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// slackPoints is how far the pointer moves before a press becomes a drag.
const slackPoints canvas.Points = 3

// hand is what the pointer is doing.
type hand struct {
	timing  gesture.Timing
	stretch gesture.Stretch
	seeking bool
	hover   rally.Timed // what the pointer is on, while over
	over    bool
	edge    bool // the pointer is on an end of the loop
}

func (h *hand) down() bool { return h.timing.Down() || h.stretch.Down() || h.seeking }

var (
	_ desktop.Mouseable   = (*Strip)(nil)
	_ desktop.Hoverable   = (*Strip)(nil)
	_ desktop.Cursorable  = (*Strip)(nil)
	_ fyne.Draggable      = (*Strip)(nil)
	_ fyne.DoubleTappable = (*Strip)(nil)
)

// px is a position in the widget in device pixels.
func (v *Strip) px(p fyne.Position) canvas.Px {
	k := v.scale(v.scene.Width)
	return canvas.Px{X: float64(p.X) * k, Y: float64(p.Y) * k}
}

// reach is within what the hand snaps to events; 0 while Control suspends it.
func (v *Strip) reach() units.Seconds {
	if heldKeys()&(fyne.KeyModifierControl|fyne.KeyModifierSuper) != 0 {
		return 0
	}
	return v.scene.SnapTime()
}

// timeAt is the time under a position, an event's where it is near and nothing
// suspends that.
func (v *Strip) timeAt(p fyne.Position) units.Seconds {
	if v.reach() == 0 {
		return v.scene.TimeAt(v.px(p).X)
	}
	return v.scene.Snapped(v.px(p).X)
}

// MouseDown implements desktop.Mouseable: it takes hold of what is there.
func (v *Strip) MouseDown(e *desktop.MouseEvent) {
	ring.Take(v)
	if v.frames == nil || v.Cancel() {
		return // a second button pressed during a gesture cancels it
	}
	v.session.Pause()
	px := v.px(e.Position)
	if e.Button == desktop.MouseButtonSecondary {
		v.chooseAt(px)
		v.events.Menu(e.AbsolutePosition, v.timeAt(e.Position))
		return
	}
	if e.Button != desktop.MouseButtonPrimary {
		return
	}
	if v.scene.OnRuler(px) {
		v.pressRuler(px, v.timeAt(e.Position))
		return
	}
	if !v.pressThing(px) {
		v.hand.seeking = true
		v.session.Seek(v.timeAt(e.Position))
	}
}

// chooseAt chooses what is at a pixel, or nothing.
func (v *Strip) chooseAt(px canvas.Px) (rally.Timed, bool) {
	what, ok := v.scene.Thing(px)
	if ok {
		v.session.Choose(what)
	} else {
		v.session.Unchoose()
	}
	return what, ok
}

// pressRuler begins a stretch to be played again and again, or takes hold of an
// end of the one there is.
func (v *Strip) pressRuler(px canvas.Px, t units.Seconds) {
	from, to, _ := v.session.Loop()
	switch v.scene.LoopEnd(px) {
	case -1:
		v.hand.stretch.Take(v.session, v.scene.TimeAt(px.X), to)
	case 1:
		v.hand.stretch.Take(v.session, v.scene.TimeAt(px.X), from)
	default:
		v.hand.stretch.Press(v.session, t)
	}
}

// pressThing takes hold of what is at a pixel, or says why it cannot be moved;
// false if nothing is there.
func (v *Strip) pressThing(px canvas.Px) bool {
	what, ok := v.chooseAt(px)
	if !ok {
		return false
	}
	hold, err := v.session.Retime(what)
	if err != nil {
		v.say(err.Error())
		return true
	}
	v.hand.timing.Press(v.session, hold, v.scene.TimeAt(px.X))
	return true
}

// Dragged implements fyne.Draggable.
func (v *Strip) Dragged(e *fyne.DragEvent) {
	slack := v.scene.TimeFor(slackPoints)
	switch {
	case v.hand.timing.Down():
		v.hand.timing.Move(v.scene.TimeAt(v.px(e.Position).X), v.reach(), slack)
		v.sayHeld()
	case v.hand.stretch.Down():
		v.hand.stretch.Move(v.timeAt(e.Position), slack)
		v.sayLoop()
	case v.hand.seeking:
		v.session.Seek(v.timeAt(e.Position))
	}
}

// sayHeld says where the thing held is now; a place of a player is shown at its
// own moment.
func (v *Strip) sayHeld() {
	hold, now, ok := v.hand.timing.Active()
	r := v.session.Current()
	if !ok || r == nil {
		return
	}
	if hold.What().Kind == rally.Arrival {
		v.session.Seek(now.At)
	}
	v.say(words.Timing(r, hold.What(), now.On, now.At))
}

func (v *Strip) sayLoop() {
	if from, to, on := v.session.Loop(); on {
		v.say(words.LoopSays(from, to))
	}
}

// held is what the picture shows of the drag.
func (v *Strip) held() *compose.Held {
	_, now, ok := v.hand.timing.Active()
	if !ok {
		return nil
	}
	return &compose.Held{At: now.At, Text: words.When(now.On)}
}

// MouseUp implements desktop.Mouseable.
func (v *Strip) MouseUp(e *desktop.MouseEvent) {
	if v.hand.stretch.Down() && !v.hand.stretch.Release() {
		v.session.Seek(v.timeAt(e.Position)) // a click
	}
	v.release()
}

// DragEnd implements fyne.Draggable.
func (v *Strip) DragEnd() {
	v.hand.stretch.Release()
	v.release()
}

// release ends a drag as one step.
func (v *Strip) release() {
	v.hand.seeking = false
	if !v.hand.timing.Down() {
		return
	}
	hold, _, _ := v.hand.timing.Active()
	name := ""
	if r := v.session.Current(); r != nil {
		name = words.TimingStep(r, hold.What())
	}
	v.hand.timing.Release(name)
	v.Refresh()
}

// Dragging says whether a hand is dragging something in the strip.
func (v *Strip) Dragging() bool { return v.hand.down() }

// Cancel drops a gesture under way and says whether there was one.
func (v *Strip) Cancel() bool {
	under := v.hand.down()
	v.hand.timing.Cancel()
	v.hand.stretch.Cancel()
	v.hand.seeking = false
	if under {
		v.say("")
		v.Refresh()
	}
	return under
}

// DoubleTapped implements fyne.DoubleTappable: a thing is opened, in the empty
// room of a lane of texts a new one is begun.
func (v *Strip) DoubleTapped(e *fyne.PointEvent) {
	if v.frames == nil {
		return
	}
	px := v.px(e.Position)
	if what, ok := v.scene.Thing(px); ok {
		v.events.Open(what)
		return
	}
	switch lane, _ := v.scene.LaneAt(px); lane {
	case rally.CaptionLane:
		v.events.Cue(lesson.Caption, v.timeAt(e.Position))
	case rally.SignalLane:
		v.events.Cue(lesson.Signal, v.timeAt(e.Position))
	}
}

// MouseIn implements desktop.Hoverable.
func (v *Strip) MouseIn(e *desktop.MouseEvent) { v.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable: it says what the pointer is on.
func (v *Strip) MouseMoved(e *desktop.MouseEvent) {
	r := v.session.Current()
	if v.frames == nil || r == nil || v.hand.down() || v.session.Playing() {
		return
	}
	px := v.px(e.Position)
	v.hand.edge = v.scene.LoopEnd(px) != 0
	what, over := v.scene.Thing(px)
	if what == v.hand.hover && over == v.hand.over {
		return
	}
	v.hand.hover, v.hand.over = what, over
	v.say(v.hint(r, what, over))
}

// hint says what a thing is and when.
func (v *Strip) hint(r *rally.Rally, what rally.Timed, over bool) string {
	e, ok := r.EntryOf(what)
	if !over || !ok {
		return ""
	}
	if what.Kind == rally.AtContact {
		return words.PlaceOfHit(r.NameOf(what.Player), what.Index)
	}
	return words.Timing(r, what, v.session.AnchorAt(e.From), e.From)
}

// MouseOut implements desktop.Hoverable.
func (v *Strip) MouseOut() {
	if v.hand.over && !v.hand.down() {
		v.say("")
	}
	v.hand.over, v.hand.edge = false, false
}

// Cursor implements desktop.Cursorable.
func (v *Strip) Cursor() desktop.Cursor {
	switch k := v.hand.hover.Kind; {
	case v.hand.edge, v.hand.over && k.Moment() && k != rally.AtContact:
		return desktop.HResizeCursor
	case v.hand.over:
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

func (v *Strip) say(s string) { v.events.Status(s) }

// OnScreen is where the things of the play are in the window, in device pixels,
// by their names in a trace, such as "arrival-near2-1".
func (v *Strip) OnScreen() map[string]canvas.Px {
	out := map[string]canvas.Px{}
	r := v.session.Current()
	if r == nil || v.frames == nil {
		return out
	}
	s := v.scene
	s.Rally = r
	corner := fyne.CurrentApp().Driver().AbsolutePositionForObject(v)
	k := v.scale(s.Width)
	for _, e := range r.Timeline() {
		if px, ok := s.PxOf(e.What); ok {
			out[nameOf(e.What)] = canvas.Px{X: px.X + float64(corner.X)*k, Y: px.Y + float64(corner.Y)*k}
		}
	}
	for _, e := range r.Events {
		if px, ok := s.RulerPx(e.At); ok {
			out["ruler-"+e.Name.String()] = canvas.Px{X: px.X + float64(corner.X)*k, Y: px.Y + float64(corner.Y)*k}
		}
	}
	return out
}
