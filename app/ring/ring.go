package ring

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// thick is how wide the ring's lines are in the toolkit's units.
const thick = 2.5

// Ring is drawn over a part of the window while that part has the keys.
type Ring struct {
	box   *fyne.Container
	lines [4]*fynecanvas.Rectangle
	whole *fyne.Container // with what it is round; nil before Over
}

// New is a ring that does not show.
func New() *Ring {
	r := &Ring{}
	for i := range r.lines {
		r.lines[i] = fynecanvas.NewRectangle(theme.Color(theme.ColorNamePrimary))
	}
	r.box = container.New(around{}, r.lines[0], r.lines[1], r.lines[2], r.lines[3])
	r.box.Hide()
	return r
}

// Over is content with the ring over it.
func (r *Ring) Over(content fyne.CanvasObject) *fyne.Container {
	r.whole = container.NewStack(content, r.box)
	return r.whole
}

// repaint has the window painted. The toolkit does not for a container that comes to
// show, and of the ring, which it has not painted yet, it does not know the window;
// moving what both are in to where it is asks for no more than a paint.
func (r *Ring) repaint() {
	if r.whole != nil {
		r.whole.Move(r.whole.Position())
	}
}

// Show draws the ring or takes it away.
func (r *Ring) Show(yes bool) {
	if yes == r.box.Visible() {
		return
	}
	for _, l := range r.lines {
		l.FillColor = theme.Color(theme.ColorNamePrimary) // the look may have changed
	}
	if yes {
		r.box.Show()
		r.repaint()
	} else {
		r.box.Hide()
	}
}

// Shown says whether it is drawn.
func (r *Ring) Shown() bool { return r.box.Visible() }

// around lays four lines along the edges: top, foot, left, right.
type around struct{}

// MinSize implements fyne.Layout.
func (around) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// Layout implements fyne.Layout.
func (around) Layout(o []fyne.CanvasObject, size fyne.Size) {
	across, down := fyne.NewSize(size.Width, thick), fyne.NewSize(thick, size.Height)
	for i, at := range []struct {
		place fyne.Position
		size  fyne.Size
	}{
		{fyne.NewPos(0, 0), across}, {fyne.NewPos(0, size.Height-thick), across},
		{fyne.NewPos(0, 0), down}, {fyne.NewPos(size.Width-thick, 0), down},
	} {
		o[i].Move(at.place)
		o[i].Resize(at.size)
	}
}

// Take gives the keys to a part of the window, if the toolkit knows which window
// it is in.
func Take(o fyne.Focusable) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(o.(fyne.CanvasObject)); c != nil {
		c.Focus(o)
	}
}
