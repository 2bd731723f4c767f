package advice

import (
	"math"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// TooClose is the distance between partners under which a crossing gets a caution.
const TooClose units.Feet = 3

// Approach is a moment at which partners, as run, are close or cross.
type Approach struct {
	When     units.Seconds
	Where    court.Point // midway between them
	Distance units.Feet
	Front    game.Player // who is nearer the net
	Level    bool        // neither is nearer by more than two inches
}

// The search for the moments: partners at full speed come 1.5 ft nearer in a
// step. A bisection of 30 rounds finds a crossing to a millionth of a second, a
// search by thirds of 16 rounds the least distance to a sixth of a millisecond.
const (
	step    units.Seconds = 0.05
	rounds                = 30
	thirds                = 16
	nearing units.Feet    = 1e-6 // less is rounding
	alike   units.Feet    = 1e-3 // of two approaches as close, the first counts
	abreast               = court.LineWidth
)

// partners are the two of a team and their rally.
type partners struct {
	r    *rally.Rally
	a, b game.Player
}

func pair(r *rally.Rally, team court.End) partners {
	return partners{r, game.PlayerOf(team, 1), game.PlayerOf(team, 2)}
}

func (p partners) at(t units.Seconds) (a, b court.Point) {
	return p.r.Tracks[p.a].RunAt(t).Place, p.r.Tracks[p.b].RunAt(t).Place
}

func (p partners) apart(t units.Seconds) units.Feet {
	a, b := p.at(t)
	return a.Distance(b)
}

// across is how far the first stands to the right of the second, in the court's x.
func (p partners) across(t units.Seconds) units.Feet {
	a, b := p.at(t)
	return a.X - b.X
}

func (p partners) approach(t units.Seconds) Approach {
	a, b := p.at(t)
	out := Approach{When: t, Where: a.Toward(b, 0.5), Distance: a.Distance(b), Front: p.a}
	behind := (a.Y - b.Y) * p.a.Team().Sign()
	if behind > 0 {
		out.Front = p.b
	}
	out.Level = units.Feet(math.Abs(float64(behind))) <= abreast
	return out
}

func (p partners) run() bool {
	return len(p.r.Tracks[p.a].Legs)+len(p.r.Tracks[p.b].Legs) > 0
}

// steps calls see with every two neighbouring moments and a measure at both.
func (p partners) steps(measure func(units.Seconds) units.Feet, see func(from, to units.Seconds, v, w units.Feet)) {
	if !p.run() {
		return
	}
	from, v := p.r.From, measure(p.r.From)
	for i := 1; from < p.r.Stopped(); i++ {
		to := min(p.r.From+units.Seconds(i)*step, p.r.Stopped())
		w := measure(to)
		see(from, to, v, w)
		from, v = to, w
	}
}

// Crossings are the moments at which the partners of a team change sides: one
// passes from the left of the other to the right.
func Crossings(r *rally.Rally, team court.End) (all []Approach) {
	p := pair(r, team)
	last := units.Feet(0) // how far across when they were last apart
	p.steps(p.across, func(from, to units.Seconds, v, w units.Feet) {
		if v != 0 {
			last = v
		}
		if last*w < 0 {
			all = append(all, p.approach(p.flip(from, to, w)))
		}
	})
	return all
}

// flip is when within a step the sign becomes that of w.
func (p partners) flip(lo, hi units.Seconds, w units.Feet) units.Seconds {
	for range rounds {
		if mid := (lo + hi) / 2; p.across(mid)*w > 0 {
			hi = mid
		} else {
			lo = mid
		}
	}
	return hi
}

// Closest is the closest approach of the partners of a team who come nearer to
// one another; false if they never do.
func Closest(r *rally.Rally, team court.End) (best Approach, ok bool) {
	p := pair(r, team)
	nearer := false
	p.steps(p.apart, func(from, to units.Seconds, v, w units.Feet) {
		if w < v-nearing {
			nearer = true
		} else if nearer { // the least is about here
			nearer = false
			best, ok = p.better(best, ok, from-step, to)
		}
	})
	if nearer {
		best, ok = p.better(best, ok, r.Stopped()-step, r.Stopped())
	}
	return best, ok
}

// better is the nearer of the best so far and the least distance in a stretch.
func (p partners) better(best Approach, ok bool, lo, hi units.Seconds) (Approach, bool) {
	lo = max(lo, p.r.From)
	for range thirds {
		third := (hi - lo) / 3
		if p.apart(lo+third) <= p.apart(hi-third) {
			hi -= third
		} else {
			lo += third
		}
	}
	if a := p.approach(lo); !ok || a.Distance < best.Distance-alike {
		return a, true
	}
	return best, true
}

// crossings warns of partners who come too close and of an order that is not the
// one the play states.
func crossings(s *sheet) {
	for _, team := range court.Ends {
		if a, ok := Closest(s.Rally, team); ok && a.Distance < TooClose {
			s.add(a.Finding())
		}
		front := s.Play.Front
		if front == nil || front.Team() != team {
			continue
		}
		for _, a := range Crossings(s.Rally, team) {
			if !a.Level && a.Front != *front {
				s.about(a.Front, finding.CrossingOrder, a.When, a.Where, finding.Is("stated", *front), finding.Is("distance", a.Distance))
			}
		}
	}
}

// Finding is the caution to partners who come so close; it tells who is in front, if
// anybody is.
func (a Approach) Finding() finding.Finding {
	f := finding.New(finding.CloseCrossing, a.When, a.Where,
		finding.Is("distance", a.Distance), finding.Is("one", a.Front), finding.Is("other", a.Front.Partner()))
	if !a.Level {
		f.Args = append(f.Args, finding.Is("front", a.Front))
	}
	return f
}
