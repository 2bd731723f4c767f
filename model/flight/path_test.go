package flight

import (
	"errors"
	"math"
	"testing"

	"homeside/model/units"
)

func TestAfterTheBounce(t *testing.T) {
	m := Default()
	p := mustFly(t, m, struck(18, 10, .8))
	q := mustFly(t, m, m.Bounce(p.End))
	top := q.At(q.Top()).Height()
	near(t, "height at Top", float64(top), float64(q.Apex.State.Height()), 1e-9)
	up, ok1 := q.Crossing(.3, true)
	down, ok2 := q.Crossing(.3, false)
	if !ok1 || !ok2 || !(up < q.Top() && q.Top() < down) {
		t.Fatalf("Crossing(.3): rising %v %v, falling %v %v; want around the top at %v", up, ok1, down, ok2, q.Top())
	}
	near(t, "height when rising", q.At(up).At.Z, .3, 1e-9)
	near(t, "height when falling", q.At(down).At.Z, .3, 1e-9)
	for _, rising := range []bool{true, false} {
		if at, ok := q.Crossing(top+.001, rising); ok {
			t.Errorf("Crossing above the top, rising %v = %v, want never", rising, at)
		}
	}
	if at, ok := q.Crossing(m.Ball.Radius(), true); !ok || at != 0 {
		t.Errorf("Crossing(radius, rising) = %v, %v; want it at 0", at, ok)
	}
	if at, ok := q.Crossing(m.Ball.Radius(), false); !ok || at != q.Duration {
		t.Errorf("Crossing(radius, falling) = %v, %v; want it at the end %v", at, ok, q.Duration)
	}
}

func TestReaches(t *testing.T) {
	p := mustFly(t, Default(), struck(18, 10, .8))
	at, ok := p.Reaches(0)
	if near(t, "Reaches(net)", float64(at), float64(p.Net.T), 1e-9); !ok {
		t.Error("Reaches(0) never, want the net's time")
	}
	at, ok = p.Reaches(2.1336)
	if near(t, "y at the kitchen line", p.At(at).At.Y, 2.1336, 1e-9); !ok {
		t.Error("Reaches(2.1336) never")
	}
	if at, ok := p.Reaches(20); ok {
		t.Errorf("Reaches(20) = %v, want never", at)
	}
	if at, ok := p.Reaches(-netAt); !ok || at != 0 {
		t.Errorf("Reaches(start) = %v, %v; want 0", at, ok)
	}
}

// The rulebook's net is 34 in at the centre and 36 in at the sidelines, and ends at
// posts 22 ft apart; see Net for what is ours.
func TestNetOutcomes(t *testing.T) {
	r := float64(Outdoor.Radius())
	const centre, side = 0.8636, 0.9144
	for _, c := range []struct {
		name    string
		net     Net
		x, z    float64
		want    Outcome
		touches bool
	}{
		{"below the top", Net{}, 0, centre - .001, HitNet, true},
		{"on the top", Net{}, 0, centre + .001, Landed, true},
		{"just over", Net{}, 0, centre + r + .001, Landed, false},
		{"lower at the centre", Net{}, 3.048, centre + .001, HitNet, true},
		{"at the sideline", Net{}, 3.048, side + .001, Landed, true},
		{"at the post", Net{}, 3.3528, .5, HitPost, true},
		{"on the post's outside", Net{}, 3.3528 + .0762 + r - .001, .5, HitPost, true},
		{"round the post", Net{}, -3.3528 - .0762 - r - .001, .5, Landed, false},
		{"over the post", Net{}, 3.3528, side + r + .001, Landed, false},
		{"a level net has no end", Net{Flat: .8636}, 5, .86, HitNet, true},
		{"a level net at the sideline", Net{Flat: .8636}, 3.048, .865, Landed, true},
	} {
		m := vacuum()
		m.Net = c.net
		// at 100 m/s from a hair before the plane the ball does not fall a micrometre
		p := mustFly(t, m, State{At: Vec{c.x, -.001, c.z}, Velocity: Vec{0, 100, 0}})
		if p.Outcome != c.want || p.TouchesNet != c.touches || !p.Net.Reached {
			t.Errorf("%s: %v, touches %v; want %v, %v", c.name, p.Outcome, p.TouchesNet, c.want, c.touches)
		}
		if c.want != Landed && p.End != p.Net.State {
			t.Errorf("%s: ends at %v, want it at the net %v", c.name, p.End, p.Net.State)
		}
	}
}

func TestBlownBackOverTheNet(t *testing.T) {
	m := Default()
	m.Air.Wind.Y = -30
	p := mustFly(t, m, State{At: Vec{0, -.5, 1}, Velocity: Vec{0, 8, 8}})
	if !p.Net.Reached || p.End.At.Y > 0 || p.Outcome != Landed {
		t.Errorf("against 30 m/s: %v at %v, net reached %v; want it over the net and back", p.Outcome, p.End.At, p.Net.Reached)
	}
}

