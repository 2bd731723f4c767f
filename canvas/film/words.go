package film

import (
	"slices"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/words"
)

// mostRows is how many lines the captions of a moment have at most.
const mostRows = 3

// plateAlpha lets the court shine through the captions' plate a little.
const plateAlpha = 0xE6

// placeOf cuts the picture for a take and keeps the room of its longest caption.
func (f *Film) placeOf(t take, width, height int) place {
	all := compose.Area{Max: canvas.Px{X: float64(width), Y: float64(height)}}
	p := place{turn: turnOf(all)}
	em, safe := CaptionEm(width, height), Safe(width, height)
	for _, text := range t.captions() {
		p.rows = max(p.rows, len(captionRows(text, safe, em)))
	}
	free := f.freeOf(t, p, width, height)
	if len(t.pictures) == 1 {
		p.panels, p.free = []compose.Area{all}, []compose.Area{free}
		return p
	}
	right := all.Width() > wideShape*all.Height()
	p.turn, p.panels, p.free = canvas.Lying, parts(all, right), parts(free, right)
	p.panels[0], p.panels[1] = parted(p.panels[0], p.panels[1], p.free)
	p.label(t, labelEm(width, height))
	return p
}

// parted moves the line between two panels to where their free parts meet.
func parted(a, b compose.Area, free []compose.Area) (compose.Area, compose.Area) {
	if a.Max.X < b.Max.X {
		a.Max.X, b.Min.X = free[0].Max.X, free[1].Min.X
	} else {
		a.Max.Y, b.Min.Y = free[0].Max.Y, free[1].Min.Y
	}
	return a, b
}

// freeOf is what the words leave free of a picture: captions below, in an upright
// picture what a player of clips covers, the speed in a corner.
func (f *Film) freeOf(t take, p place, width, height int) compose.Area {
	em, safe, label := CaptionEm(width, height), Safe(width, height), labelEm(width, height)
	free := compose.Area{Max: canvas.Px{X: float64(width), Y: float64(height)}}
	if p.rows > 0 {
		free.Max.Y = captionTop(safe, em, p.rows) - em/4
	} else if height > width {
		free.Max.Y = safe.Max.Y
	}
	switch {
	case len(t.pictures) > 1:
		free.Min.Y = safe.Min.Y
	case height > width:
		free.Min.Y = safe.Min.Y
		if t.slow() {
			free.Min.Y += label * labelHigh
		}
	case t.slow() && width > height:
		free.Min.X = safe.Min.X + label*speedWide
	}
	return f.logoRoom(free, width, height)
}

// slow says whether any of the take is not at match speed.
func (t take) slow() bool { return t.Rate() != 1 || len(t.Slows) > 0 }

// speedWide is more than the width of the widest speed in its ems.
const speedWide = 3.6

// captions are all captions that may stand below a take, each by itself. Of two
// plays side by side only what the take says is shown: two voices at once cannot
// be read.
func (t take) captions() []string {
	all := []string{t.Caption}
	for _, z := range t.Freezes {
		all = append(all, z.Caption)
	}
	if t.Other != nil {
		return all
	}
	for _, c := range t.Rally.Play.Cues {
		if c.Kind == lesson.Caption && t.Rally.TimeAt(c.Span.From) <= t.To && t.Rally.TimeAt(c.Span.To) >= t.From {
			all = append(all, c.Text)
		}
	}
	return all
}

// spoken are the captions at a moment: what the play says there, then what the
// take says. None stands there twice.
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

func captionRows(text string, safe compose.Area, em float64) []string {
	return wrapped(text, safe.Width()-2*em*pad, em, true, mostRows)
}

// pad is the room round a caption on its plate, in ems.
const pad = 0.5

// captionTop is where the plate of so many lines begins.
func captionTop(safe compose.Area, em float64, rows int) float64 {
	return safe.Max.Y - em*(lead*float64(rows)+pad)
}

