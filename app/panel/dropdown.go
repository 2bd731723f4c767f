package panel

import (
	"cmp"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
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

// Whole is how wide the choice is to show any of its options whole.
func (d *Dropdown) Whole() float32 {
	widest := d.holding(d.PlaceHolder)
	for _, o := range d.Options {
		widest = max(widest, d.holding(o))
	}
	return widest
}

// Now is how wide the choice is to show whole what is chosen now.
func (d *Dropdown) Now() float32 { return d.holding(cmp.Or(d.Selected, d.PlaceHolder)) }

// holding is how wide a choice is that shows a text whole.
func (d *Dropdown) holding(text string) float32 {
	return fyne.MeasureText(text, theme.TextSize(), fyne.TextStyle{}).Width + theme.IconInlineSize() + 5*theme.InnerPadding()
}

// mostRoomy is the widest that a choice in a row asks to be: in a small window a
// row is not wider.
const mostRoomy = 520

// Roomy is a choice in the room of the longest of its options.
func Roomy(d *Dropdown) *fyne.Container { return container.New(roomy{}, d) }

type roomy struct{}

// MinSize implements fyne.Layout.
func (roomy) MinSize(o []fyne.CanvasObject) fyne.Size {
	d := o[0].(*Dropdown)
	return fyne.NewSize(min(d.Whole(), mostRoomy), d.MinSize().Height)
}

// Layout implements fyne.Layout: the choice keeps its height in a higher row.
func (roomy) Layout(o []fyne.CanvasObject, size fyne.Size) { ofWidth(size.Width).Layout(o, size) }

// FocusGained implements fyne.Focusable.
func (d *Dropdown) FocusGained() {
	d.Select.FocusGained()
	heard.Focused(d)
}
