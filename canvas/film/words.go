package film

import (
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/model/reel"
	"homeside/words"
)

// placeOf cuts the picture for take n and keeps the room of its longest captions.
func (f *Film) placeOf(n, width, height int) place {
	t, all := f.takes[n], compose.Area{Max: canvas.Px{X: float64(width), Y: float64(height)}}
	p := place{turn: turnOf(all), rows: f.captionRows(n, width, height)}
	free := f.freeOf(t, p, width, height)
	if len(t.pictures) == 1 {
		p.panels, p.free = []compose.Area{all}, []compose.Area{free}
		return p
	}
	right := all.Width() > wideShape*all.Height()
	p.turn, p.panels, p.free = canvas.Lying, parts(all, right), parts(free, right)
	p.panels[0], p.panels[1] = parted(p.panels[0], p.panels[1], p.free)
	p.label(t, labelEm(width, height), f.tagAmongNames(t))
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

// words writes what is said over a take.
func (f *Film) words(s *canvas.Scene, m reel.Moment) {
	t, sc := f.takes[m.Take], f.sceneryOf(m.Take, s.Width, s.Height)
	f.caption(s, t.spoken(m))
	if len(sc.panels) > 1 {
		f.labels(s, sc)
	}
	f.speed(s, sc, m)
	f.putLogo(s, f.overCaptions(sc.rows, s.Width, s.Height))
}

// labelHigh is the height of the speed's plate in its ems.
const labelHigh = lead + pad

// labelRows is how many lines the name of a play has at most.
const labelRows = 2

// label names two plays above their courts and makes room for it: less of it in
// width where the speed stands among the names.
func (p *place) label(t take, em float64, tag bool) {
	beside := 0.0
	switch {
	case tag && p.free[0].Max.X < p.free[1].Max.X:
		beside = speedWide
	case tag:
		beside = 2 * speedWide // of a name in the middle of the picture
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
// or between the names of two courts side by side.
func (f *Film) speed(s *canvas.Scene, sc *scenery, m reel.Moment) {
	text := words.SpeedTag(m.Speed)
	if text == "" {
		return
	}
	em, safe := labelEm(s.Width, s.Height), Safe(s.Width, s.Height)
	wide := look.Width(text, true)*em + 2*em*pad
	x := safe.Min.X
	if f.tagOnTheRight() {
		x = safe.Max.X - wide
	}
	if last := len(sc.free) - 1; last > 0 && sc.free[0].Min.Y == sc.free[last].Min.Y && f.tagAmongNames(f.takes[m.Take]) {
		x = (sc.free[0].Max.X + sc.free[last].Min.X - wide) / 2
	}
	b := f.board(s, "speed")
	b.plate("plate", compose.Area{Min: canvas.Px{X: x, Y: safe.Min.Y}, Max: canvas.Px{X: x + wide, Y: safe.Min.Y + em*labelHigh}})
	b.lines("text", x+em*pad, safe.Min.Y+em*pad/2, []string{text}, typeface{em, true, canvas.Start, b.look.Quiet})
	s.Panels = append(s.Panels, b.panel)
}
