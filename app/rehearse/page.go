package rehearse

import "fyne.io/fyne/v2"

// Page is what the window needs of a way to rehearse.
type Page interface {
	Content() fyne.CanvasObject
	Key(*fyne.KeyEvent) bool // false: the page has no use for it
	Close()                  // it is shown no longer
}

// Refresher is a page that follows the lesson while it is open.
type Refresher interface{ Refresh() }

// Choice is a page to choose in the row at the top.
type Choice struct {
	Name string // as people read it
	Tag  string // as the trace has it

	// Open makes the page. The window offers it the keys that its controls have no
	// use for, see the package heard.
	Open func() Page
}
