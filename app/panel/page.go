package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// Page is one of the things that take each other's place in a window. It is laid out
// only while it is shown: a window with many pages opens as fast as one with one.
type Page struct{ Box *fyne.Container }

// NewPage is a page of some content, hidden until Show.
func NewPage(content fyne.CanvasObject) *Page {
	p := &Page{}
	p.Box = container.New(whileShown{p}, content)
	p.Box.Hide()
	return p
}

// Show shows the page, laid out for the room that it has now.
func (p *Page) Show() {
	p.Box.Show()
	Relay(p.Box)
}

// Relay lays out a container anew in the size that it has. The toolkit does so by
// itself when a part wants another size, but not for all parts if several do at once.
func Relay(c *fyne.Container) { c.Layout.Layout(c.Objects, c.Size()) }

// Hide takes the page away.
func (p *Page) Hide() { p.Box.Hide() }

// Shown says whether the page is shown.
func (p *Page) Shown() bool { return p.Box.Visible() }

// whileShown is the layout of a page.
type whileShown struct{ page *Page }

// MinSize implements fyne.Layout.
func (l whileShown) MinSize(o []fyne.CanvasObject) fyne.Size { return o[0].MinSize() }

// Layout implements fyne.Layout.
func (l whileShown) Layout(o []fyne.CanvasObject, size fyne.Size) {
	if l.page.Shown() {
		o[0].Resize(size)
	}
}
