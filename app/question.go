package app

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/words"
)

// answer is a button of a question. Do may be nil.
type answer struct {
	label string
	do    func()
}

// question is a dialog that the keys work: Escape gives its first answer, Enter
// the one with the focus, which is the last at first; the arrows go between them.
type question struct {
	dialog  *dialog.CustomDialog
	buttons []*keyButton
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
	for i, a := range answers {
		b := newKeyButton(a.label, func() { q.give(a.do) }, func(k *fyne.KeyEvent) { q.key(e.win.Canvas(), i, k) })
		q.buttons = append(q.buttons, b)
	}
	last := q.buttons[len(q.buttons)-1]
	last.Importance = widget.HighImportance
	q.dialog = dialog.NewCustomWithoutButtons(title, content, e.win)
	row := make([]fyne.CanvasObject, len(q.buttons))
	for i, b := range q.buttons {
		row[i] = b
	}
	q.dialog.SetButtons(row)
	q.dialog.Resize(fyne.NewSize(questionWidth, questionHeight))
	q.dialog.Show()
	e.win.Canvas().Focus(last)
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

func (q *question) key(c fyne.Canvas, i int, k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		q.buttons[0].OnTapped()
	case fyne.KeyReturn, fyne.KeyEnter:
		if !q.buttons[i].Disabled() {
			q.buttons[i].OnTapped()
		}
	case fyne.KeyLeft:
		c.Focus(q.buttons[max(i-1, 0)])
	case fyne.KeyRight:
		c.Focus(q.buttons[min(i+1, len(q.buttons)-1)])
	}
}

// confirm goes on after a yes.
func (e *Editor) confirm(title, text string, goOn func()) {
	e.ask(title, text, answer{words.T("No"), nil}, answer{words.T("Yes"), goOn})
}

// inform says something that needs no answer.
func (e *Editor) inform(title, text string) { e.ask(title, text, answer{words.T("Close"), nil}) }

// keyButton is a button that hands the keys on that a button does not take.
type keyButton struct {
	widget.Button
	keys func(*fyne.KeyEvent)
}

var handedOn = []fyne.KeyName{fyne.KeyEscape, fyne.KeyReturn, fyne.KeyEnter, fyne.KeyLeft, fyne.KeyRight}

func newKeyButton(label string, tapped func(), keys func(*fyne.KeyEvent)) *keyButton {
	b := &keyButton{keys: keys}
	b.ExtendBaseWidget(b)
	b.Text, b.OnTapped = label, tapped
	return b
}

// TypedKey implements fyne.Focusable.
func (b *keyButton) TypedKey(k *fyne.KeyEvent) {
	if slices.Contains(handedOn, k.Name) {
		b.keys(k)
		return
	}
	b.Button.TypedKey(k)
}
