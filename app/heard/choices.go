package heard

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Check is a box with a tick. The space bar turns it round.
type Check struct {
	widget.Check
	LetsGo bool // worked by the pointer it gives the keys to its window
}

// NewCheck is a box with a tick; changed may be nil.
func NewCheck(text string, changed func(bool)) *Check {
	c := &Check{}
	c.Text, c.OnChanged = text, changed
	c.ExtendBaseWidget(c)
	return c
}

// TypedKey implements fyne.Focusable. The space bar comes as a letter, too.
func (c *Check) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeySpace || !Offered(c, k) {
		c.Check.TypedKey(k)
	}
}

// Tapped implements fyne.Tappable.
func (c *Check) Tapped(e *fyne.PointEvent) {
	c.Check.Tapped(e)
	if c.LetsGo {
		letGo(c)
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

// FocusGained implements fyne.Focusable.
func (c *Check) FocusGained() {
	c.Check.FocusGained()
	Focused(c)
}

// FocusGained implements fyne.Focusable.
func (s *Slider) FocusGained() {
	s.Slider.FocusGained()
	Focused(s)
}
