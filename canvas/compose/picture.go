package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/finding"
	"homeside/model/rally"
	"homeside/model/units"
)

// CourtPanel is the name of the panel with the court: its axes are the court's.
const CourtPanel = "court"

// Picture is what to draw of a rally and how. It is an immutable snapshot.
type Picture struct {
	Rally   *rally.Rally
	Sight              // upright from straight above by default
	Look    *look.Look // nil means look.Daylight
	Surface court.Rect // the zero Rect means the least playing surface
	Show    Show
	Rise    units.Feet // the height strip of an export shows no less
	scatter []spread   // of the shots that are let scatter

	Findings []finding.Finding // marked on the court; none by default
	Twin     *rally.Rally      // a play drawn beside it on the same clock; nil draws none
}

// Show says what is left out of a picture or added to it. The zero value draws
// runs with ticks, the plan's ghost of whoever is late, and no cover.
type Show struct {
	NoTicks   bool
	NoGhosts  bool
	NoFigures bool      // no heights in the height strip
	NoClock   bool      // no time beside the title
	Cover     cover.Map // laid over the court; the zero Map adds nothing
}

// Of is the picture of a rally as it is usually drawn.
func Of(r *rally.Rally, surface court.Rect, turn canvas.Turn) Picture {
	return Picture{Rally: r, Surface: surface, Sight: Sight{Turn: turn}, scatter: spreadsOf(r)}
}

// Seen is the picture seen in another way.
func (p Picture) Seen(s Sight) Picture {
	p.Sight = s
	return p
}

// Span is the first and the last moment of the play.
func (p Picture) Span() (from, to units.Seconds) { return p.Rally.From, p.Rally.To }

// Static is the still part of an exported picture.
func (p Picture) Static(width, height int) *canvas.Scene {
	return p.StaticIn(p.ForExport(width, height))
}

// Moving is the moving part of an exported picture at time t.
func (p Picture) Moving(width, height int, t units.Seconds) *canvas.Scene {
	return p.MovingIn(p.ForExport(width, height), t)
}

// StaticIn is the still part in a layout: court, runs, ball path, title.
func (p Picture) StaticIn(l Layout) *canvas.Scene {
	s := newScene(l)
	s.Background = p.look().Paper
	s.Title = p.Rally.Play.Title
	ground := l.ground()
	p.court(&ground)
	p.spreads(&ground)
	p.ballPath(&ground)
	if l.standing() {
		p.ribbons(&ground, colour{})
	} else {
		p.net(&ground)
		p.runs(&ground)
	}
	s.Panels = append(s.Panels, ground)
	p.Cover(s, p.Show.Cover)
	if l.RiseTop > 0 {
		s.Panels = append(s.Panels, p.heightStatic(l))
	}
	if !l.Title.Empty() {
		s.Panels = append(s.Panels, p.title(l))
	}
	l.keepWords(s)
	return s
}

// MovingIn is the moving part in a layout at time t: players, ball, live marks
// and cues, clock.
func (p Picture) MovingIn(l Layout, t units.Seconds) *canvas.Scene {
	s := newScene(l)
	f := p.Rally.At(t)
	ground := l.ground()
	if !p.Show.NoGhosts {
		p.ghosts(&ground, f)
	}
	p.twin(&ground, f)
	if l.standing() {
		p.stand(&ground, l, f)
	} else {
		p.inPlay(&ground, f)
		p.players(&ground, f)
		p.ball(&ground, f)
	}
	p.marks(&ground, f, l.standing())
	if !l.standing() {
		p.signals(&ground, f)
	}
	p.findings(&ground, f.T)
	s.Panels = append(s.Panels, ground)
	if l.RiseTop > 0 {
		s.Panels = append(s.Panels, p.heightMoving(l, f))
	}
	if !l.Title.Empty() && !p.Show.NoClock {
		s.Panels = append(s.Panels, p.clock(l, f))
	}
	if c, ok := p.caption(l, f); ok {
		s.Panels = append(s.Panels, c)
	}
	l.keepWords(s)
	return s
}

func newScene(l Layout) *canvas.Scene {
	return &canvas.Scene{Width: l.Width, Height: l.Height, PxPerPoint: l.PxPerPoint}
}

func (p Picture) look() *look.Look {
	if p.Look != nil {
		return p.Look
	}
	return &look.Daylight
}

func (p Picture) surface() court.Rect {
	if p.Surface == (court.Rect{}) {
		return court.Surface
	}
	return p.Surface
}
