package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
)

// Dropdown is the toolkit's choice from a list with one mend: after a minute at
// rest the toolkit may have forgotten which window a widget is in until the next
// paint, and a press on its own choice then ends the program. This one asks for a
// paint when the pointer comes, and ignores a press that comes before it.
type Dropdown struct {
	widget.Select
	pointed bool // the pointer has opened the list, not a key
}

// NewDropdown is a choice among options; changed may be nil.
func NewDropdown(options []string, changed func(string)) *Dropdown {
	d := &Dropdown{}
	d.Options, d.OnChanged = options, changed
	d.ExtendBaseWidget(d)
	return d
}

// NewLettingGo is a choice, one of its options chosen from the start, that gives the
// keys to its window where the pointer has chosen: whoever points means the window's
// keys again afterwards.
func NewLettingGo(options []string, at int, changed func(at int)) *Dropdown {
	d := NewDropdown(options, nil)
	d.SetSelectedIndex(at)
	d.OnChanged = func(string) {
		if c := fyne.CurrentApp().Driver().CanvasForObject(d); d.pointed && c != nil {
			c.Unfocus()
		}
		changed(d.SelectedIndex())
	}
	return d
}

// MouseIn implements desktop.Hoverable.
func (d *Dropdown) MouseIn(e *desktop.MouseEvent) {
	d.placed()
	d.Select.MouseIn(e)
}

// Tapped implements fyne.Tappable.
func (d *Dropdown) Tapped(e *fyne.PointEvent) {
	if d.placed() {
		d.pointed = true
		d.Select.Tapped(e)
	}
}

// TypedKey implements fyne.Focusable.
func (d *Dropdown) TypedKey(k *fyne.KeyEvent) {
	d.pointed = false
	switch k.Name {
	case fyne.KeySpace, fyne.KeyUp, fyne.KeyDown, fyne.KeyLeft, fyne.KeyRight:
		if d.placed() {
			d.Select.TypedKey(k)
		}
	default:
		heard.Offered(d, k)
	}
}

// placed says whether the toolkit knows the widget's window, and asks for a
// paint if it does not.
func (d *Dropdown) placed() bool {
	driver := fyne.CurrentApp().Driver()
	if driver.CanvasForObject(d) != nil {
		return true
	}
	for _, w := range driver.AllWindows() {
		w.Canvas().Refresh(d)
	}
	return false
}
