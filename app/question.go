package app

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/app/keyed"
	"homeside/words"
)

// answer is a button of a question. Do may be nil.
type answer struct {
	label  string
	do     func()
	danger bool // it destroys something: Enter gives the first answer instead
}

// question is a dialog that the keys work: Escape gives its first answer, Enter
// the one with the focus, which is the last at first, or the first where the last destroys something; the arrows go between them.
type question struct {
	dialog  *dialog.CustomDialog
	buttons []*keyed.Button
	done    bool
}

// Widths of a question's text.
const (
	questionWidth  = 480
	questionHeight = 180
)

// ask shows a question with its answers in a row.
func (e *Editor) ask(title, text string, answers ...answer) *question {
	said := widget.NewLabel(text)
	said.Wrapping = fyne.TextWrapWord
	return e.askWith(title, container.NewPadded(said), answers...)
}

// askWith shows a question with something else than a text.
func (e *Editor) askWith(title string, content fyne.CanvasObject, answers ...answer) *question {
	q := &question{}
	e.asking = append(slices.DeleteFunc(e.asking, func(q *question) bool { return q.done }), q)
	for i, a := range answers {
		b := keyed.NewButton(a.label, nil, func() { q.give(a.do) }, func(k *fyne.KeyEvent) { q.key(e.win.Canvas(), i, k) })
		q.buttons = append(q.buttons, b)
	}
	usual := q.buttons[len(q.buttons)-1]
	usual.Importance = widget.HighImportance
	if answers[len(answers)-1].danger {
		usual.Importance = widget.DangerImportance
		usual = q.buttons[0]
	}
	q.dialog = dialog.NewCustomWithoutButtons(title, content, e.win)
	row := make([]fyne.CanvasObject, len(q.buttons))
	for i, b := range q.buttons {
		row[i] = b
	}
	q.dialog.SetButtons(row)
	q.dialog.Resize(fyne.NewSize(questionWidth, questionHeight))
	q.dialog.Show()
	e.win.Canvas().Focus(usual)
	e.trace.say("asking %s", title)
	return q
}

// give ends the question with an answer, once.
func (q *question) give(do func()) {
	if q.done {
		return
	}
	q.done = true
	q.dialog.Hide()
	if do != nil {
		do()
	}
}

// first gives the first answer, last the last.
func (q *question) first() { q.buttons[0].OnTapped() }
func (q *question) last() {
	if b := q.buttons[len(q.buttons)-1]; !b.Disabled() {
		b.OnTapped()
	}
}

// enableLast says whether the last answer can be given.
func (q *question) enableLast(yes bool) {
	if last := q.buttons[len(q.buttons)-1]; yes {
		last.Enable()
	} else {
		last.Disable()
	}
}

// escape gives the first answer of the question on top, where a dialog that is no
// question has not been opened over it.
func (e *Editor) escape() {
	for i := len(e.asking) - 1; i >= 0; i-- {
		if q := e.asking[i]; !q.done {
			q.first()
			return
		}
	}
}

func (q *question) key(c fyne.Canvas, i int, k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		q.first()
	case fyne.KeyLeft:
		c.Focus(q.buttons[max(i-1, 0)])
	case fyne.KeyRight:
		c.Focus(q.buttons[min(i+1, len(q.buttons)-1)])
	}
}

// confirm goes on after a yes.
func (e *Editor) confirm(title, text string, goOn func()) {
	e.ask(title, text, answer{label: words.T("No")}, answer{label: words.T("Yes"), do: goOn})
}

// inform says something that needs no answer.
func (e *Editor) inform(title, text string) *question {
	return e.ask(title, text, answer{label: words.T("Close")})
}
