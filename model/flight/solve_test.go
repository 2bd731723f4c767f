package flight

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/units"

	"pgregory.net/rapid"
)

var struckPoint = court.Pt(3, -24)

// achieved is what a flight made of an intent's figure.
func achieved(k Kind, p *Path) float64 {
	return [...]float64{float64(p.Apex.State.Height()), float64(p.Start.Speed()), float64(p.Duration), float64(p.Net.Clearance())}[k]
}

// cross is a shot across the net with a little of everything.
func cross(k Kind, value float64) Intent {
	return Intent{From: Vec{1, -7, .8}, AimX: -2, AimY: 6, Kind: k, Value: value, Spin: 600, Side: 300}
}

func TestEachKindFromBothEnds(t *testing.T) {
	for k, value := range map[Kind]float64{Apex: 2.7, Speed: 18, Time: 1.5, NetClear: .5} {
		for _, end := range []float64{1, -1} {
			m, in := Default(), cross(k, value)
			in.From.X, in.From.Y, in.AimX, in.AimY = end*in.From.X, end*in.From.Y, units.Metres(end)*in.AimX, units.Metres(end)*in.AimY
			s := m.Solve(in)
			if s.Reason != Possible || s.Low == nil || (s.High != nil) != (k == Speed) || s.Blocked != nil {
				t.Fatalf("Solve(%v %v from %v): %+v", k, value, in.From, s)
			}
			for _, l := range s.All() {
				near(t, k.String(), achieved(k, l.Path), value, 2e-6)
				near(t, "x", l.Path.End.At.X, float64(in.AimX), 2e-6)
				near(t, "y", l.Path.End.At.Y, float64(in.AimY), 2e-6)
				if again := mustFly(t, m, l.State); again.End != l.Path.End || again.Outcome != Landed {
					t.Errorf("%v: flown again it ends at %v, its path at %v", k, again.End, l.Path.End)
				}
			}
		}
	}
}

func TestLowAndHigh(t *testing.T) {
	s := Default().Solve(cross(Speed, 16))
	if s.Low == nil || s.High == nil {
		t.Fatalf("Solve(16 m/s) = %+v, want two", s)
	}
	if lo, hi := s.Low.Path, s.High.Path; lo.Apex.State.At.Z >= hi.Apex.State.At.Z || lo.Duration >= hi.Duration {
		t.Errorf("low apex %v in %v s, high apex %v in %v s", lo.Apex.State.At.Z, lo.Duration, hi.Apex.State.At.Z, hi.Duration)
	}
}

// With the greatest reach of a speed as the aim the two launches meet.
func TestAtTheGreatestReach(t *testing.T) {
	m, reach := Default(), 0.0
	for up := 30.0; up < 50; up += .01 {
		reach = max(reach, mustFly(t, m, struck(14, up, .8)).End.At.Y)
	}
	in := Intent{From: Vec{0, -netAt, .8}, AimY: units.Metres(reach), Kind: Speed, Value: 14}
	in.AimY -= 1e-5
	s := m.Solve(in)
	if s.Low == nil || s.High == nil {
		t.Fatalf("a hair short of the greatest reach: %+v, want two shots", s)
	}
	near(t, "the two launches' difference", s.High.State.Velocity.Sub(s.Low.State.Velocity).Length(), 0, .1)
	in.AimY += 3e-5
	if s := m.Solve(in); s.Reason != TooSlow {
		t.Errorf("a hair beyond the greatest reach: %v, want %v", s.Reason, TooSlow)
	}
}

// Launches drawn at random: where they land is asked for with one figure of their
// flight, and the launch must come back. Flights that pass close to the net's
// foot are left out, as there many launches pass at nearly the same height, and so
// are winds as fast as the ball, in which more than two launches may do.
func TestSolveFindsTheLaunch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		end := rapid.SampledFrom([]float64{1, -1}).Draw(t, "end")
		m := Default()
		m.Net.Flat = .01
		m.Air.Wind = Vec{v("wind x", -2.5, 2.5), v("wind y", -2.5, 2.5), 0}
		in := Intent{From: Vec{v("x", -4, 4), -end * v("y", .3, 8), v("z", .1, 2.5)}, Spin: units.RPM(v("top", -900, 900)), Side: units.RPM(v("side", -600, 600))}
		from := in.launch(Vec{v("vx", -8, 8), end * v("vy", 5, 22), v("vz", 1, 14)})
		p := mustFly(t, m, from)
		if p.Outcome != Landed || !p.Net.Reached || p.End.At.Y*end < .5 || p.Net.Clearance() < 0 {
			return
		}
		in.AimX, in.AimY = units.Metres(p.End.At.X), units.Metres(p.End.At.Y)
		for _, in.Kind = range Kinds {
			in.Value = achieved(in.Kind, p)
			s, found := m.Solve(in), false
			for _, l := range s.All() {
				if d := l.Path.End.At.Sub(p.End.At).Length(); d > 1e-3 || math.Abs(achieved(in.Kind, l.Path)-in.Value) > 1e-4 {
					t.Fatalf("Solve(%+v) lands %v m from the aim with %v %v", in, d, in.Kind, achieved(in.Kind, l.Path))
				}
				found = found || l.State.Velocity.Sub(from.Velocity).Length() < .05
			}
			if !found {
				t.Fatalf("Solve(%+v) = %v %v, want a launch at %v", in, s.Reason, s.All(), from.Velocity)
			}
		}
	})
}

