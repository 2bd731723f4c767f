package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/units"
	"homeside/words"
)

// courtBindings are the keys of the court. While something is picked the arrow
// keys move it; otherwise they step from event to event as everywhere.
func courtBindings() []binding {
	all := []binding{
		{onCourt, one(fyne.KeyN), false, func() string { return words.T("pick the next place, run, aim or mark") }, always(func(e *Editor) { e.pickNext(1) })},
		{onCourt, one(fyne.KeyN), true, func() string { return words.T("pick the previous one") }, always(func(e *Editor) { e.pickNext(-1) })},
		{onCourt, one(fyne.KeyReturn, fyne.KeyEnter), false, func() string { return words.T("open the card of what is picked") }, (*Editor).openPicked},
		{onCourt, one(fyne.KeyRightBracket), false, func() string { return words.T("turn the player 15 degrees to the right") }, func(e *Editor) bool { return e.turnPicked(turnStep) }},
		{onCourt, one(fyne.KeyLeftBracket), false, func() string { return words.T("turn the player 15 degrees to the left") }, func(e *Editor) bool { return e.turnPicked(-turnStep) }},
		{onCourt, one(fyne.KeyDelete, fyne.KeyBackspace), false, func() string { return words.T("delete what is picked") }, always((*Editor).deletePicked)},
		{onCourt, one(desktop.KeyMenu), false, func() string { return words.T("menu of what is picked") }, always(func(e *Editor) { e.court.Menu() })},
		{onCourt, one(fyne.KeyF10), true, func() string { return words.T("menu of what is picked") }, always(func(e *Editor) { e.court.Menu() })},
		{onCourt, one(fyne.KeyEscape), false, func() string { return words.T("cancel a drag, or pick nothing") }, always((*Editor).cancelOnCourt)},
	}
	for _, id := range game.Players {
		key := one([]fyne.KeyName{fyne.Key1, fyne.Key2, fyne.Key3, fyne.Key4}[id])
		a := edit.Part{Kind: edit.PlayerPart, Player: id}
		all = append(all,
			binding{onCourt, key, false, func() string { return words.PickKey(id) }, always(func(e *Editor) { e.session.Pick(a) })},
			binding{onCourt, key, true, func() string { return words.PickAlsoKey(id) }, always(func(e *Editor) { e.session.PickAlso(a) })})
	}
	return append(all, nudgeBindings()...)
}

// turnStep is how far a key turns a player.
const turnStep units.Degrees = 15

// nudgeBindings move what is picked by the arrow keys.
func nudgeBindings() []binding {
	var all []binding
	for _, way := range []struct {
		key       fyne.KeyName
		right, up float64
		name      func() string
	}{
		{fyne.KeyRight, 1, 0, func() string { return words.T("to the right") }}, {fyne.KeyLeft, -1, 0, func() string { return words.T("to the left") }},
		{fyne.KeyUp, 0, 1, func() string { return words.T("up") }}, {fyne.KeyDown, 0, -1, func() string { return words.T("down") }},
	} {
		all = append(all,
			binding{onCourt, one(way.key), false, func() string { return words.T("move what is picked 1 in %s", way.name()) }, func(e *Editor) bool { return e.nudge(way.right, way.up, nudgeStep) }},
			binding{onCourt, one(way.key), true, func() string { return words.T("move what is picked 1 ft %s", way.name()) }, func(e *Editor) bool { return e.nudge(way.right, way.up, bigNudge) }})
	}
	return all
}

// cancelOnCourt drops a drag or, where there is none, what is picked.
func (e *Editor) cancelOnCourt() {
	if !e.plays.CancelDrag() && !e.court.Cancel() && !e.strip.Cancel() {
		e.session.Pick()
	}
}

// pickNext picks the next thing on the court and says what it is.
func (e *Editor) pickNext(by int) {
	e.court.Cancel()
	e.session.Pause()
	a, ok := e.session.PickNext(by)
	if r := e.session.Current(); ok && r != nil {
		text := words.PartName(r, a)
		e.say(text)
		e.trace.say("picked %s", text)
	}
}

// openPicked opens the card of what was picked last, or places the mark that waits
// for a press; false if there is neither.
func (e *Editor) openPicked() bool {
	if e.court.PlaceMark() {
		return true
	}
	picked := e.session.Picked()
	r := e.session.Current()
	if len(picked) == 0 || r == nil {
		return false
	}
	switch a := picked[len(picked)-1]; a.Kind {
	case edit.AimPart:
		e.session.Seek(r.Strokes[a.Index].At)
		e.cards.open(e.cards.shot)
	case edit.MarkPart, edit.TipPart:
		e.askMark(a.Index)
	default:
		e.session.Select(a.Player)
		e.cards.open(e.cards.player)
	}
	return true
}

// turnPicked turns the player picked last; false if none is.
func (e *Editor) turnPicked(by units.Degrees) bool {
	picked := e.session.Picked()
	r := e.session.Current()
	if len(picked) == 0 || r == nil {
		return false
	}
	a := picked[len(picked)-1]
	if a.Kind != edit.PlayerPart && a.Kind != edit.KeyframePart {
		return false
	}
	now := r.Tracks[a.Player].At(e.session.Now()).Facing
	if i := r.Tracks[a.Player].StopOf(a.Index); a.Kind == edit.KeyframePart && i >= 0 {
		e.session.Seek(r.Tracks[a.Player].Stops[i].At)
		now = r.Tracks[a.Player].Stops[i].Keyframe.Facing
	}
	e.face(a.Player, (now + by).Normal())
	return true
}
