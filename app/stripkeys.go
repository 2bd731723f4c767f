package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// sayChosen says what is chosen in the rally strip and when it is.
func (e *Editor) sayChosen() {
	entry, ok := e.session.Chosen()
	r := e.session.Current()
	if !ok || r == nil {
		e.say("")
		return
	}
	text := words.Timing(r, entry.What, e.session.AnchorAt(entry.From), entry.From)
	e.say(text)
	e.trace.say("chosen %s", text)
}

// moveChosen moves what is chosen in time; false if nothing is.
func (e *Editor) moveChosen(by units.Seconds) bool {
	return e.retimeChosen(func(name string) error { return e.session.MoveChosen(name, by) })
}

// snapChosen moves it to the next event or to the previous one.
func (e *Editor) snapChosen(by int) bool {
	return e.retimeChosen(func(name string) error { return e.session.SnapChosen(name, by) })
}

func (e *Editor) retimeChosen(do func(name string) error) bool {
	entry, ok := e.session.Chosen()
	r := e.session.Current()
	if !ok || r == nil {
		return false
	}
	e.session.Pause()
	if err := do(words.TimingStep(r, entry.What)); err != nil {
		e.say(words.Sentence(err))
		return true
	}
	e.sayChosen()
	return true
}

// openChosen opens what is chosen; false if nothing is.
func (e *Editor) openChosen() bool {
	entry, ok := e.session.Chosen()
	if ok {
		e.openThing(entry.What)
	}
	return ok
}

// openThing opens a caption or a signal to change it; of a place or a run the
// player's card, of a shot its own, each at its moment.
func (e *Editor) openThing(what rally.Timed) {
	r := e.session.Current()
	entry, ok := r.EntryOf(what)
	if !ok {
		return
	}
	switch what.Kind {
	case rally.Saying, rally.CueFrom, rally.CueTo:
		e.askChangeCue(what.Index)
	case rally.Landing:
		e.session.Seek(r.Strokes[what.Index].At)
		e.cards.open(e.cards.shot)
	default:
		e.session.Select(what.Player)
		e.session.Seek(entry.From)
		e.cards.open(e.cards.player)
	}
}

// deleteChosen takes what is chosen out of the play; false if nothing is.
func (e *Editor) deleteChosen() bool {
	e.strip.Cancel()
	entry, ok := e.session.Chosen()
	p, shown := e.session.Play()
	if !ok || !shown {
		return false
	}
	what := entry.What
	switch what.Kind {
	case rally.Saying, rally.CueFrom, rally.CueTo:
		e.session.DeleteCue(deletedCue(p.Cues[what.Index].Kind), what.Index)
	case rally.Start:
		e.replacePlay(words.T("let a run start at once"), edit.Leave(p, what.Player, what.Index, nil))
	case rally.Arrival, rally.Running:
		if len(p.Tracks[what.Player]) == 1 {
			e.say(words.T("Everybody needs a place: the last one cannot be deleted."))
			return true
		}
		e.session.Unchoose()
		e.replacePlay(words.T("delete a place of %s", e.session.Lesson().NameOf(what.Player)), edit.RemoveKeyframe(p, what.Player, what.Index))
	case rally.AtContact:
		e.say(words.PlaceOfHit(e.session.Lesson().NameOf(what.Player), what.Index))
	default:
		e.say(words.T("A shot is not deleted here: its card changes it."))
	}
	return true
}

func (e *Editor) replacePlay(step string, p lesson.Play) {
	e.session.Do(step, edit.ReplacePlay(e.session.Lesson(), e.session.PlayIndex(), p))
}

func deletedCue(k lesson.CueKind) string {
	if k == lesson.Signal {
		return words.T("delete a signal")
	}
	return words.T("delete a caption")
}

// cancelInStrip drops a drag or what is chosen; false if there is neither.
func (e *Editor) cancelInStrip() bool {
	if e.strip.Cancel() {
		return true
	}
	_, chosen := e.session.Chosen()
	e.session.Unchoose()
	return chosen
}

// stripMenu shows what can be done in the rally strip with what is chosen, and at
// a time.
func (e *Editor) stripMenu(at fyne.Position, t units.Seconds) {
	if e.session.Current() == nil || e.win.Canvas().Overlays().Top() != nil {
		return
	}
	items := append(e.chosenItems(),
		e.item(words.T("Add a caption here…"), func() { e.askCue(lesson.Caption, t) }, nil),
		e.item(words.T("Add a signal here…"), func() { e.askCue(lesson.Signal, t) }, nil),
		fyne.NewMenuItemSeparator(),
		e.item(words.T("Loop starts here"), func() { e.session.Seek(t); e.session.LoopFrom(); e.sayLoop() }, nil),
		e.item(words.T("Loop ends here"), func() { e.session.Seek(t); e.session.LoopTo(); e.sayLoop() }, nil),
		e.item(words.T("Show the whole play"), e.strip.Fit, nil),
	)
	widget.NewPopUpMenu(fyne.NewMenu("", items...), e.win.Canvas()).ShowAtPosition(at)
	e.trace.say("menu strip")
}

// chosenItems are what can be done with what is chosen; none if nothing is.
func (e *Editor) chosenItems() []*fyne.MenuItem {
	if _, ok := e.session.Chosen(); !ok {
		return nil
	}
	return []*fyne.MenuItem{
		e.item(words.T("Open…"), func() { e.openChosen() }, nil),
		e.item(words.T("Move to the next event"), func() { e.snapChosen(1) }, nil),
		e.item(words.T("Move to the previous event"), func() { e.snapChosen(-1) }, nil),
		e.item(words.T("Delete"), func() { e.deleteChosen() }, nil),
		fyne.NewMenuItemSeparator(),
	}
}

// sayByTime makes the time in the air what fixes the shot in play, so that it can
// be dragged in the rally strip.
func (e *Editor) sayByTime() {
	r := e.session.Current()
	if r == nil {
		return
	}
	i := r.ShotAt(e.session.Now())
	if r.Play.Shots[i].Intent.Kind == lesson.ByTime {
		return
	}
	e.session.PreviewShot(i, func(s lesson.Shot) lesson.Shot {
		s.Intent = lesson.Time(min(r.Strokes[i].Planned.Duration, lesson.MaxFlight))
		return s
	})
	e.session.Commit(words.SaidByTime(i))
	e.session.Choose(rally.Timed{Kind: rally.Landing, Index: i})
	e.say(words.T("Drag the circle where the ball lands, in the lane of the ball, to change its time."))
}
