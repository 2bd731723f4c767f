package drilling

import (
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/drill"
)

// inRoom checks that all text of a scene is inside it.
func inRoom(t *testing.T, what string, s *canvas.Scene) {
	t.Helper()
	for _, p := range s.Panels {
		for _, shape := range p.Shapes {
			x := shape.Text
			width := canvas.Points(look.Width(x.Text, x.Bold)) * x.Size
			left := x.At.Right
			if x.Align == canvas.Centre {
				left -= width / 2
			}
			wide, tall := canvas.Points(float64(s.Width)/s.PxPerPoint), canvas.Points(float64(s.Height)/s.PxPerPoint)
			if left < 0 || left+width > wide+0.5 || x.At.Down-x.Size < 0 || x.At.Down > tall {
				t.Errorf("%s at %d x %d: %q lies from %.0f to %.0f of %.0f, at %.0f of %.0f", what, s.Width, s.Height, x.Text, left, left+width, wide, x.At.Down, tall)
			}
		}
	}
}

var boardSizes = [][2]int{{1280, 560}, {1920, 840}, {2560, 1120}, {640, 300}, {400, 700}, {1, 1}}

// However large or small, long or short, the text stays on the board.
func TestBoardsFit(t *testing.T) {
	open := drill.OpenHand
	long := strings.Repeat("Bartholomew-Featherstonehaugh of the very long names ", 6)
	for what, b := range map[string]board{
		"a call":     {lines: []line{{"4-7-2", 104, true, plain}}, foot: "In a row: 3"},
		"long text":  {sign: &open, lines: []line{{long, 32, true, plain}, {long, 16, false, quiet}}, foot: long},
		"one word":   {sign: &open, lines: []line{{strings.Repeat("W", 60), 46, true, bad}}},
		"text alone": {lines: []line{{long, 20, false, plain}, {"15-13-2", 104, true, plain}}, foot: "x"},
	} {
		for _, size := range boardSizes[:5] {
			inRoom(t, what, b.scene(size[0], size[1], &look.Daylight))
		}
		b.scene(1, 1, &look.Night) // a window being made
	}
}

// A text that has room is as large as asked; one that has not is made smaller as
// a whole, not cut.
func TestFitted(t *testing.T) {
	short := fitted([]line{{"Stay", 46, true, plain}}, 300, 100)
	if len(short.lines) != 1 || short.lines[0].size != 46 {
		t.Errorf("a short text is set in %v", short.lines)
	}
	many := fitted([]line{{strings.Repeat("stay or switch ", 20), 46, true, plain}, {"end", 23, false, quiet}}, 300, 100)
	said := ""
	for _, l := range many.lines {
		said += l.text + " "
	}
	if last := many.lines[len(many.lines)-1]; many.tall > 100 || strings.Count(said, "switch") != 20 || last.size*2 != many.lines[0].size {
		t.Errorf("a long text is %.0f high, has %d of 20 switches, its last line is %.1f beside %.1f", many.tall, strings.Count(said, "switch"), last.size, many.lines[0].size)
	}
}

// The parts of a board lie beside each other.
func TestRoom(t *testing.T) {
	open := drill.OpenHand
	for _, size := range boardSizes[:4] {
		r := board{sign: &open, film: &film{}}.room(size[0], size[1])
		if r.left.Overlaps(r.text) || r.small.Overlaps(r.text) || r.small.Overlaps(r.left) || r.text.Empty() || r.left.Empty() || r.small.Empty() {
			t.Errorf("at %v: court %v, sign %v, text %v", size, r.left, r.small, r.text)
		}
	}
}