func TestReasons(t *testing.T) {
	with := func(in Intent, f func(*Intent)) Intent { f(&in); return in }
	nan := math.NaN()
	for _, c := range []struct {
		name string
		in   Intent
		want Reason
	}{
		{"slow", cross(Speed, 8), TooSlow},
		{"fast", cross(Speed, 31), TooFast},
		{"in no time", cross(Time, .1), TooFast},
		{"in little time", cross(Time, .45), TooFast},
		{"a rocket", cross(Apex, 60), TooFast},
		{"flat", cross(Apex, .8), TooFast},
		{"into the net", with(cross(Apex, .85), func(in *Intent) { in.From.Z = .4 }), IntoNet},
		{"a soft one from the kitchen", Intent{From: Vec{0, -1, .3}, AimY: 1, Kind: Speed, Value: 4.3}, IntoNet},
		{"under the top", cross(NetClear, -.1), IntoNet},
		{"apex below", cross(Apex, .7), ApexTooLow},
		{"no distance", with(cross(Speed, 10), func(in *Intent) { in.AimX, in.AimY = 1, -7 }), AimAtContact},
		{"behind", with(cross(Speed, 10), func(in *Intent) { in.AimY = -9 }), AimBehind},
		{"own court", with(cross(NetClear, .3), func(in *Intent) { in.AimY = -2 }), NoNetBetween},
		{"no speed", cross(Speed, 0), NotPositive},
		{"no time", cross(Time, -1), NotPositive},
		{"NaN", cross(Apex, nan), NotFinite},
		{"NaN aim", with(cross(Apex, 2), func(in *Intent) { in.AimX = units.Metres(nan) }), NotFinite},
		{"NaN contact", with(cross(Apex, 2), func(in *Intent) { in.From.Z = nan }), NotFinite},
		{"NaN spin", with(cross(Apex, 2), func(in *Intent) { in.Side = units.RPM(nan) }), NotFinite},
		{"absurd apex", cross(Apex, 1e9), OutOfRange},
		{"absurd aim", with(cross(Apex, 2), func(in *Intent) { in.AimY = 1e9 }), OutOfRange},
		{"in the ground", with(cross(Apex, 2), func(in *Intent) { in.From.Z = 0 }), OutOfRange},
	} {
		s := Default().Solve(c.in)
		if s.Reason != c.want || s.Low != nil || s.High != nil {
			t.Errorf("%s: Solve(%v %v) = %v with %d shots, want %v", c.name, c.in.Kind, c.in.Value, s.Reason, len(s.All()), c.want)
		}
	}
	if s := (Model{}).Solve(cross(Apex, 2)); s.Reason != OutOfRange {
		t.Errorf("Model{}.Solve = %v, want %v", s.Reason, OutOfRange)
	}
}

// A shot that the net stops is still there to be drawn.
func TestBlocked(t *testing.T) {
	s := Default().Solve(Intent{From: Vec{0, -6, .4}, AimY: 6, Kind: Apex, Value: .8})
	if s.Reason != IntoNet || s.Blocked == nil || s.Blocked.Path.Outcome != HitNet {
		t.Fatalf("Solve = %+v, want a blocked shot that ends in the net", s)
	}
	near(t, "the blocked shot ends at the net", s.Blocked.Path.End.At.Y, 0, 1e-9)
}

// The other shot of a speed stays when the net takes one.
func TestNetTakesTheLowOne(t *testing.T) {
	s := Default().Solve(Intent{From: Vec{0, -7, .4}, AimY: 1, Kind: Speed, Value: 14})
	if s.Low != nil || s.High == nil || s.Reason != Possible || s.Blocked == nil || s.Blocked.Path.Outcome != HitNet {
		t.Errorf("Solve = %+v, want the high shot and the low one that ends in the net", s)
	}
}

// Where the aim lies close behind the net, a steep ball passes it with most of its
// fall still to come, and Newton's method alone loses its way.
func TestClearanceOfABallThatDropsBehindTheNet(t *testing.T) {
	m := Default()
	m.Net.Flat = .01
	for _, aim := range []units.Metres{.02, .05, .1, .4} {
		for _, clear := range []float64{.05, .3, .8, 2, 5} {
			in := Intent{From: Vec{3, -4.5, 1.8}, AimX: 2, AimY: aim, Kind: NetClear, Value: clear}
			s := m.Solve(in)
			switch {
			case s.Low != nil:
				near(t, "clearance", float64(s.Low.Path.Net.Clearance()), clear, 2e-5)
				near(t, "landing", float64(s.Low.Path.End.At.Y), float64(aim), 2e-5)
			case s.Reason != TooFast || .01+clear > .0371+1.7629*float64(aim/(4.5+aim)) && clear/float64(aim) < 12: // above the straight line, not too steep
				t.Errorf("Solve(aim %v m behind the net, %v m over it) = %v", aim, clear, s.Reason)
			}
		}
	}
}

// A ball of heavy topspin struck so steeply is slower than the limit only in the
// guess; the search ends beyond it.
func TestSearchEndsBeyondTheLimit(t *testing.T) {
	in := cross(NetClear, 12)
	in.From.Y, in.AimY, in.Spin = -4, .8, -1000
	if s := Default().Solve(in); s.Reason != TooFast || s.Low != nil {
		t.Errorf("Solve(%+v) = %v, want %v", in, s.Reason, TooFast)
	}
}

func TestReasonsAndKindsHaveNames(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range Reasons {
		if seen[r.String()] || r.String() == "" {
			t.Errorf("reason %d is called %q", r, r)
		}
		seen[r.String()] = true
	}
	for _, k := range Kinds {
		if seen[k.String()] {
			t.Errorf("kind %d is called %q", k, k)
		}
		seen[k.String()] = true
	}
	if got := Reason(200).String(); got != "unknown reason" {
		t.Errorf("Reason(200) = %q", got)
	}
}
