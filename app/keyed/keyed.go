package keyed

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"homeside/app/panel"
)

// Keys takes a key that a control has no use for.
type Keys func(*fyne.KeyEvent)

func (k Keys) take(e *fyne.KeyEvent) {
	if k != nil {
		k(e)
	}
}

// Button is a button; the space bar and Enter press it.
type Button struct {
	widget.Button
	keys Keys
}

// NewButton is a button that does something; an icon may be nil.
func NewButton(label string, icon fyne.Resource, tapped func(), keys Keys) *Button {
	b := &Button{keys: keys}
	b.Text, b.Icon, b.OnTapped = label, icon, tapped
	b.ExtendBaseWidget(b)
	return b
}

// TypedKey implements fyne.Focusable.
func (b *Button) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		b.Tapped(nil)
	default:
		b.keys.take(k)
	}
}

// Check is a choice of yes or no; the space bar turns it round.
type Check struct {
	widget.Check
	keys Keys
}

// NewCheck is a choice of yes or no.
func NewCheck(label string, on bool, changed func(bool), keys Keys) *Check {
	c := &Check{keys: keys}
	c.Text, c.Checked, c.OnChanged = label, on, changed
	c.ExtendBaseWidget(c)
	return c
}

// TypedKey implements fyne.Focusable. The space bar comes as a letter, too.
func (c *Check) TypedKey(k *fyne.KeyEvent) {
	if k.Name != fyne.KeySpace {
		c.keys.take(k)
	}
}

// Tapped implements fyne.Tappable.
func (c *Check) Tapped(e *fyne.PointEvent) {
	c.Check.Tapped(e)
	letGo(c)
}

// letGo takes the keys from a control that the pointer has worked: who points
// means the window's keys again afterwards.
func letGo(o fyne.CanvasObject) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(o); c != nil {
		c.Unfocus()
	}
}

// NewDropdown is a choice among options, one of them chosen from the start: the
// space bar and up and down open it, left and right go through it.
func NewDropdown(options []string, at int, changed func(at int), keys Keys) *panel.Dropdown {
	d := panel.NewDropdown(options, nil)
	d.SetSelectedIndex(at)
	d.OnChanged = func(string) {
		if d.Pointed() {
			letGo(d)
		}
		changed(d.SelectedIndex())
	}
	d.Keys = keys.take
	return d
}
