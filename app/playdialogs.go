package app

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/edit"
	"homeside/model/lesson"
	"homeside/words"
)

// askDescribePlay asks for the title, the notes and the tags of the play shown.
func (e *Editor) askDescribePlay() {
	p, ok := e.session.Play()
	if !ok {
		e.say(words.T("There is no play to describe."))
		return
	}
	e.rest()
	title, notes, tags := filledEntry(p.Title), filledEntry(p.Notes), filledEntry(strings.Join(p.Tags, ", "))
	notes.MultiLine, notes.Wrapping = true, fyne.TextWrapWord
	notes.SetMinRowsVisible(6)
	tags.SetPlaceHolder(words.T("stack, serve, beginners"))
	form := container.New(layout.NewFormLayout(), widget.NewLabel(words.T("Title")), title, widget.NewLabel(words.T("Notes")), notes,
		widget.NewLabel(words.T("Tags")), tags)
	if used := session.TagsOf(e.session.Lesson()); len(used) > 0 {
		form.Add(widget.NewLabel(""))
		form.Add(caption(words.T("Used in this lesson: %s", strings.Join(used, ", "))))
	}
	q := e.askWith(words.T("The play in words"), form, answer{label: words.T("Cancel")}, answer{label: words.T("Use"), do: func() {
		e.session.DescribePlay(session.Described{Title: cut(title.Text, lesson.MaxTitle), Notes: cut(notes.Text, lesson.MaxNotes), Tags: session.SplitTags(tags.Text)})
	}})
	q.size(620, 360).focus(title)
}

// filledEntry is a field with a text in it.
func filledEntry(text string) *heard.Entry {
	e := heard.NewEntry()
	e.SetText(text)
	return e
}

// cut is a text of at most so many characters.
func cut(text string, most int) string {
	r := []rune(text)
	return string(r[:min(len(r), most)])
}

// caption is a small line of several.
func caption(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	l.Importance = widget.LowImportance
	return l
}

// newLesson shows a lesson with one ordinary play: of the pair that has described
// itself on the start page, at its score, or with nobody's names.
func (e *Editor) newLesson() {
	defer e.trace.say("new lesson")
	if l, ok := e.start.Ordinary(); ok && e.start.Shown() {
		e.openUnsaved(l, "")
		return
	}
	l := session.Blank()
	l.Title, l.Plays = words.T("New lesson"), []lesson.Play{edit.OrdinaryPlay()}
	l.Plays[0].Title = words.T("An ordinary serve")
	e.openLesson(l, "")
}
