package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"homeside/app/looks"
	"homeside/app/panel"
	"homeside/words"
)

// chooser is a dialog with a gallery: Enter takes what is chosen.
type chooser struct {
	editor *Editor
	*question
	label string
	take  func()
	off   string // why there is nothing to take
}

// newChooser is a chooser whose button takes what is chosen. take is called once,
// after the dialog has closed.
func (e *Editor) newChooser(button string, take func()) *chooser {
	return &chooser{editor: e, label: button, take: take}
}

// ready says why there is nothing to take, "" where there is something.
func (c *chooser) ready(hindered string) {
	c.off = hindered
	if c.question != nil {
		c.lastUnless(hindered)
	}
}

// show opens the dialog; others stand before the answer that takes. named are
// the controls that a test of the window presses.
func (c *chooser) show(title string, content fyne.CanvasObject, g *panel.Gallery, named map[string]fyne.CanvasObject, others ...answer) {
	answers := append(append([]answer{{label: words.T("Cancel")}}, others...), answer{label: c.label, do: c.take})
	c.question = c.editor.askWith(title, container.NewStack(c.editor.pulse(named, "painted a chooser"), container.NewPadded(content)), answers...)
	named["insert"] = c.usual // told when the dialog is painted
	c.question.width(max(g.Wide(mostCards)+chooserAir, leastChooser*looks.Letters()))
	c.ready(c.off)
	c.focus(g.FocusOn())
}

// A chooser's cards in a row, if the window has the room, and the air round them.
const (
	mostCards  = 6
	chooserAir = 60

	leastChooser = 520 // what is said of a choice takes three lines at most
)