func TestOutcomesHaveNames(t *testing.T) {
	seen := map[string]bool{}
	for _, o := range Outcomes {
		if seen[o.String()] || o.String() == "" {
			t.Errorf("outcome %d is called %q", o, o)
		}
		seen[o.String()] = true
	}
}

func TestTimedOut(t *testing.T) {
	m := Default()
	m.Longest = .5
	p := mustFly(t, m, struck(18, 10, .8))
	if p.Outcome != TimedOut || math.Abs(float64(p.Duration-.5)) > 2e-6 {
		t.Errorf("Longest .5: %v after %v s", p.Outcome, p.Duration)
	}
	p = mustFly(t, m, State{At: Vec{0, 1, 1}, Velocity: Vec{0, 0, 50}})
	if p.Apex.State != p.End {
		t.Errorf("still climbing: apex %v, want the end %v", p.Apex.State, p.End)
	}
}

func TestOddLaunches(t *testing.T) {
	m := Default()
	r := float64(m.Ball.Radius())
	p := mustFly(t, m, State{At: Vec{0, 1, 1}})
	if p.Outcome != Landed || p.Top() != 0 || p.Apex.State != p.Start {
		t.Errorf("dropped: %v, top at %v", p.Outcome, p.Top())
	}
	p = mustFly(t, m, State{At: Vec{0, 1, r}, Velocity: Vec{1, 0, -1}})
	if p.Outcome != Landed || p.Duration != 0 || p.At(3) != p.Start {
		t.Errorf("struck into the ground from the ground: %v after %v", p.Outcome, p.Duration)
	}
	p = mustFly(t, m, State{At: Vec{0, 0, 1}, Velocity: Vec{0, 5, 0}})
	if p.Net.Reached {
		t.Error("struck on the net's plane: passes it, want it already past")
	}
}

func TestLaunchesThatCannotStart(t *testing.T) {
	nan := math.NaN()
	ok := struck(18, 10, .8)
	change := func(f func(m *Model, s *State)) (Model, State) {
		m, s := Default(), ok
		f(&m, &s)
		return m, s
	}
	for _, c := range []struct {
		name string
		want error
		with func(m *Model, s *State)
	}{
		{"NaN speed", ErrNotFinite, func(_ *Model, s *State) { s.Velocity.X = nan }},
		{"infinite place", ErrNotFinite, func(_ *Model, s *State) { s.At.Y = math.Inf(1) }},
		{"NaN spin", ErrNotFinite, func(_ *Model, s *State) { s.Spin.Z = nan }},
		{"in the ground", ErrBelow, func(_ *Model, s *State) { s.At.Z = .03 }},
		{"absurd speed", ErrAbsurd, func(_ *Model, s *State) { s.Velocity.Y = 1e9 }},
		{"absurd spin", ErrAbsurd, func(_ *Model, s *State) { s.Spin.Y = 1e9 }},
		{"absurd place", ErrAbsurd, func(_ *Model, s *State) { s.At.Y = 1e9 }},
		{"no model", ErrModel, func(m *Model, _ *State) { *m = Model{} }},
		{"NaN drag", ErrModel, func(m *Model, _ *State) { m.Ball.Drag = nan }},
		{"air that pushes", ErrModel, func(m *Model, _ *State) { m.Air.Density = -1 }},
		{"NaN wind", ErrModel, func(m *Model, _ *State) { m.Air.Wind.X = nan }},
		{"restitution above one", ErrModel, func(m *Model, _ *State) { m.Surface.Restitution = 1.1 }},
		{"tolerance too fine", ErrModel, func(m *Model, _ *State) { m.Tolerance = 1e-15 }},
	} {
		m, s := change(c.with)
		if p, err := m.Fly(s); !errors.Is(err, c.want) || p != nil {
			t.Errorf("%s: Fly = %v, %v; want %v", c.name, p, err, c.want)
		}
	}
}

func TestStates(t *testing.T) {
	s := State{At: Over(struckPoint, 1.5)}
	if got := s.Ground(); got.Distance(struckPoint) > 1e-12 || s.Height() != 1.5 {
		t.Errorf("Over(%v, 1.5) stands over %v at %v", struckPoint, got, s.Height())
	}
	if w := TopSpin(Vec{0, 0, 9}, 600, 60); w != (Vec{Z: units.RPM(60).RadiansPerSecond()}) {
		t.Errorf("TopSpin straight up = %v, want the side part alone", w)
	}
	w := TopSpin(Vec{0, 3, 4}, 600, 0)
	if want := (Vec{-units.RPM(600).RadiansPerSecond(), 0, 0}); w.Sub(want).Length() > 1e-12 {
		t.Errorf("TopSpin forward = %v, want %v", w, want)
	}
}
