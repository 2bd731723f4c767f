package wcag

import (
	"image/color"
	"math"
	"testing"
)

// #767676 on white is 4.54:1, the lightest grey that passes for text (a value
// widely published); black on white is 21:1 by definition; pure red on white is
// 3.9985:1 and blue on white 8.5925:1 by the coefficients (worked by hand).
func TestContrast(t *testing.T) {
	white := color.NRGBA{255, 255, 255, 255}
	for _, c := range []struct {
		colour color.NRGBA
		want   float64
	}{
		{color.NRGBA{0x76, 0x76, 0x76, 255}, 4.5422}, {color.NRGBA{0, 0, 0, 255}, 21}, {white, 1},
		{color.NRGBA{255, 0, 0, 255}, 1.05 / 0.2626}, {color.NRGBA{0, 0, 255, 255}, 1.05 / 0.1222},
	} {
		for _, got := range []float64{Contrast(c.colour, white), Contrast(white, c.colour)} {
			if math.Abs(got-c.want) > 0.00005 {
				t.Errorf("Contrast(%v, white) = %.5f, want %.5f", c.colour, got, c.want)
			}
		}
	}
}

func TestOver(t *testing.T) {
	white := color.NRGBA{255, 255, 255, 255}
	for alpha, want := range map[uint8]uint8{0: 255, 255: 0, 51: 204} {
		if got := Over(color.NRGBA{A: alpha}, white); got != (color.NRGBA{want, want, want, 255}) {
			t.Errorf("black of alpha %d over white is %v, want grey %d", alpha, got, want)
		}
	}
}
