package heard

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Window is all that a window shows, with who hears the keys of its controls.
type Window struct {
	widget.BaseWidget
	content fyne.CanvasObject
	hear    func(*fyne.KeyEvent) bool
	focused func(fyne.CanvasObject)
}

// NewWindow is content for a window's SetContent. hear is offered the keys that a
// control of the window, or of a dialog over it, has no use for, and says whether it
// has taken them.
func NewWindow(content fyne.CanvasObject, hear func(*fyne.KeyEvent) bool) *Window {
	w := &Window{content: content, hear: hear}
	w.ExtendBaseWidget(w)
	return w
}

// OnFocus has a function told what control has got the keys.
func (w *Window) OnFocus(tell func(fyne.CanvasObject)) *Window {
	w.focused = tell
	return w
}

// Focused tells the window of a control that it has got the keys.
func Focused(o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	at := driver.CanvasForObject(o)
	for _, w := range driver.AllWindows() {
		if own, ok := w.Canvas().Content().(*Window); ok && w.Canvas() == at && own.focused != nil {
			own.focused(o)
		}
	}
}

// CreateRenderer implements fyne.Widget.
func (w *Window) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(w.content) }

// Offered offers a key to the window in which a control has the focus, and says
// whether it was taken there.
func Offered(by fyne.Focusable, k *fyne.KeyEvent) bool {
	for _, w := range fyne.CurrentApp().Driver().AllWindows() {
		if own, ok := w.Canvas().Content().(*Window); ok && w.Canvas().Focused() == by {
			return own.hear(k)
		}
	}
	return false
}

func enter(k *fyne.KeyEvent) bool { return k.Name == fyne.KeyReturn || k.Name == fyne.KeyEnter }

func arrow(k *fyne.KeyEvent) bool {
	return k.Name == fyne.KeyLeft || k.Name == fyne.KeyRight || k.Name == fyne.KeyUp || k.Name == fyne.KeyDown
}

// letGo takes the keys from a control: whoever has worked it means the window's keys
// again afterwards.
func letGo(o fyne.CanvasObject) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(o); c != nil {
		c.Unfocus()
	}
}
