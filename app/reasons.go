package app

import (
	"fyne.io/fyne/v2"

	"homeside/model/lesson"
	"homeside/words"
)

// reasoned is a command that cannot always be done.
type reasoned struct {
	item  *fyne.MenuItem
	label func() string
	why   func() string // empty while it can be done; no capital, no full stop
}

// needs greys a command out while there is a reason against it, writes the reason
// beside its name, and says it where the command's key is pressed all the same.
func (e *Editor) needs(why func() string, m *fyne.MenuItem) *fyne.MenuItem {
	label := m.Label
	return e.needsNamed(func() string { return label }, why, m)
}

// needsNamed is needs for a command whose name changes.
func (e *Editor) needsNamed(label, why func() string, m *fyne.MenuItem) *fyne.MenuItem {
	do := m.Action
	m.Action = func() {
		if reason := why(); reason != "" {
			e.sayReason(reason)
			return
		}
		do()
	}
	e.reasons = append(e.reasons, reasoned{m, label, why})
	return m
}

// sayReason says in the status line why something cannot be done.
func (e *Editor) sayReason(reason string) {
	e.say(words.SentenceOf(reason))
	e.trace.say("refused %s", reason)
}

// refreshReasons greys out what cannot be done now.
func (e *Editor) refreshReasons() {
	changed := false
	for _, r := range e.reasons {
		label, reason := r.label(), r.why()
		if with := label + " (" + reason + ")"; reason != "" && e.menuFits(r.item, with) {
			label = with
		}
		if r.item.Label != label || r.item.Disabled != (reason != "") {
			r.item.Label, r.item.Disabled, changed = label, reason != "", true
		}
	}
	if changed && e.win.MainMenu() != nil {
		e.win.MainMenu().Refresh()
	}
}

// Reasons.

func (e *Editor) noPlay() string {
	if _, ok := e.session.Play(); !ok {
		return words.T("this lesson has no plays")
	}
	return ""
}

func (e *Editor) noUndo() string {
	if _, ok := e.session.CanUndo(); !ok && !e.dragging() {
		return words.T("there is nothing to undo")
	}
	return ""
}

func (e *Editor) noRedo() string {
	if _, ok := e.session.CanRedo(); !ok {
		return words.T("nothing was undone")
	}
	return ""
}

func (e *Editor) nonePicked() string {
	if len(e.session.Picked()) == 0 {
		return words.T("nothing is picked on the court")
	}
	return ""
}

func (e *Editor) noOtherPlay() string {
	if len(e.session.Lesson().Plays) < 2 {
		return words.T("there is no other play in this lesson")
	}
	return ""
}

func (e *Editor) notComparing() string {
	if _, ok := e.session.Comparing(); !ok {
		return words.T("no play is compared with this one")
	}
	return ""
}

func (e *Editor) noHeldCover() string {
	if e.held.Cover.Len() == 0 {
		return words.T("no cover is held yet")
	}
	return ""
}

func (e *Editor) noOtherLesson() string {
	if e.desk.Len() < 2 {
		return words.T("no other lesson is open")
	}
	return ""
}

func (e *Editor) saidByTime() string {
	r := e.session.Current()
	switch {
	case r == nil:
		return words.T("this lesson has no plays")
	case r.Play.Shots[r.ShotAt(e.session.Now())].Intent.Kind == lesson.ByTime:
		return words.T("this shot is said by its time already")
	}
	return ""
}

func (e *Editor) whollyShown() string {
	if e.strip.Whole() {
		return words.T("the whole play is shown already")
	}
	return ""
}
