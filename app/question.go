package app

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"
	tooltip "github.com/dweymouth/fyne-tooltip"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/app/panel"
	"homeside/words"
)

// answer is a button of a question. Do may be nil.
type answer struct {
	label  string
	do     func()
	danger bool // it destroys something: Enter gives the first answer instead
}

// question is a dialog; there is no other kind. Wherever in it the focus is, Escape
// gives its first answer and Enter its usual one: the last, or the first where the
// last destroys something. A button that has the focus is pressed by Enter itself;
// the arrows go between the answers. The toolkit gives the focus back to what had it.
type question struct {
	editor  *Editor
	dialog  *dialog.CustomDialog
	overlay fyne.CanvasObject // the question among all that lies over the window
	content *panel.Tall
	answers *fyne.Container
	buttons []*heard.Button
	usual   *heard.Button
	done    bool
}

// Sizes of a question that has only a text, in ordinary letters.
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

// askWith shows a question with something else than a text. Its controls are those
// of heard, or the keys would end in them.
func (e *Editor) askWith(title string, content fyne.CanvasObject, answers ...answer) *question {
	q := &question{editor: e}
	q.content = panel.NewTallIn(content, q.room)
	q.dialog = dialog.NewCustomWithoutButtons(title, q.content.Box, e.win)
	e.asking = append(slices.DeleteFunc(e.asking, func(q *question) bool { return q.done }), q)
	q.answers = container.New(answerRow{q.across}, q.row(answers)...)
	q.dialog.SetButtons([]fyne.CanvasObject{q.answers})
	q.size(questionWidth, questionHeight)
	q.dialog.Show()
	q.overlay = e.win.Canvas().Overlays().Top()
	q.tips()
	q.focus(q.usual)
	e.trace.say("asking %s", title)
	return q
}

// Room of a dialog beside its content: at its sides, and for its heading, its answers
// and the air round them, in ordinary letters.
const (
	besideContent = 40
	aroundContent = 78
)

// room is the height there is for the content.
func (q *question) room() float32 {
	answers := float32(0)
	if q.answers != nil {
		answers = q.answers.MinSize().Height
	}
	return max(q.editor.win.Canvas().Size().Height-answers-aroundContent*looks.Letters(), leastContent)
}

// leastContent is the height in which content can still be scrolled.
const leastContent = 60

// across is the width there is for the content and the answers.
func (q *question) across() float32 { return q.editor.win.Canvas().Size().Width - besideContent }

// row makes the buttons of the answers.
func (q *question) row(answers []answer) (row []fyne.CanvasObject) {
	for _, a := range answers {
		b := heard.NewButton(a.label, func() { q.give(a.do) })
		q.buttons, row = append(q.buttons, b), append(row, b)
	}
	q.usual = q.buttons[len(q.buttons)-1]
	q.usual.Importance = widget.HighImportance
	if answers[len(answers)-1].danger {
		q.usual.Importance = widget.DangerImportance
		q.usual = q.buttons[0]
	}
	return row
}

// tips lets the question's buttons show tips. They come to lie over all that the
// question has, as the toolkit has drawn it by now: another content would not be seen.
func (q *question) tips() {
	over, ok := q.overlay.(*widget.PopUp)
	if !ok {
		return
	}
	all, ok := over.Content.(*fyne.Container)
	if !ok {
		return
	}
	tooltip.AddPopUpToolTipLayer(over)
	stack := over.Content.(*fyne.Container)
	over.Content = all
	all.Add(stack.Objects[len(stack.Objects)-1])
	q.dialog.SetOnClosed(func() { tooltip.DestroyPopUpToolTipLayer(over) })
}

// size is the room that the question takes in ordinary letters, if it needs no more
// and the window has it.
func (q *question) size(width, height float32) *question {
	k, window := looks.Letters(), q.editor.win.Canvas().Size()
	q.dialog.Resize(fyne.NewSize(width*k, height*k).Min(window))
	return q
}

// width is how wide the question is in a window that has the room.
func (q *question) width(width float32) {
	window := q.editor.win.Canvas().Size()
	q.dialog.Resize(fyne.NewSize(min(width, window.Width), min(questionHeight*looks.Letters(), window.Height)))
}

// focus gives the keys to a control of the question.
func (q *question) focus(on fyne.Focusable) { q.editor.win.Canvas().Focus(on) }

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
	q.editor.takeDropped()
}

// first gives the first answer, enter the usual one.
func (q *question) first() { q.buttons[0].OnTapped() }
func (q *question) enter() {
	if !q.usual.Disabled() {
		q.usual.OnTapped()
	}
}

// lastUnless keeps the last answer from being given while there is a reason.
func (q *question) lastUnless(reason string) { q.buttons[len(q.buttons)-1].Unless(reason) }

// hear takes the keys that mean the same in every question.
func (q *question) hear(k fyne.KeyName) bool {
	switch k {
	case fyne.KeyEscape:
		q.first()
	case fyne.KeyReturn, fyne.KeyEnter:
		q.enter()
	case fyne.KeyLeft:
		return q.turn(-1)
	case fyne.KeyRight:
		return q.turn(1)
	default:
		return false
	}
	return true
}

// turn goes to the answer beside the one that has the focus, if one has.
func (q *question) turn(by int) bool {
	at := slices.IndexFunc(q.buttons, func(b *heard.Button) bool { return q.editor.win.Canvas().Focused() == b })
	if at < 0 {
		return false
	}
	q.focus(q.buttons[min(max(at+by, 0), len(q.buttons)-1)])
	return true
}

// question is the one that lies over everything else; nil while there is none, or a
// menu over it.
func (e *Editor) question() *question {
	top := e.win.Canvas().Overlays().Top()
	for _, q := range e.asking {
		if top != nil && q.overlay == top && !q.done {
			return q
		}
	}
	return nil
}

// confirm goes on after a yes.
func (e *Editor) confirm(title, text string, goOn func()) {
	e.ask(title, text, answer{label: words.T("No")}, answer{label: words.T("Yes"), do: goOn})
}

// inform says something that needs no answer.
func (e *Editor) inform(title, text string) *question {
	return e.ask(title, text, answer{label: words.T("Close")})
}
