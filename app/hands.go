package app

import (
	"fyne.io/fyne/v2"

	"homeside/app/courtview"
	"homeside/app/gesture"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
	"homeside/words"
)

// How far the arrow keys move what is picked, alone and with Shift.
const (
	nudgeStep            = units.Feet(1) / units.InchesInFoot
	bigNudge  units.Feet = 1
	zoomByKey            = 1.25
)

// courtEvents are what the court tells.
func (e *Editor) courtEvents(o Options) courtview.Events {
	return courtview.Events{
		Status: e.say, Painted: e.paintedRevision, Menu: e.courtMenu, Zoomed: e.zoomed, Frame: e.frameFor(o), Dragged: e.dragged,
		Key:     func(k *fyne.KeyEvent) { e.press(onCourt, k) },
		Rune:    func(r rune) { e.typed(onCourt, r) },
		Focused: func() { e.reveal(e.court); e.trace.say("focus court") },
	}
}

// dragged is told of every move of a hand that drags something on the court.
func (e *Editor) dragged() {
	e.seenFrames()
	e.eager.moved()
}

// nudge moves what is picked a step to the right and up the screen; false if
// nothing is picked.
func (e *Editor) nudge(right, up float64, step units.Feet) bool {
	picked := e.session.Picked()
	if len(picked) == 0 {
		return false
	}
	e.court.Cancel()
	e.session.Pause()
	name := gesture.NameOfMove(e.session.Lesson(), picked[0])
	if len(picked) > 1 {
		name = words.T("move %d things", len(picked))
	}
	if !e.session.Nudge(name, e.court.Way(right, up).Times(float64(step))) {
		return false
	}
	e.sayWhere(picked[0])
	return true
}

// sayWhere says where a player who was nudged now is.
func (e *Editor) sayWhere(a edit.Part) {
	if a.Kind != edit.PlayerPart || e.session.Current() == nil {
		return
	}
	at := e.session.Current().At(e.session.Now()).Players[a.Player].Drawn.Place
	e.say(e.session.Lesson().NameOf(a.Player) + ": " + words.Place(a.Player.Team(), at))
}

// deletePicked deletes the keyframes and marks that are picked.
func (e *Editor) deletePicked() {
	picked := e.session.Picked()
	if len(picked) == 0 {
		return
	}
	if !e.session.Delete(words.DeleteParts(e.session.Lesson(), picked), picked...) {
		e.say(words.T("Nothing that is picked can be deleted: everybody needs a place, and every shot an aim."))
	}
}

// pickAll picks the four players.
func (e *Editor) pickAll() {
	parts := make([]edit.Part, 0, len(game.Players))
	for _, id := range game.Players {
		parts = append(parts, edit.Part{Kind: edit.PlayerPart, Player: id})
	}
	e.session.Pick(parts...)
}

// addMark lets the next press on the court place a mark.
func (e *Editor) addMark(k lesson.MarkKind) {
	if p, ok := e.session.Play(); !ok || len(p.Marks) >= lesson.MaxMarks {
		e.say(words.T("This play has no room for another mark."))
		return
	}
	e.session.Pause()
	e.court.SetMarking(&k)
	e.win.Canvas().Focus(e.court) // for who goes on by keys
	e.trace.say("placing %v", k)
}

// addPlace gives a player a keyframe at a moment.
func (e *Editor) addPlace(id game.Player, t units.Seconds) {
	e.session.State(words.T("add a place of %s", e.session.Lesson().NameOf(id)), id, t)
}

// markMenu chooses the kind of a new mark.
func (e *Editor) markMenu() *fyne.MenuItem {
	m := fyne.NewMenuItem(words.T("Add a mark"), nil)
	m.ChildMenu = fyne.NewMenu("")
	for _, k := range lesson.MarkKinds {
		m.ChildMenu.Items = append(m.ChildMenu.Items, e.item(words.MarkName(k), func() { e.addMark(k) }, nil))
	}
	return m
}

// snapMenu chooses what a drag snaps to.
func (e *Editor) snapMenu() *fyne.MenuItem {
	m := fyne.NewMenuItem(words.T("Snap to (Ctrl: not now)"), nil)
	set := func(change func(*gesture.Snapping, bool)) func(bool) {
		return func(on bool) {
			s := e.court.Snapping()
			change(&s, on)
			e.court.SetSnapping(s)
		}
	}
	m.ChildMenu = fyne.NewMenu("",
		e.toggle(words.T("Lines"), true, set(func(s *gesture.Snapping, on bool) { s.Lines = on })),
		e.toggle(words.T("Half feet"), true, set(func(s *gesture.Snapping, on bool) { s.HalfFeet = on })),
		e.toggle(words.T("The partner's mirror image"), true, set(func(s *gesture.Snapping, on bool) { s.Mirror = on })),
	)
	return m
}

// transform does something to the play shown, or to all, as one step.
func (e *Editor) transform(name string, change func(l lesson.Lesson, i int) lesson.Lesson) func() {
	return func() {
		e.court.Cancel()
		if _, ok := e.session.Play(); ok {
			e.session.Do(name, change(e.session.Lesson(), e.session.PlayIndex()))
			e.session.Pick()
		}
	}
}

// transformItems are what turns plays round.
func (e *Editor) transformItems() []*fyne.MenuItem {
	return []*fyne.MenuItem{
		e.needs(e.noPlay, e.item(words.T("Mirror left and right (even, odd)"), e.transform(words.T("mirror a play"), edit.MirrorSides), ctrlShift(fyne.KeyM))),
		e.needs(e.noPlay, e.item(words.T("Reverse roles: those who serve receive"), e.transform(words.T("reverse roles"), edit.ReverseRoles), ctrlShift(fyne.KeyR))),
		e.needs(e.noPlay, e.item(words.T("Swap ends in all plays"), e.transform(words.T("swap ends"), func(l lesson.Lesson, _ int) lesson.Lesson { return edit.SwapEnds(l) }), nil)),
	}
}

// zoomItems are what makes the court larger and smaller.
func (e *Editor) zoomItems() []*fyne.MenuItem {
	return []*fyne.MenuItem{
		e.item(words.T("Zoom in (wheel)"), func() { e.court.Zoom(zoomByKey) }, ctrl(fyne.KeyEqual)),
		e.item(words.T("Zoom out"), func() { e.court.Zoom(1 / zoomByKey) }, ctrl(fyne.KeyMinus)),
		e.item(words.T("Fit the court"), e.court.Fit, ctrl(fyne.Key0)),
	}
}
