package drilling

import (
	"strconv"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
)

// setLine is a line of text as it is set.
type setLine struct {
	line
	text string
}

// setText is text wrapped to a width, as large as a height allows.
type setText struct {
	name          string // its lines' IDs begin with it
	lines         []setLine
	width, height float64 // of the room in points
	tall          float64
	middle        bool // centred from left to right
	centred       bool // and from top to foot
}

// Leads are from line to line, in ems: within a text, and from one to the next.
const (
	lead     = 1.2
	gap      = 0.35
	smallest = 0.2 // of the size asked for, where a text does not fit
)

// fitted is lines in a room of a size in points, made smaller together until they
// fit.
func fitted(lines []line, width, height float64) setText {
	for k := 1.0; ; k -= 0.04 {
		t := set(lines, width, canvas.Points(k))
		t.height = height
		if t.tall <= height && t.whole(lines) || k < smallest {
			return t
		}
	}
}

// set is lines wrapped to a width, their sizes multiplied by k.
func set(lines []line, width float64, k canvas.Points) setText {
	t := setText{name: "line", width: width}
	for _, l := range lines {
		l.size *= k
		rows := compose.Wrap(l.text, width, l.size, l.bold)
		for _, row := range rows {
			t.lines = append(t.lines, setLine{l, row})
		}
		t.tall += (lead*float64(len(rows)) + gap) * float64(l.size)
	}
	return t
}

// whole says whether no word had to be cut.
func (t setText) whole(lines []line) bool {
	cut := func(s string) bool { r := []rune(s); return len(r) > 0 && r[len(r)-1] == '…' }
	asked := 0
	for _, l := range lines {
		if cut(l.text) {
			asked++
		}
	}
	for _, l := range t.lines {
		if cut(l.text) {
			asked--
		}
	}
	return asked >= 0
}

// add adds the text to a panel, its room's corner at a place in points.
func (t setText) add(p *canvas.Panel, left, top float64, lk *look.Look) {
	align, x, y := canvas.Start, left, top
	if t.middle {
		align, x = canvas.Centre, left+t.width/2
	}
	if t.centred {
		y += max(t.height-t.tall, 0) / 2
	}
	for i, l := range t.lines {
		if i > 0 && t.lines[i-1].line != l.line {
			y += gap * float64(t.lines[i-1].size)
		}
		y += float64(l.size)
		p.Add(canvas.Shape{ID: t.name + "." + strconv.Itoa(i), Layer: canvas.Labels, Label: l.text, Text: &canvas.Text{
			At: canvas.Pos{Right: canvas.Points(x), Down: canvas.Points(y)}, Text: l.text, Size: l.size, Bold: l.bold, Align: align, Colour: l.tone.colour(lk),
		}})
		y += (lead - 1) * float64(l.size)
	}
}