// words writes what is said over a take.
func (f *Film) words(s *canvas.Scene, m reel.Moment) {
	t, sc := f.takes[m.Take], f.sceneryOf(m.Take, s.Width, s.Height)
	f.caption(s, t.spoken(m))
	if len(sc.panels) > 1 {
		f.labels(s, sc)
	}
	f.speed(s, sc, m)
	safe := Safe(s.Width, s.Height)
	if sc.rows > 0 {
		safe.Max.Y = captionTop(safe, CaptionEm(s.Width, s.Height), sc.rows)
	}
	f.putLogo(s, safe)
}

// caption writes the lower third.
func (f *Film) caption(s *canvas.Scene, texts []string) {
	em, safe := CaptionEm(s.Width, s.Height), Safe(s.Width, s.Height)
	var lines []string
	for _, text := range texts {
		lines = append(lines, captionRows(text, safe, em)...)
	}
	if len(lines) == 0 {
		return
	}
	lines = lines[:min(len(lines), mostRows)]
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
	fill.A = plateAlpha
	b.box(id, a, fill)
}

// labelHigh is the height of the speed's plate in its ems.
const labelHigh = lead + pad

// labelRows is how many lines the name of a play has at most.
const labelRows = 2

// label names two plays above their courts and makes room for it. Beside the names
// there is room for the speed.
func (p *place) label(t take, em float64) {
	beside := 2 * speedWide // of a name in the middle of the picture
	if p.free[0].Max.X < p.free[1].Max.X {
		beside = speedWide
	}
	most := 0
	for i, pic := range t.pictures {
		lines := wrapped(pic.Rally.Play.Title, p.free[i].Width()-em*(2*pad+beside+1), em, true, labelRows)
		p.labels = append(p.labels, lines)
		most = max(most, len(lines))
	}
	for i := range p.free {
		p.free[i].Min.Y += em * (lead*float64(most) + pad)
	}
}

// labelEm is the size of labels, at the least that can be read on a phone.
func labelEm(width, height int) float64 { return emFor(width, height, leastArc) }

// labels name two plays side by side.
func (f *Film) labels(s *canvas.Scene, sc *scenery) {
	em := labelEm(s.Width, s.Height)
	b := f.board(s, "labels")
	for i, lines := range sc.labels {
		if len(lines) == 0 {
			continue
		}
		x, foot := middle(sc.free[i]).X, sc.free[i].Min.Y
		top, half := foot-em*(lead*float64(len(lines))+pad), widest(lines, em, true)/2+em*pad
		id := sides[i] + "play"
		b.plate(id+".plate", compose.Area{Min: canvas.Px{X: x - half, Y: top}, Max: canvas.Px{X: x + half, Y: foot}})
		b.lines(id, x, top+em*pad/2, lines, typeface{em, true, canvas.Centre, b.look.Ink})
	}
	s.Panels = append(s.Panels, b.panel)
}

// speed says that the play runs slower or faster than in a match: in the corner,
// between two courts side by side if they stand.
func (f *Film) speed(s *canvas.Scene, sc *scenery, m reel.Moment) {
	text := words.SpeedTag(m.Speed)
	if text == "" {
		return
	}
	em, safe := labelEm(s.Width, s.Height), Safe(s.Width, s.Height)
	wide := look.Width(text, true)*em + 2*em*pad
	x := safe.Min.X
	if f.Reel.Of.Logo == lesson.TopLeft && f.logo != nil {
		x = safe.Max.X - wide
	}
	if last := len(sc.free) - 1; last > 0 && sc.free[0].Min.Y == sc.free[last].Min.Y {
		x = (sc.free[0].Max.X + sc.free[last].Min.X - wide) / 2
	}
	b := f.board(s, "speed")
	b.plate("plate", compose.Area{Min: canvas.Px{X: x, Y: safe.Min.Y}, Max: canvas.Px{X: x + wide, Y: safe.Min.Y + em*labelHigh}})
	b.lines("text", x+em*pad, safe.Min.Y+em*pad/2, []string{text}, typeface{em, true, canvas.Start, b.look.Quiet})
	s.Panels = append(s.Panels, b.panel)
}
