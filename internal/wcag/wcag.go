// Package wcag computes the contrast of two colours as the Web Content
// Accessibility Guidelines define it, for tests of looks. It promises the
// formulas of the W3C Recommendation WCAG 2.2 (12 December 2024), "relative
// luminance" and "contrast ratio", and the least ratios asked for there.
package wcag

import (
	"image/color"
	"math"
)

// The least contrast ratios.
const (
	Text     = 4.5 // success criterion 1.4.3, level AA, of text in its usual size
	Graphics = 3.0 // success criterion 1.4.11: marks, controls and what shows where the keys are
)

// Luminance is a colour's relative luminance, 0 for black to 1 for white; alpha
// is left out.
func Luminance(c color.Color) float64 {
	n := color.NRGBAModel.Convert(c).(color.NRGBA)
	return 0.2126*linear(n.R) + 0.7152*linear(n.G) + 0.0722*linear(n.B)
}

// linear is an sRGB channel as light.
func linear(v uint8) float64 {
	s := float64(v) / 255
	if s <= 0.04045 {
		return s / 12.92
	}
	return math.Pow((s+0.055)/1.055, 2.4)
}

// Contrast is the ratio of two colours, 1 to 21, whichever comes first.
func Contrast(a, b color.Color) float64 {
	la, lb := Luminance(a), Luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

// Over is a colour that lets some of the one under it through, laid over it.
func Over(top, under color.Color) color.NRGBA {
	t, u := color.NRGBAModel.Convert(top).(color.NRGBA), color.NRGBAModel.Convert(under).(color.NRGBA)
	share := float64(t.A) / 255
	mix := func(a, b uint8) uint8 { return uint8(math.Round(float64(a)*share + float64(b)*(1-share))) }
	return color.NRGBA{mix(t.R, u.R), mix(t.G, u.G), mix(t.B, u.B), 0xFF}
}
