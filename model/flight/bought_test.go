package flight

import (
	"fmt"
	"math"
	"testing"

	"homeside/model/units"
)

const foot = units.FootInMetres

// served is the return of the project's time budget: the serve of 18 m/s at 10°
// taken at the top of its bounce, 24 ft behind the net.
func served(t testing.TB) Return {
	m := Default()
	p := mustFly(t, m, struck(18, 10, .8))
	up := m.Bounce(p.End)
	up.Spin = Vec{} // left out of the budget's bounce
	q := mustFly(t, m, up)
	near(t, "serve returned at", float64(p.Duration+q.Top()), 1.10, .015)
	return Return{From: Vec{0, -24 * foot, float64(q.Apex.State.Height())}}
}

// The time budget, computed once by an independent program and given to 0.01 s:
// with a 9 ft apex a 15 m/s third reaches the kitchen line at these times after the
// return's contact for these depths inside the baseline. The height of the contact
// was not written down with it, hence the tolerance.
func TestTimeBudget(t *testing.T) {
	m, r := Default(), served(t)
	for _, c := range []struct {
		depth units.Feet
		want  float64
	}{{1, 2.67}, {3, 2.60}, {6, 2.51}, {10, 2.39}, {14, 2.28}} {
		b := m.Bought(r, c.depth, 9*foot)
		near(t, fmt.Sprintf("line, %v ft inside", c.depth), float64(b.Line), c.want, .0125)
	}
	const serve = 1.10
	near(t, "third after the serve, 9 ft apex", serve+float64(m.Bought(r, 3, 9*foot).Third), 2.9, .05)
	for _, apex := range []float64{3.4, 3.8} { // flat returns
		third := serve + float64(m.Bought(r, 3, units.Metres(apex*foot)).Third)
		if third < 2.05 || third > 2.25 {
			t.Errorf("third after a return with an apex of %v ft at %.3f s, want 2.1 to 2.2", apex, third)
		}
	}
}

// The apex alone buys the time to the third contact; depth what comes after.
func TestApexBuysTheThirdDepthTheLine(t *testing.T) {
	m, r := Default(), served(t)
	for apex := 4.0; apex < 20; apex++ {
		high := units.Metres(apex * foot)
		deep, shallow := m.Bought(r, 1, high), m.Bought(r, 12, high)
		near(t, "third, deep and shallow", float64(deep.Third), float64(shallow.Third), .03)
		if deep.Line-shallow.Line < .2 {
			t.Errorf("apex %v ft: depth buys %v s at the line, want over 0.2", apex, deep.Line-shallow.Line)
		}
		if higher := m.Bought(r, 1, high+foot); higher.Third <= deep.Third || higher.Line <= deep.Line {
			t.Errorf("apex %v ft: a foot more buys nothing: %v, %v", apex, deep, higher)
		}
	}
}

// The level third is quicker than a flown one by no more than the docs say: a
// third of 15 m/s from the top of the bounce that comes down to its own height at
// the kitchen line.
func TestLevelThirdAgainstAFlownOne(t *testing.T) {
	m := Default()
	for way := 4.0; way < 10.5; way += .5 {
		at := State{At: Vec{0, 4, .9}}
		var flown float64
		for up := 0.0; up < 30; up += .05 {
			s, c := math.Sincos(up * math.Pi / 180)
			at.Velocity = Vec{0, -15 * c, 15 * s}
			p := &Path{knots: make([]knot, 0, 32)}
			m.fly(p, at, DefaultTolerance, false)
			if tm, ok := p.Reaches(units.Metres(4 - way)); ok && p.At(tm).At.Z >= .9 {
				flown = float64(tm)
				break
			}
		}
		if late := flown - m.levelTime(way, 15); late < 0 || late > .05 {
			t.Errorf("over %v m a flown third takes %v s longer than a level one, want 0 to 0.05", way, late)
		}
	}
}

func TestChartIsBought(t *testing.T) {
	m, r := Default(), served(t)
	r.Spin, r.AimX = -300, 2
	depths := []units.Feet{0, 2, 5, 11}
	apexes := []units.Metres{.2, .5, 1, 1.1, 2.7, 5, 50}
	reasons := map[Reason]int{}
	for i, row := range m.Chart(r, depths, apexes) {
		for j, got := range row {
			want := m.Bought(r, depths[i], apexes[j])
			reasons[got.Reason]++
			if got.Reason != want.Reason || math.Abs(float64(got.Line-want.Line)) > 1e-5 || math.Abs(float64(got.Third-want.Third)) > 1e-5 {
				t.Errorf("Chart[%v ft][%v m] = %v, Bought gives %v", depths[i], apexes[j], got, want)
			}
		}
	}
	for _, want := range []Reason{Possible, ApexTooLow, IntoNet, TooFast} {
		if reasons[want] == 0 {
			t.Errorf("the chart never says %q", want)
		}
	}
}

// The far team's return buys as much, and a faster third gives less.
func TestReturnsOfEitherTeam(t *testing.T) {
	m, r := Default(), served(t)
	near1 := m.Bought(r, 3, 3)
	far := r
	far.From.Y = -r.From.Y
	if got := m.Bought(far, 3, 3); math.Abs(float64(got.Line-near1.Line)) > 1e-9 {
		t.Errorf("far return buys %v, near return %v", got, near1)
	}
	r.Third = 20
	if got := m.Bought(r, 3, 3); got.Third != near1.Third || got.Line >= near1.Line {
		t.Errorf("a third at 20 m/s: %v, at 15 m/s %v", got, near1)
	}
	r.From.Z = math.NaN()
	if got := m.Bought(r, 3, 3); got.Reason != NotFinite || got.Third != 0 {
		t.Errorf("Bought(NaN) = %v", got)
	}
}
