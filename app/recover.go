package app

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/journal"
	"homeside/app/panel"
	"homeside/words"
)

// offerLeft offers the lessons that a crash has left behind, one by one. What is
// not wanted now is kept for the next start, until somebody throws it away.
func (e *Editor) offerLeft() {
	if e.state == "" {
		return
	}
	all := journal.FindLeft(e.state)
	if len(all) == 0 {
		return
	}
	checks := make([]*heard.Check, len(all))
	box := container.NewVBox()
	for i, l := range all {
		checks[i] = heard.NewCheck(panel.LessonTitle(l.Lesson.Title), nil)
		checks[i].Checked = true
		box.Add(checks[i])
		box.Add(leftLine(l, time.Now()))
	}
	said := widget.NewLabel(words.T("Homeside ended without closing. These lessons had changes that were in no file:"))
	said.Wrapping = fyne.TextWrapWord
	scroll := container.NewVScroll(box)
	scroll.SetMinSize(fyne.NewSize(0, min(float32(len(all))*leftHeight, 320)))
	e.askWith(words.T("Unsaved lessons found"), container.NewBorder(said, nil, nil, nil, scroll),
		answer{label: words.T("Later"), do: func() { e.leaveLeft(all) }},
		answer{label: words.T("Throw away…"), do: func() { e.askThrowAway(all) }},
		answer{label: words.T("Open"), do: func() { e.openLeft(all, checks) }})
	e.trace.say("offered %d", len(all))
}

// leftHeight is the room of a lesson in the dialog: its title and two lines.
const leftHeight = 100

// leftLine says when an entry was kept and what it is.
func leftLine(l journal.Left, now time.Time) fyne.CanvasObject {
	parts := []string{when(l.When, now), words.Plays(len(l.Lesson.Plays))}
	if l.Step != "" {
		parts = append(parts, words.T("last change: %s", words.Again(l.Step)))
	}
	where := words.T("in no file yet")
	if l.Path != "" {
		where = briefPath(l.Path)
	}
	label := widget.NewLabel(strings.Join(append(parts, where), " · "))
	label.Wrapping = fyne.TextWrapWord
	return container.New(layout.NewCustomPaddedLayout(0, 0, 24, 0), label)
}

// leaveLeft keeps what was found for the next start.
func (e *Editor) leaveLeft(all []journal.Left) {
	for _, l := range all {
		l.Release()
	}
	e.say(words.T("The unsaved lessons are kept and offered again at the next start."))
	e.trace.say("left %d", len(all))
}

func (e *Editor) askThrowAway(all []journal.Left) {
	e.ask(words.T("Throw them away?"), words.T("The unsaved changes are deleted for good. Lessons in files stay as they are there."),
		answer{label: words.T("Keep them"), do: func() { e.leaveLeft(all) }},
		answer{label: words.T("Throw away"), do: func() {
			for _, l := range all {
				_ = l.Remove() // what cannot be removed is offered again
			}
			e.trace.say("thrown away %d", len(all))
		}, danger: true})
}

// openLeft opens what is ticked, unsaved, keeps it in this window's own journal
// and only then removes it from where it was found.
func (e *Editor) openLeft(all []journal.Left, checks []*heard.Check) {
	var opened []journal.Left
	for i, l := range all {
		if !checks[i].Checked {
			l.Release()
			continue
		}
		e.openUnsaved(l.Lesson, l.Path)
		e.stamps[e.desk.Paper(e.desk.Shown()).ID] = stampOfText(l.Sum)
		opened = append(opened, l)
	}
	e.autosave.then(func() {
		for _, l := range opened {
			_ = l.Remove() // what cannot be removed is offered again
		}
	})
	e.noteUnsaved()
	e.trace.say("recovered %d", len(opened))
}
