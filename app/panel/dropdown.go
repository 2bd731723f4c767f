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
	Keys func(*fyne.KeyEvent) // takes the keys that a choice has no use for; nil offers them to its window

	pointed bool // the pointer has opened the list, not a key
}

// NewDropdown is a choice among options; changed may be nil.
func NewDropdown(options []string, changed func(string)) *Dropdown {
	d := &Dropdown{}
	d.Options, d.OnChanged = options, changed
	d.ExtendBaseWidget(d)
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
		if d.Keys != nil {
			d.Keys(k)
		} else {
			heard.Offered(d, k)
		}
	}
}

// Pointed says whether the pointer has opened the list last, not a key.
func (d *Dropdown) Pointed() bool { return d.pointed }

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
