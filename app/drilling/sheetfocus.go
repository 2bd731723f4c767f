package drilling

import (
	"fyne.io/fyne/v2"

	"homeside/app/heard"
)

// canvas is the window's canvas, nil where there is none. The toolkit knows of no
// part that it has not painted yet.
func (s *sheet) canvas() fyne.Canvas {
	driver := fyne.CurrentApp().Driver()
	if c := driver.CanvasForObject(s.start); c != nil {
		return c
	}
	return driver.CanvasForObject(s.next)
}

// keepFocus gives the keys to the next button where they were on an answer that
// has gone.
func (s *sheet) keepFocus() {
	if c := s.canvas(); c != nil {
		if b, ok := c.Focused().(*heard.Button); ok && !b.Visible() {
			c.Focus(s.next)
		}
	}
}

// moveFocus gives the keys to a button if something on the page has them, as
// that goes.
func (s *sheet) moveFocus(to *heard.Button) {
	if c := s.canvas(); c != nil && c.Focused() != nil {
		c.Focus(to)
	}
}
