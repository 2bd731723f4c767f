package looks

import (
	"fyne.io/fyne/v2"

	"homeside/canvas/look"
)

// Now is the look of the pictures in the window, as the theme of the app is; the
// one of a page where the theme is not of this package. What is drawn and kept
// is to be drawn again when it is another.
func Now() *look.Look {
	s := fyne.CurrentApp().Settings()
	if t, ok := s.Theme().(*Theme); ok {
		return t.of(s.ThemeVariant()).look
	}
	return &look.Daylight
}

// pointPx is how many pixels of an unscaled screen a point takes in the window.
const pointPx = 1.25

// Letters is how much larger than usual the theme's letters are: what is sized
// for letters is to be multiplied by it.
func Letters() float32 {
	if t, ok := fyne.CurrentApp().Settings().Theme().(*Theme); ok {
		return t.letters()
	}
	return 1
}

// Point is how many of the toolkit's units a point of a picture takes: more with
// large text, so that letters and the marks that hold them grow together.
func Point() float64 { return pointPx * float64(Letters()) }
