package app

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
	"homeside/words"
)

// chooser is a dialog with a gallery: Enter takes what is chosen, Escape closes.
type chooser struct {
	editor *Editor
	dialog *dialog.CustomDialog
	take   *widget.Button
	done   bool
}

// newChooser is a chooser whose button takes what is chosen. take is called once,
// after the dialog has closed.
func (e *Editor) newChooser(button string, take func()) *chooser {
	c := &chooser{editor: e}
	c.take = widget.NewButton(button, func() { c.close(take) })
	c.take.Importance = widget.HighImportance
	return c
}

// ready says whether there is something to take.
func (c *chooser) ready(yes bool) {
	if yes {
		c.take.Enable()
	} else {
		c.take.Disable()
	}
}

// show opens the dialog; others stand before the button that takes. named are
// the controls that a test of the window presses.
func (c *chooser) show(title string, content fyne.CanvasObject, g *panel.Gallery, named map[string]fyne.CanvasObject, others ...fyne.CanvasObject) {
	g.OnAccept = func() {
		if !c.take.Disabled() {
			c.take.OnTapped()
		}
	}
	g.OnCancel = func() { c.close(nil) }
	cancel := widget.NewButton(words.T("Cancel"), g.OnCancel)
	c.dialog = dialog.NewCustomWithoutButtons(title, container.NewStack(c.pulse(named), within(container.NewPadded(content), c.editor.win.Canvas().Size())), c.editor.win)
	c.dialog.SetButtons(append(append([]fyne.CanvasObject{cancel}, others...), c.take))
	c.dialog.Show()
	c.editor.win.Canvas().Focus(g.FocusOn())
}

// within is a dialog's content that scrolls where the window is too small for it.
func within(content fyne.CanvasObject, window fyne.Size) fyne.CanvasObject {
	const around = 150 // a dialog's heading, its buttons and the room between
	need := content.MinSize()
	s := container.NewVScroll(content)
	s.SetMinSize(fyne.NewSize(need.Width, min(need.Height, max(window.Height-around, 0))))
	return s
}

// pulse is painted with the dialog and then tells where its controls are.
func (c *chooser) pulse(named map[string]fyne.CanvasObject) fyne.CanvasObject {
	named["insert"] = c.take
	return fynecanvas.NewRaster(func(int, int) image.Image {
		c.editor.traceNamed(named)
		c.editor.trace.say("painted a chooser")
		return image.NewRGBA(image.Rect(0, 0, 1, 1))
	})
}

// close ends the dialog once, whichever way it was asked to.
func (c *chooser) close(then func()) {
	if c.done {
		return
	}
	c.done = true
	c.dialog.Hide()
	if then != nil {
		then()
	}
}
