package courtview

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/app/gesture"
	"homeside/app/ring"
	"homeside/canvas"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// snapPx is how near a line, in points, a place that is dragged snaps to it; on
// a small court not farther than snapMost.
const (
	snapPx              = 6
	snapMost units.Feet = 0.75
)

// Snapping is what a place that is dragged snaps to.
func (v *View) Snapping() gesture.Snapping { return v.hand.Snapping }

// SetSnapping chooses what a place that is dragged snaps to; its reach is the
// view's own business.
func (v *View) SetSnapping(s gesture.Snapping) { v.hand.Snapping = s }

// MouseDown implements desktop.Mouseable: it takes hold of what is there. A second
// button pressed during a gesture cancels it.
func (v *View) MouseDown(e *desktop.MouseEvent) {
	ring.Take(v)
	v.seen(e.Position)
	switch {
	case v.frames == nil:
	case e.Button == desktop.MouseButtonSecondary:
		v.Cancel()
		v.menu()
	case v.Dragging() || v.pan.down:
		v.Cancel()
	case e.Button == desktop.MouseButtonTertiary || v.space.held:
		v.pan = pan{down: true, at: e.Position}
	case e.Button == desktop.MouseButtonPrimary:
		v.press(e)
	}
}

// press starts a gesture with the first button.
func (v *View) press(e *desktop.MouseEvent) {
	v.hold = canvas.Px{}
	v.hand.Snapping.Reach = min(units.Feet(snapPx*v.layout.PxPerPoint/v.layout.Court.PxPerFoot), snapMost)
	p := v.toCourt(e.Position)
	if v.marking != nil {
		v.hand.Place(v.session, v.newMark(), p, keysOf(e.Modifier))
		return
	}
	if px := v.toPx(e.Position); v.onApex(px) {
		r := v.session.Current()
		i := r.ShotAt(v.session.Now())
		v.apex.Press(v.session, i, r.Strokes[i].Planned.Apex.State.Height().Feet(), v.layout.HeightAt(px), r.ContactHeight(i))
		return
	}
	v.setHover(v.partAt(e.Position)) // shows the handles that the press may be on
	a := v.partAt(e.Position)
	if a.Kind == edit.PlayerPart {
		v.hold = v.feetFrom(v.toPx(e.Position), v.session.Current().At(v.session.Now()).Players[a.Player].Drawn.Place)
		p = v.toCourt(e.Position)
	}
	v.hand.Press(v.session, a, p, keysOf(e.Modifier))
}

// keysOf are the keys that change a gesture: Shift adds, Control suspends
// snapping.
func keysOf(m fyne.KeyModifier) gesture.Keys {
	return gesture.Keys{Add: m&fyne.KeyModifierShift != 0, Free: m&(fyne.KeyModifierControl|fyne.KeyModifierSuper) != 0}
}

// heldKeys are the keys held now; a drag's event does not say.
func heldKeys() gesture.Keys {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		return keysOf(d.CurrentKeyModifiers())
	}
	return gesture.Keys{}
}

// MouseUp implements desktop.Mouseable.
func (v *View) MouseUp(*desktop.MouseEvent) { v.release() }

// Dragged implements fyne.Draggable.
func (v *View) Dragged(e *fyne.DragEvent) {
	if v.events.Dragged != nil {
		v.events.Dragged()
	}
	v.seen(e.Position)
	switch {
	case v.pan.down:
		v.dragPan(e.Position)
	case v.apex.Down():
		v.apex.Move(v.layout.HeightAt(v.toPx(e.Position)))
		v.say(v.shotLine())
	default:
		v.hand.Move(v.toCourt(e.Position), heldKeys())
		if line := v.handLine(); line != v.said {
			v.say(line)
		}
		v.Refresh()
	}
}

// DragEnd implements fyne.Draggable.
func (v *View) DragEnd() { v.release() }

