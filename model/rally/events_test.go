package rally

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// intoNet is a rally whose third ball is driven into the net: low and fast.
func intoNet() lesson.Play {
	shots := four()
	shots[2] = lesson.Shot{By: game.Near2, Aim: court.Pt(-3, 15), Intent: lesson.Time(0.75), Meet: shots[2].Meet}
	shots[1].Meet = lesson.Meet{How: lesson.Falling, Height: 0.4}
	return play(shots...)
}

// A ball into the net stops the rally. What comes later keeps the times it has
// over an open net, and is not reached.
func TestNetStopsTheRally(t *testing.T) {
	r := solved(t, intoNet())
	third := r.Strokes[2]
	if !third.Stopped() || third.Trouble != flight.IntoNet {
		t.Fatalf("the third ball ends %v, %v, want in the net", third.Flown.Outcome, third.Trouble)
	}
	at := timeOf(t, r, "third.net")
	if r.Stopped() != at || r.Stopped() >= r.To || r.Reached(at+1e-9) || !r.Reached(at) {
		t.Errorf("the rally stops at %v, want at the net at %v", r.Stopped(), at)
	}
	notReached := []string{}
	for _, e := range r.Events {
		if !e.Reached {
			notReached = append(notReached, e.Name.String())
		}
	}
	if want := []string{"third.bounce", "fourth.contact", "fourth.net", "fourth.bounce"}; !slices.Equal(notReached, want) {
		t.Errorf("not reached are %v, want %v", notReached, want)
	}

	open := flight.Default()
	open.Net = noNet
	unhindered := solveIn(t, open, r.Play)
	for _, e := range unhindered.Events {
		checkSeconds(t, e.Name.String(), timeOf(t, r, e.Name.String()), e.At)
	}

	ball := r.At(at).Ball.At
	if !near(ball.Y, 0, 1e-9) || ball.Z >= float64(court.NetAtPosts.Metres()) {
		t.Errorf("the ball meets the net at %v, want in its plane, below its top", ball)
	}
	// It then falls freely and lies on the court.
	for _, after := range []float64{0.01, 0.1, 0.5, 3} {
		got := r.At(at + units.Seconds(after)).Ball.At
		want := max(ball.Z-9.80665*after*after/2, radius)
		if !near(got.X, ball.X, 1e-9) || !near(got.Y, ball.Y, 1e-9) || !near(got.Z, want, 1e-9) {
			t.Errorf("%v s after the net the ball is at %v, want below %v at %v m", after, got, ball, want)
		}
	}
}

// Only the first ball into the net counts.
func TestFirstNetStopsTheRally(t *testing.T) {
	p := intoNet()
	p.Shots[3] = lesson.Shot{By: game.Far2, Aim: court.Pt(2, -15), Intent: lesson.Time(0.6)}
	r := solved(t, p)
	if !r.Strokes[2].Stopped() || r.Stopped() != timeOf(t, r, "third.net") {
		t.Errorf("the rally stops at %v, want at third.net", r.Stopped())
	}
}

// A net clearance below nothing is a ball into the net at that height, where a
// ball can pass there and still land on its aim.
func TestNegativeNetClearance(t *testing.T) {
	for _, clear := range []units.Feet{-0.25, -0.5} {
		p := play(lesson.Shot{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.NetClear(clear)})
		p.Shots[0].From = &lesson.Place{Point: court.Pt(5, -12), Height: 2.6}
		r := solved(t, p)
		s := r.Strokes[0]
		if s.Trouble != flight.IntoNet || !s.Stopped() {
			t.Errorf("net_clear_ft %v: %v, the ball ends %v, want it in the net", clear, s.Trouble, s.Flown.Outcome)
			continue
		}
		if got := s.Planned.Net.State.Height() - court.NetHeight(s.Planned.Net.State.Ground().X).Metres(); !near(float64(got), float64(clear.Metres()), 1e-6) {
			t.Errorf("net_clear_ft %v: passes %v m over the top, want %v m", clear, got, clear.Metres())
		}
		checkPoint(t, "planned landing", s.Planned.End.Ground(), court.Pt(-5, 18))
	}
}

// Each figure a coach can fix reaches the flight in its own unit.
func TestIntents(t *testing.T) {
	aim := court.Pt(-5, 18)
	for _, c := range []struct {
		intent lesson.Intent
		got    func(p *flight.Path) float64
		want   float64
	}{
		{lesson.Apex(9), func(p *flight.Path) float64 { return p.Apex.State.At.Z }, 9 * foot},
		{lesson.Speed(17), func(p *flight.Path) float64 { return float64(p.Start.Speed()) }, 17},
		{lesson.Time(1.2), func(p *flight.Path) float64 { return float64(p.Duration) }, 1.2},
		{lesson.NetClear(2.5), func(p *flight.Path) float64 {
			return float64(p.Net.State.Height() - court.NetHeight(p.Net.State.Ground().X).Metres())
		}, 2.5 * foot},
	} {
		r := solved(t, play(lesson.Shot{By: game.Near1, Aim: aim, Intent: c.intent}))
		s := r.Strokes[0]
		if got := c.got(s.Planned); s.Trouble != flight.Possible || !near(got, c.want, 1e-5) {
			t.Errorf("%v: flown at %v (%v), want %v", c.intent, got, s.Trouble, c.want)
		}
		checkPoint(t, c.intent.Kind.String()+" lands", s.Planned.End.Ground(), aim)
	}
}

