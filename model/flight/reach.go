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
	elevation = 15 // pieces of the first scan
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
		out[i] = s.trial(steepest*(2*float64(i)/elevation-1), rough)
		if out[i].over > out[best].over {
			best = i
		}
	}
	return out, best
}

// trial flies one elevation. Without wind turning the launch turns the flight, so
// one flight is enough; with wind a few turns settle it.
func (s *solver) trial(up, tolerance float64) trial {
	way := s.in.aim()
	bearing := math.Atan2(way.Y, way.X)
	turned, d := bearing, way.Length()
	level, rise := s.in.Value*math.Cos(up), s.in.Value*math.Sin(up)
	for range 12 {
		v := Vec{level * math.Cos(turned), level * math.Sin(turned), rise}
		s.flown = Path{}
		s.m.fly(&s.flown, s.in.launch(v), tolerance, false)
		fell := s.flown.End.At.Sub(s.in.From)
		miss := math.Remainder(math.Atan2(fell.Y, fell.X)-bearing, 2*math.Pi)
		reached := fell.Level().Length()
		if s.m.Air.Wind == (Vec{}) {
			t := turned - miss
			return trial{up, Vec{level * math.Cos(t), level * math.Sin(t), rise}, reached - d}
		}
		if math.Abs(miss)*reached < tolerance {
			return trial{up, v, reached - d}
		}
		turned -= miss
	}
	return trial{up, Vec{}, -d} // blown about: counts as not reaching
}

// farthest narrows three trials down on the elevation that reaches farthest, or
// on one that reaches the aim, by the golden section.
func (s *solver) farthest(lo, mid, hi trial) trial {
	const golden = 0.3819660112501051
	for range 30 {
		if mid.over >= 0 || hi.up-lo.up < 1e-5 {
			break
		}
		if hi.up-mid.up > mid.up-lo.up {
			t := s.trial(mid.up+golden*(hi.up-mid.up), s.m.tolerance())
			if t.over > mid.over {
				lo, mid = mid, t
			} else {
				hi = t
			}
			continue
		}
		t := s.trial(mid.up-golden*(mid.up-lo.up), s.m.tolerance())
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
			t, ok := s.narrow(a, b)
			if !ok {
				return nil, NoFlight
			}
			return s.shot(t.v)
		}
	}
	return nil, NoFlight
}

// narrow closes in on the elevation that lands on the aim, by false position with
// the Illinois rule and halving when that is slow: rough flights first, then exact ones.
func (s *solver) narrow(a, b trial) (trial, bool) {
	fa, fb := a.over, b.over
	tolerance := rough
	for i := range 60 {
		up := b.up - fb*(b.up-a.up)/(fb-fa)
		if !(up > min(a.up, b.up) && up < max(a.up, b.up)) || i%8 == 7 {
			up = (a.up + b.up) / 2
		}
		t := s.trial(up, tolerance)
		if math.Abs(t.over) < settled && tolerance == rough {
			tolerance = s.m.tolerance()
			t = s.trial(up, tolerance)
		}
		if math.Abs(t.over) < solved {
			return t, true
		}
		if t.over > 0 == (fb > 0) {
			fa /= 2
		} else {
			a, fa = b, fb
		}
		b, fb = t, t.over
		if math.Abs(b.up-a.up) < 1e-14 {
			break
		}
	}
	return b, math.Abs(b.over) < goodMiss
}