func (v *View) release() {
	switch {
	case v.pan.down:
		v.pan = pan{}
	case v.apex.Down():
		v.apex.Release(words.HeightStep(v.session.Current().ShotAt(v.session.Now())))
	case v.hand.Placing():
		v.hand.Release()
		v.SetMarking(nil)
		if v.events.Marked != nil {
			v.events.Marked()
		}
	default:
		v.hand.Release()
	}
	v.say("")
	v.find()
	v.Refresh()
}

// Dragging says whether a hand is dragging something on the court.
func (v *View) Dragging() bool { return v.hand.Down() || v.apex.Down() }

// Cancel drops a gesture under way and says whether there was one.
func (v *View) Cancel() bool {
	under := v.hand.Down() || v.apex.Down() || v.marking != nil || v.pan.down
	v.hand.Cancel()
	v.apex.Cancel()
	v.pan = pan{}
	if under {
		v.SetMarking(nil)
		v.say("")
		v.Refresh()
	}
	return under
}

// SetMarking makes the next press place a mark; nil makes it pick and move again.
func (v *View) SetMarking(k *lesson.MarkKind) {
	v.marking = k
	v.hover = edit.Part{}
	if k != nil {
		v.say(words.PlaceMark(*k))
	}
	v.Refresh()
}

// PlaceMark puts the mark that waits for a press into the middle of what is shown,
// for who works by keys; false if none waits.
func (v *View) PlaceMark() bool {
	if v.marking == nil || v.frames == nil || v.Dragging() {
		return false
	}
	v.hand.Place(v.session, v.newMark(), v.layout.Shown.Centre(), gesture.Keys{})
	v.release()
	return true
}

// newMark is the mark that the next press places.
func (v *View) newMark() lesson.Mark {
	return lesson.Mark{Kind: *v.marking, Span: lesson.Always(), Text: v.usualText()}
}

// usualText is what a new mark says: a text must say something to be seen.
func (v *View) usualText() string {
	if *v.marking == lesson.TextMark {
		return words.T("Text")
	}
	return ""
}

// MouseIn implements desktop.Hoverable.
func (v *View) MouseIn(e *desktop.MouseEvent) { v.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable.
func (v *View) MouseMoved(e *desktop.MouseEvent) {
	v.seen(e.Position)
	v.find()
}

// MouseOut implements desktop.Hoverable.
func (v *View) MouseOut() {
	v.inside = false
	v.setHover(edit.Part{})
}

func (v *View) seen(p fyne.Position) { v.pointer, v.inside = p, true }

// find looks for what is under the pointer, unless a gesture is under way.
func (v *View) find() {
	if v.hand.Down() || v.apex.Down() || v.pan.down || v.marking != nil || !v.inside || v.session.Playing() {
		return
	}
	v.setHover(v.partAt(v.pointer))
}

func (v *View) setHover(a edit.Part) {
	if a != v.hover {
		v.hover = a
		v.Refresh()
	}
}

// Cursor implements desktop.Cursorable.
func (v *View) Cursor() desktop.Cursor {
	switch {
	case v.marking != nil:
		return desktop.CrosshairCursor
	case v.hover.Kind != edit.NoPart:
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// menu asks for the menu of what is under the pointer. What is not picked is
// picked first, so that it is seen what the menu is about.
func (v *View) menu() {
	at, a := v.pointer, edit.Part{}
	if v.inside {
		a = v.partAt(at)
	} else if picked := v.session.Picked(); len(picked) > 0 {
		a, at = picked[0], fyne.NewPos(v.Size().Width/2, v.Size().Height/2)
	}
	if v.events.Menu == nil {
		return
	}
	switch a.Kind {
	case edit.NoPart, edit.BendPart, edit.FacingPart, edit.TipPart:
	default:
		if !v.session.IsPicked(a) {
			v.session.Pick(a)
		}
	}
	corner := fyne.CurrentApp().Driver().AbsolutePositionForObject(v)
	v.events.Menu(corner.Add(at), a, v.toCourt(at))
}

// Menu shows the menu of what is under the pointer or, while that is elsewhere,
// of what is picked.
func (v *View) Menu() {
	if v.frames != nil {
		v.menu()
	}
}
