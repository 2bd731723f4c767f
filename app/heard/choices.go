package heard

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Check is a box with a tick.
type Check struct{ widget.Check }

// NewCheck is a box with a tick; changed may be nil.
func NewCheck(text string, changed func(bool)) *Check {
	c := &Check{}
	c.Text, c.OnChanged = text, changed
	c.ExtendBaseWidget(c)
	return c
}

// TypedKey implements fyne.Focusable.
func (c *Check) TypedKey(k *fyne.KeyEvent) {
	if !Offered(c, k) {
		c.Check.TypedKey(k)
	}
}

// Slider is a handle on a line.
type Slider struct{ widget.Slider }

// NewSlider is a slider between two values.
func NewSlider(from, to float64) *Slider {
	s := &Slider{}
	s.Min, s.Max, s.Step = from, to, 1
	s.ExtendBaseWidget(s)
	return s
}

// TypedKey implements fyne.Focusable. The arrows are its own.
func (s *Slider) TypedKey(k *fyne.KeyEvent) {
	if arrow(k) || !Offered(s, k) {
		s.Slider.TypedKey(k)
	}
}
