package film

import (
	"slices"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/model/units"
)

// mostRows is how many lines the captions of a moment have at most: an upright picture
// has short lines, and room for one more.
func mostRows(safe compose.Area) int {
	if safe.Max.Y-safe.Min.Y > safe.Width() {
		return 4
	}
	return 3
}

// pad is the room round a caption on its plate, in ems.
const pad = 0.5

// plateAlpha lets the court shine through the captions' plate a little.
const plateAlpha = 0xE6

// spoken are the captions at a moment: what the play says there, then what the
// take says. None stands there twice. Of two plays side by side only what the take
// says is shown: two voices at once cannot be read.
func (t take) spoken(m reel.Moment) []string {
	var all []string
	if t.Other == nil {
		for _, i := range t.Rally.At(m.T).Cues {
			if c := t.Rally.Play.Cues[i]; c.Kind == lesson.Caption && c.Text != "" {
				all = append(all, c.Text)
			}
		}
	}
	if m.Caption != "" && !slices.Contains(all, m.Caption) {
		all = append(all, m.Caption)
	}
	return all
}

// captionLines are the lines of what is said at once. A text is cut, and says so,
// where the ones after it need a line each.
func captionLines(texts []string, safe compose.Area, em float64) []string {
	var lines []string
	rows := mostRows(safe)
	texts = texts[:min(len(texts), rows)]
	for i, text := range texts {
		others := len(texts) - 1 - i
		lines = append(lines, wrapped(text, safe.Width()-2*em*pad, em, true, rows-len(lines)-others)...)
	}
	return lines
}

// captionRows is how many lines stand below take n where most is said.
func (f *Film) captionRows(n, width, height int) int {
	t, most := f.takes[n], 0
	for _, at := range f.newsOf(n) {
		lines := captionLines(t.spoken(f.Reel.At(at)), Safe(width, height), CaptionEm(width, height))
		most = max(most, len(lines))
	}
	return most
}

// newsOf are the times of the clip at which take n begins to say something: where
// most is said is among them.
func (f *Film) newsOf(n int) []units.Seconds {
	t := f.takes[n]
	all := []units.Seconds{t.Start}
	for _, c := range f.Reel.Captions() {
		if c.Take == n {
			all = append(all, c.From)
		}
	}
	for _, c := range t.Rally.Play.Cues {
		if c.Kind == lesson.Caption {
			all = append(all, f.Reel.Times(n, t.Rally.TimeAt(c.Span.From))...)
		}
	}
	return all
}

// captionTop is where the plate of so many lines begins.
func captionTop(safe compose.Area, em float64, rows int) float64 {
	return safe.Max.Y - em*(lead*float64(rows)+pad)
}

// caption writes the lower third.
func (f *Film) caption(s *canvas.Scene, texts []string) {
	em, safe := CaptionEm(s.Width, s.Height), Safe(s.Width, s.Height)
	lines := captionLines(texts, safe, em)
	if len(lines) == 0 {
		return
	}
	b := f.board(s, "caption")
	half := widest(lines, em, true)/2 + em*pad
	x := (safe.Min.X + safe.Max.X) / 2
	top := captionTop(safe, em, len(lines))
	b.plate("plate", compose.Area{Min: canvas.Px{X: x - half, Y: top}, Max: canvas.Px{X: x + half, Y: safe.Max.Y}})
	b.lines("line", x, top+em*pad/2, lines, typeface{em, true, canvas.Centre, b.look.Ink})
	s.Panels = append(s.Panels, b.panel)
}

// plate is a ground for words on the court.
func (b *board) plate(id string, a compose.Area) {
	fill := b.look.Plate
	if !b.over {
		fill.A = plateAlpha
	}
	b.box(id, a, fill)
}
