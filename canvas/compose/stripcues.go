package compose

import (
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// cueFill is the share of its lane that the cues fill, one below the other where
// they overlap.
const cueFill = 0.84

// cueRow is where a cue lies in its lane.
type cueRow struct {
	lane     int
	row, of  int // from the top
	from, to units.Seconds
}

// cueRows finds a row for every cue, so that none hides another.
func (s Strip) cueRows() []cueRow {
	cues := s.Rally.Play.Cues
	rows := make([]cueRow, len(cues))
	ends := map[int][]units.Seconds{} // of the last cue of every row, by lane
	for i, c := range cues {
		r := cueRow{lane: rally.CueLane(c.Kind), from: s.Rally.TimeAt(c.Span.From), to: s.Rally.TimeAt(c.Span.To)}
		for r.row < len(ends[r.lane]) && ends[r.lane][r.row] > r.from {
			r.row++
		}
		if r.row == len(ends[r.lane]) {
			ends[r.lane] = append(ends[r.lane], 0)
		}
		ends[r.lane][r.row] = r.to
		rows[i] = r
	}
	for i := range rows {
		rows[i].of = len(ends[rows[i].lane])
	}
	return rows
}

// band is the top and the foot of a cue's row.
func (s Strip) band(r cueRow) (top, foot canvas.Points) {
	tall := s.laneHeight() * cueFill
	top = s.lane(r.lane) - tall/2 + tall*canvas.Points(r.row)/canvas.Points(r.of)
	return top, top + tall/canvas.Points(r.of)
}

// cues draws captions and signals as plates as long as they are shown.
func (s Strip) cues(g *canvas.Panel) {
	for i, r := range s.cueRows() {
		if !s.in(r.from, r.to) {
			continue
		}
		c := s.Rally.Play.Cues[i]
		text := s.cueText(c)
		top, foot := s.band(r)
		left, right := s.heldX(r.from), max(s.heldX(r.to), s.heldX(r.from)+1)
		name := "cue." + strconv.Itoa(i)
		fill, ink := s.look().Plate, s.look().Ink
		if c.Kind == lesson.Signal {
			fill, ink = s.look().Cue.Fill, s.look().Cue.Letter
		}
		g.Add(canvas.Shape{ID: name, Label: text, Layer: canvas.Runs, Path: paperBox(float64(left), float64(top)+0.5, float64(right), float64(foot)-0.5), Style: canvas.Style{Fill: fill, Stroke: s.look().Ink, Width: canvas.Pts(0.8)}})
		size := min(look.LabelSize, (foot-top)*0.85)
		if shown := Shorten(text, float64(right-left)-6, size, false); shown != "" && size >= leastCueText {
			g.Add(canvas.Shape{ID: name + ".text", Layer: canvas.Labels, Text: &canvas.Text{At: canvas.Pos{}.Shift(left+3, (top+foot)/2+size*0.36), Text: shown, Size: size, Align: canvas.Start, Colour: ink}})
		}
	}
}

// leastCueText is the smallest size that a cue's text is written in, in points.
const leastCueText canvas.Points = 5

// cueText is a caption's text, or who shows what.
func (s Strip) cueText(c lesson.Cue) string {
	if c.Kind == lesson.Caption {
		return c.Text
	}
	return s.Rally.NameOf(c.Giver) + ": " + words.Meaning(c.Meaning)
}
