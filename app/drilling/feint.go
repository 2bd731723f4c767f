package drilling

import (
	"slices"

	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// A feint is a step towards the partner's half and back, while the opponents look
// where to hit (our choice).
const (
	feintStep units.Feet    = 2.5
	feintOut  units.Seconds = 0.7
	feintBack units.Seconds = 1.5
)

// feinted is a play of a stay in which the lead's partner starts as if to switch,
// when a switch would start: with the own shot.
func feinted(s formation.Situation, p lesson.Play) (*rally.Rally, error) {
	mate := s.Lead().Partner()
	own := lesson.At(lesson.ContactOf(0))
	if !s.Serves() {
		own = lesson.At(lesson.ContactOf(1))
	}
	track := p.Tracks[mate]
	out, back := track[0], track[0]
	out.Place.X -= feintStep * sign(out.Place.X)
	out.At, out.Leave = own, &own
	out.At.Offset += feintOut
	back.At = own
	back.At.Offset += feintBack
	l := s.Lesson
	l.Plays = []lesson.Play{p.WithTrack(mate, slices.Insert(slices.Clone(track), 1, out, back))}
	return rally.Solve(l, 0)
}

func sign(x units.Feet) units.Feet {
	if x < 0 {
		return -1
	}
	return 1
}
