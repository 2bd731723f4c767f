package export_test

import (
	"image/color"
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/export"
)

func TestParseGround(t *testing.T) {
	for s, want := range map[string]export.Ground{
		"paper": {}, "Clear": {Clear: true}, "green": {Flat: export.KeyGreen}, "blue": {Flat: export.KeyBlue}, "magenta": {Flat: export.KeyMagenta},
		"#00b140": {Flat: export.KeyGreen}, "#0a0B0c": {Flat: color.NRGBA{10, 11, 12, 255}},
	} {
		if got, err := export.ParseGround(s); err != nil || got != want {
			t.Errorf("ParseGround(%q) = %v, %v, want %v", s, got, err, want)
		}
	}
	for _, s := range []string{"", "pink", "00B140", "#00B14", "#00B1400", "#+0B140", "#GGGGGG", "# 0B140"} {
		if got, err := export.ParseGround(s); err == nil || !strings.Contains(err.Error(), "want paper, clear") {
			t.Errorf("ParseGround(%q) = %v, %v, want an error that says what there is", s, got, err)
		}
	}
}

func TestGroundUnder(t *testing.T) {
	paper := color.NRGBA{1, 2, 3, 255}
	for g, want := range map[export.Ground]color.NRGBA{
		{}: paper, {Clear: true}: {}, {Flat: export.KeyBlue}: export.KeyBlue, {Clear: true, Flat: export.KeyBlue}: {},
	} {
		s := &canvas.Scene{Width: 7, Background: paper}
		if got := g.Under(s); got.Background != want || got.Width != 7 || s.Background != paper {
			t.Errorf("%+v.Under a scene on %v: %v, and the scene is now on %v, want %v", g, paper, got.Background, s.Background, want)
		}
	}
}

// A keyer goes by the two colour differences (ITU-R BT.709). Magenta is farther
// from every colour of a picture than keyers reach (0.1 to 0.2 as they are set at first: common practice).
func TestMagentaIsFarFromEveryMark(t *testing.T) {
	differences := func(c color.NRGBA) (cb, cr float64) {
		r, g, b := float64(c.R)/255, float64(c.G)/255, float64(c.B)/255
		y := 0.2126*r + 0.7152*g + 0.0722*b
		return (b - y) / 1.8556, (r - y) / 1.5748
	}
	kb, kr := differences(export.KeyMagenta)
	l := look.Daylight
	for _, c := range []color.NRGBA{look.Orange, look.Sky, look.Green, look.Yellow, look.Blue, look.Rust, look.Mauve,
		l.Paper, l.Surface, l.Court, l.Kitchen, l.Line, l.Net, l.Ink, l.Quiet, l.Plate, l.Ball, l.Teams[0].Run, l.Teams[1].Run} {
		if b, r := differences(c); math.Hypot(b-kb, r-kr) < 0.3 {
			t.Errorf("%v is %.2f from the magenta to key, want 0.3 at least", c, math.Hypot(b-kb, r-kr))
		}
	}
}
