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
		up := steepest * (2*float64(i)/elevation - 1)
		if out[i] = s.trial(up, false); math.Abs(out[i].over) < aside { // too close to tell
			out[i] = s.trial(up, true)
		}
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
	limit, gain := aside, 0.0
	if exact {
		limit = solved / 10
	}
	var before, was float64 // the last turn and where it led
	for i := range 20 {
		level := s.in.Value * math.Cos(up)
		v := ahead.Times(level * math.Sqrt(1-s.side*s.side)).Add(left.Times(level * s.side))
		v.Z = s.in.Value * math.Sin(up)
		s.fly(v, exact)
		fell := s.flown.End.At.Sub(s.in.From).Level()
		off := dot(fell, left)
		if gain = (off - was) / (s.side - before); i == 0 || !(gain > 0) {
			gain = fell.Sub(s.m.Air.Wind.Times(float64(s.flown.Duration))).Length()
		}
		if math.Abs(off) < limit || gain == 0 {
			return trial{up, v, dot(fell, ahead) - d}
		}
		before, was = s.side, off
		s.side = min(max(s.side-off/gain, -1), 1)
	}
	return trial{up, Vec{}, -d} // blown aside whatever the turn
}

// aside (m) is how far beside the line a rough trial may land: its square over
// the way is the error of the reach.
const aside = 0.05

// farthest narrows three trials down on the elevation that reaches farthest by the
// golden section: finely if that reaches the aim, else as finely as matters.
func (s *solver) farthest(lo, mid, hi trial) trial {
	const golden, fine, finest = 0.3819660112501051, 0.01, 1e-5 // rad
	for range 30 {
		if w := hi.up - lo.up; w < finest || w < fine && mid.over >= 0 {
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
	var v Vec
	over := func(up float64) float64 {
		t := s.trial(up, true)
		v = t.v
		return t.over
	}
	_, miss := falsePosition(over, a.up, b.up, over(a.up), over(b.up), solved)
	return v, math.Abs(miss) < stuck
}

// rises says whether v's elevation lies between those of two trials, or a hair
// outside, since one of them may be the very launch.
func rises(v Vec, a, b trial) bool {
	up := math.Atan2(v.Z, v.Level().Length())
	const hair = 1e-5
	return up >= a.up-hair && up <= b.up+hair
}
