package flight

import (
	"math"

	"homeside/model/units"
)

func metres(x float64) units.Metres { return units.Metres(x) }

// trial is a launch at the intent's speed and one elevation, turned so that it
// lands on the line to the aim.
type trial struct {
	up   float64 // elevation, rad
	v    Vec
	over float64 // how far beyond the aim it lands, m
}

// Elevations searched for a speed: from almost straight down to almost straight up.
const (
	steepest  = 89.9 * math.Pi / 180
	elevation = 10 // pieces of the first scan
)

// bySpeed finds the low and the high launch at one speed.
func (s *solver) bySpeed() Solutions {
	scan, best := s.scan()
	if scan[best].over < 0 {
		scan[best] = s.farthest(scan[max(best-1, 0)], scan[best], scan[min(best+1, elevation)])
	}
	if scan[best].over < 0 {
		return Solutions{Reason: TooSlow}
	}
	low, whyLow := s.between(scan[:best+1], 1)
	high, whyHigh := s.between(scan[best:], -1)
	return gather(low, high, whyLow, whyHigh)
}

// scan tries elevations evenly and says which lands farthest.
func (s *solver) scan() (out [elevation + 1]trial, best int) {
	for i := range out {
		out[i] = s.trial(steepest*(2*float64(i)/elevation-1), false)
		if out[i].over > out[best].over {
			best = i
		}
	}
	return out, best
}

// trial flies one elevation. Without wind turning the launch turns the flight, so
// one flight is enough; with wind a few turns settle it.
func (s *solver) trial(up float64, exact bool) trial {
	way := s.in.aim()
	d := way.Length()
	ahead, left := way.Times(1/d), Vec{-way.Y / d, way.X / d, 0}
	limit := aside
	if exact {
		limit = solved / 10
	}
	for range 20 {
		level := s.in.Value * math.Cos(up)
		v := ahead.Times(level * math.Sqrt(1-s.side*s.side)).Add(left.Times(level * s.side))
		v.Z = s.in.Value * math.Sin(up)
		s.fly(v, exact)
		fell := s.flown.End.At.Sub(s.in.From).Level()
		off, own := dot(fell, left), fell.Sub(s.m.Air.Wind.Times(float64(s.flown.Duration))).Length()
		if math.Abs(off) < limit || own == 0 {
			return trial{up, v, dot(fell, ahead) - d}
		}
		s.side = min(max(s.side-off/own, -1), 1)
	}
	return trial{up, Vec{}, -d} // blown aside whatever the turn
}

// aside (m) is how far beside the line a rough trial may land: its square over
// the way is the error of the reach.
const aside = 0.05

// farthest narrows three trials down on the elevation that reaches farthest, or
// on one that reaches the aim, by the golden section.
func (s *solver) farthest(lo, mid, hi trial) trial {
	const golden = 0.3819660112501051
	for range 30 {
		if mid.over >= 0 || hi.up-lo.up < 1e-5 {
			break
		}
		if hi.up-mid.up > mid.up-lo.up {
			t := s.trial(mid.up+golden*(hi.up-mid.up), true)
			if t.over > mid.over {
				lo, mid = mid, t
			} else {
				hi = t
			}
			continue
		}
		t := s.trial(mid.up-golden*(mid.up-lo.up), true)
		if t.over > mid.over {
			hi, mid = mid, t
		} else {
			lo = t
		}
	}
	return mid
}

// between finds the launch in a run of trials where the reach passes the aim:
// sign is +1 where the reach grows with the elevation, -1 where it falls.
func (s *solver) between(run []trial, sign float64) (*Launch, Reason) {
	for i := 1; i < len(run); i++ {
		a, b := run[i-1], run[i]
		if a.over*sign <= 0 && b.over*sign >= 0 {
			v, ok := s.narrow(a, b)
			if !ok {
				return nil, NoFlight
			}
			return s.shot(v)
		}
	}
	return nil, NoFlight
}

// narrow closes in on the elevation that lands on the aim: by Newton's method
// from between the two, or near the greatest reach, where that is blunt, by their
// reach alone.
func (s *solver) narrow(a, b trial) (Vec, bool) {
	share := a.over / (a.over - b.over)
	if v, ok := s.newton(a.v.Add(b.v.Sub(a.v).Times(share))); ok && rises(v, a, b) {
		return v, true
	}
	t, ok := s.falsePosition(s.trial(a.up, true), s.trial(b.up, true))
	return t.v, ok
}

// rises says whether v's elevation lies between those of two trials.
func rises(v Vec, a, b trial) bool {
	up := math.Atan2(v.Z, v.Level().Length())
	return up >= a.up && up <= b.up
}

// falsePosition narrows two trials down by false position with the Illinois rule,
// and by halving every few steps in case that is slow.
func (s *solver) falsePosition(a, b trial) (trial, bool) {
	fa, fb := a.over, b.over
	for i := 0; i < 60 && math.Abs(b.up-a.up) > 1e-15; i++ {
		up := b.up - fb*(b.up-a.up)/(fb-fa)
		if !(up > min(a.up, b.up) && up < max(a.up, b.up)) || i%8 == 7 {
			up = (a.up + b.up) / 2
		}
		t := s.trial(up, true)
		if math.Abs(t.over) < solved {
			return t, true
		}
		if t.over > 0 == (fb > 0) {
			fa /= 2
		} else {
			a, fa = b, fb
		}
		b, fb = t, t.over
	}
	return b, math.Abs(b.over) < solved
}