func TestArcs(t *testing.T) {
	shot := lesson.Shot{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Speed(18)}
	low := solved(t, play(shot)).Strokes[0].Planned
	shot.Arc = lesson.High
	high := solved(t, play(shot)).Strokes[0].Planned
	if !(high.Duration > 2*low.Duration) || !(high.Apex.State.At.Z > 2*low.Apex.State.At.Z) {
		t.Errorf("high arc: %v s, %v m; low: %v s, %v m; want the high one much higher", high.Duration, high.Apex.State.At.Z, low.Duration, low.Apex.State.At.Z)
	}
}

// Spin and side go to the flight with their signs: topspin lands a ball of the
// same apex sooner in its flight after the top, a left curve starts to the right.
func TestSpinReachesTheFlight(t *testing.T) {
	shot := lesson.Shot{By: game.Near1, Aim: court.Pt(5, 18), Intent: lesson.Apex(8), Spin: 600, Side: 400}
	start := solved(t, play(shot)).Strokes[0].Planned.Start
	if want := flight.TopSpin(start.Velocity, 600, 400); start.Spin.Sub(want).Length() > 1e-9 {
		t.Errorf("spin %v rad/s, want %v", start.Spin, want)
	}
}

// What cannot be done is marked and solved all the same: every event has a
// time, and the ball still goes to its aim where any flight can.
func TestImpossibleShots(t *testing.T) {
	aim := court.Pt(-5, 18)
	for _, c := range []struct {
		name   string
		intent lesson.Intent
		aim    court.Point
		want   flight.Reason
	}{
		{"too slow", lesson.Speed(3), aim, flight.TooSlow},
		{"too fast", lesson.Speed(59), aim, flight.TooFast},
		{"in no time", lesson.Time(0.05), aim, flight.TooFast},
		{"apex below the contact", lesson.Apex(1), aim, flight.ApexTooLow},
		{"no net between", lesson.NetClear(1), court.Pt(3, -10), flight.NoNetBetween},
		{"behind the striker", lesson.Apex(8), court.Pt(3, -30), flight.AimBehind},
		{"at the contact", lesson.Apex(8), court.Pt(7, -23), flight.AimAtContact},
	} {
		shots := four()[:2]
		shots[0].Aim, shots[0].Intent = c.aim, c.intent
		r := solved(t, play(shots...))
		if got := r.Strokes[0].Trouble; got != c.want {
			t.Errorf("%s: trouble %q, want %q", c.name, got, c.want)
		}
		if len(r.Strokes) != 2 || !finite(r.Strokes[1].At) || r.Strokes[1].At < 0 {
			t.Errorf("%s: the return is struck at %v, want a time", c.name, r.Strokes[1].At)
		}
		if c.aim == aim {
			checkPoint(t, c.name+": lands", r.Strokes[0].Planned.End.Ground(), aim)
		}
	}
	if got := solved(t, play(four()...)).Strokes; slices.ContainsFunc(got, func(s Stroke) bool { return s.Trouble != flight.Possible }) {
		t.Error("a shot that can be done is marked")
	}
}

func finite(s units.Seconds) bool { return !math.IsNaN(float64(s)) && !math.IsInf(float64(s), 0) }

func TestEventsAreInOrderOfTime(t *testing.T) {
	r := solved(t, intoNet())
	if !slices.IsSortedFunc(r.Events, func(a, b Event) int { return cmp.Compare(a.At, b.At) }) {
		t.Errorf("events are not in order: %v", r.Events)
	}
	if first, last := r.Events[0], r.Events[len(r.Events)-1]; first.Name != lesson.ContactOf(0) || last.Name != lesson.TheEnd {
		t.Errorf("the first event is %v and the last %v, want serve.contact and end", first.Name, last.Name)
	}
}

// An anchor on the net of a ball that never crosses it means its contact.
func TestAnchorOnNoNet(t *testing.T) {
	shots := four()[:2]
	shots[1].Aim = court.Pt(3, 10)
	r := solved(t, play(shots...))
	noNet := lesson.Event{Shot: 1, Moment: lesson.Net}
	if _, ok := r.TimeOf(noNet); ok {
		t.Fatal("the return crosses the net, want not")
	}
	if got, want := r.TimeAt(lesson.Anchor{Event: noNet, Offset: 0.25}), timeOf(t, r, "return.contact")+0.25; got != want {
		t.Errorf("TimeAt(return.net + 0.25 s) = %v, want %v", got, want)
	}
}

func TestSolveRefusesPlaysThatAreNotThere(t *testing.T) {
	l := lesson.Lesson{Plays: []lesson.Play{play(four()...)}}
	for _, i := range []int{-1, 1} {
		if _, err := Solve(l, i); err == nil {
			t.Errorf("Solve(play %d of 1) worked, want an error", i+1)
		}
		if _, err := SolveWith(l, i, flight.Default()); err == nil {
			t.Errorf("SolveWith(play %d of 1) worked, want an error", i+1)
		}
	}
	bad := flight.Default()
	bad.Ball.Mass = 0
	if _, err := SolveWith(l, 0, bad); err == nil {
		t.Error("SolveWith(a ball of no mass) worked, want an error")
	}
}
