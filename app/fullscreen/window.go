package fullscreen

import "fyne.io/fyne/v2"

// Window is a window that takes the whole screen from its first paint on. Use New.
type Window struct {
	fyne.Window
	asked, gone bool
}

// New is a window with a title and no margins that is not shown yet. closed is
// called when it has gone, whoever closed it.
func New(a fyne.App, title string, closed func()) *Window {
	w := &Window{Window: a.NewWindow(title)}
	w.SetPadded(false)
	w.SetOnClosed(func() {
		w.gone = true
		closed()
	})
	w.Resize(fyne.NewSize(1280, 800))
	return w
}

// Painted is to be called from within every paint. Only a window that is there
// can be made full screen: a manager of windows may not have seen one that is
// about to be.
func (w *Window) Painted() {
	if w.asked {
		return
	}
	w.asked = true
	fyne.Do(func() {
		if !w.gone {
			w.SetFullScreen(true)
		}
	})
}
