package advice

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/movement"
	"homeside/model/units"
)

// returner is the one of the table in the project's facts: the serve of 18 m/s at
// 10 degrees is met at the top of its bounce, 0.436 m up, by a returner at (5, -24)
// who runs to the kitchen line, half a foot behind it, at x.
func returner(p movement.Pace, x float64) Advisor {
	return Advisor{
		Pace: p, Start: pt(5, -24), Target: pt(x, -7.5), Model: flight.Default(),
		Return: flight.Return{From: flight.Over(pt(5, -24), 0.435686)},
	}
}

func paceOf(v, tau, brake float64) movement.Pace {
	p := movement.DefaultPace()
	p.TopSpeed, p.Tau, p.Braking, p.StrokeRecovery = units.MetresPerSecond(v), units.Seconds(tau), brake, 0.2
	return p
}

// The time budget of the facts, computed there with an independent program: the
// ways to the line, run through and stopped with 0.2 s of stroke recovery, and
// the apex that lets the returner stand when a 15 m/s third arrives. The table
// tells heights to half a foot and leaves the depth open; at 4 ft inside the
// baseline all of its heights come out when rounded up.
func TestTimeBudgetOfTheFacts(t *testing.T) {
	const depth = 4
	for _, c := range []struct {
		v, tau, brake, x            float64
		way, through, stopped, apex float64
	}{
		{7, 1, 5, -5, 19.3, 1.85, 2.37, 7.5},
		{6, 1, 5, -5, 19.3, 2.02, 2.50, 8.5},
		{5, 1, 5, -5, 19.3, 2.25, 2.67, 10},
		{4, 1, 3, -5, 19.3, 2.58, 3.16, 15.5},
		{3, 0.8, 3, -5, 19.3, 2.93, 3.41, 19},
		{6, 1, 5, 5, 16.5, 0, 0, 7}, // straight up: only the way and the apex are told
	} {
		a := returner(paceOf(c.v, c.tau, c.brake), c.x)
		n, err := a.Needs()
		if err != nil {
			t.Fatal(err)
		}
		if !near(float64(n.Run), c.way, 0.05) {
			t.Errorf("%v/%v runs %v ft, want %v", c.v, c.tau, n.Run, c.way)
		}
		if c.through > 0 && (!near(float64(n.Through), c.through, 0.0055) || !near(float64(n.Stopped), c.stopped, 0.0055)) {
			t.Errorf("%v/%v needs %.3f s through and %.3f s to stop, want %v and %v", c.v, c.tau, n.Through, n.Stopped, c.through, c.stopped)
		}
		got, ok := a.Needed(depth)
		if rounded := math.Ceil(float64(got)*2) / 2; !ok || rounded != c.apex {
			t.Errorf("%v/%v needs an apex of %.2f ft, rounded up %v, want %v", c.v, c.tau, got, rounded, c.apex)
		}
		if answer, err := a.Answer(depth, units.Feet(c.apex)); err != nil || answer.Verdict != InTime {
			t.Errorf("%v/%v with an apex of %v ft: verdict %v, %v, want in time", c.v, c.tau, c.apex, answer.Verdict, err)
		}
		want := AskForMore
		if c.apex > 12 { // the cap
			want = DoNotStack
		}
		if answer, err := a.Answer(depth, 6); err != nil || answer.Verdict != want {
			t.Errorf("%v/%v with an apex of 6 ft: verdict %v, %v, want %v", c.v, c.tau, answer.Verdict, err, want)
		}
	}
}

// The same table for a 9 ft apex: the third is at the kitchen line after 2.67 /
// 2.60 / 2.51 / 2.39 / 2.28 s for returns landing 1 / 3 / 6 / 10 / 14 ft inside.
// The facts fly the third, this program levels it: up to 0.01 s apart.
func TestDepthPaysAfterTheThird(t *testing.T) {
	a := returner(paceOf(6, 1, 5), -5)
	for _, c := range []struct{ depth, line float64 }{{1, 2.67}, {3, 2.60}, {6, 2.51}, {10, 2.39}, {14, 2.28}} {
		answer, err := a.Answer(units.Feet(c.depth), 9)
		if err != nil || !near(float64(answer.Bought.Line), c.line, 0.0125) {
			t.Errorf("Answer(%v ft, 9 ft) = third at the line after %.3f s, %v, want %v", c.depth, answer.Bought.Line, err, c.line)
		}
		if want := answer.Bought.Line - answer.Needs.Stopped; answer.Stopped != want || answer.Through <= answer.Stopped {
			t.Errorf("Answer(%v ft, 9 ft): margins %v standing, %v through, want %v and more", c.depth, answer.Stopped, answer.Through, want)
		}
	}
}

// Server's partner shuffling and stopping, of the same table, as this package's
// runs have it.
func TestShuffleOfTheFacts(t *testing.T) {
	for _, c := range []struct{ v, brake, ft, want float64 }{
		{6, 5, 4, 1.11}, {6, 5, 8, 1.63}, {6, 5, 10, 1.85},
		{4, 3, 4, 1.42}, {4, 3, 8, 2.09}, {4, 3, 10, 2.38},
	} {
		p := paceOf(c.v, 1, c.brake)
		got, err := p.Shuffling().Fastest(movement.Run{Distance: units.Feet(c.ft).Metres()})
		if err != nil || !near(float64(got.Duration()), c.want, 0.0055) {
			t.Errorf("%v m/s shuffling %v ft takes %.3f s, %v, want %v", c.v, c.ft, got.Duration(), err, c.want)
		}
	}
}

func TestChart(t *testing.T) {
	a := returner(paceOf(6, 1, 5), -5)
	c, err := a.Chart(nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(c.Depths) != 60 || len(c.Apexes) != 40 || len(c.Margin) != 60 || len(c.Margin[0]) != 40 {
		t.Fatalf("the chart is %d by %d, want 60 by 40", len(c.Margin), len(c.Margin[0]))
	}
	for _, cell := range [][2]int{{0, 10}, {15, 8}, {31, 20}, {59, 39}} {
		i, j := cell[0], cell[1]
		want, _ := a.Answer(c.Depths[i], c.Apexes[j])
		if c.Reason[i][j] != flight.Possible || !near(float64(c.Margin[i][j]), float64(want.Stopped), 1e-6) {
			t.Errorf("margin at %v ft, %v ft = %v (%v), want %v", c.Depths[i], c.Apexes[j], c.Margin[i][j], c.Reason[i][j], want.Stopped)
		}
	}
	if len(c.Line) != 60 {
		t.Fatalf("the line has %d spots, want one for each depth", len(c.Line))
	}
	for _, s := range c.Line {
		want, ok := a.Needed(s.Depth)
		if !ok || !near(float64(s.Apex), float64(want), 0.03) {
			t.Errorf("just set at depth %v ft: apex %.3f ft, want %.3f", s.Depth, s.Apex, want)
		}
	}
}

// Deeper and higher never cost time, and what is possible has a margin.
func TestChartGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := returner(paceOf(rapid.Float64Range(2, 9).Draw(t, "v"), 1, 4), rapid.Float64Range(-9, 9).Draw(t, "x"))
		depths := []units.Feet{1, 4, 8}
		apexes := []units.Feet{2, 6, 9, 14}
		c, err := a.Chart(depths, apexes)
		if err != nil {
			t.Fatal(err)
		}
		for i := range depths {
			for j := range apexes {
				if c.Reason[i][j] != flight.Possible {
					if j > 0 {
						t.Fatalf("a return of %v ft at depth %v: %v", apexes[j], depths[i], c.Reason[i][j])
					}
					continue
				}
				if j > 1 && c.Margin[i][j] <= c.Margin[i][j-1] {
					t.Fatalf("a higher return costs time: %v", c.Margin[i])
				}
				if i > 0 && j > 0 && c.Margin[i][j] >= c.Margin[i-1][j] {
					t.Fatalf("a shallower return buys time: %v, %v", c.Margin[i-1], c.Margin[i])
				}
			}
		}
	})
}

// The far team's returner is the near team's, mirrored.
func TestMirroredReturner(t *testing.T) {
	a := returner(paceOf(6, 1, 5), -5)
	b := a
	b.Start, b.Target, b.Return.From = a.Start.Mirror(), a.Target.Mirror(), flight.Over(a.Start.Mirror(), 0.435686)
	x, _ := a.Needed(3)
	y, _ := b.Needed(3)
	if !near(float64(x), float64(y), 1e-6) {
		t.Errorf("needed from the near end %v ft, from the far end %v ft", x, y)
	}
}

// A wheelchair turns first: 31.2 degrees of a half turn of 0.8 s.
func TestChairNeedsItsTurn(t *testing.T) {
	chair, _ := movement.PresetByKey("wheelchair")
	a := returner(chair.Pace, -5)
	with, _ := a.Needs()
	a.Pace.Turn = 0
	without, _ := a.Needs()
	want := 0.8 * math.Atan(10/16.5) / math.Pi
	if got := float64(with.Stopped - without.Stopped); !near(got, want, 1e-12) {
		t.Errorf("the turn costs %v s, want %v", got, want)
	}
}

func TestAnswerOfWhatCannotBe(t *testing.T) {
	a := returner(paceOf(6, 1, 5), -5)
	if answer, err := a.Answer(3, 1); err != nil || answer.Verdict != NoSuchReturn || answer.Stopped != 0 {
		t.Errorf("a return with an apex of 1 ft: %+v, %v, want no such return", answer, err)
	}
	a.Pace.TopSpeed = 0
	if _, err := a.Answer(3, 9); !errors.Is(err, movement.ErrPace) {
		t.Errorf("a pace without a speed: error %v, want ErrPace", err)
	}
	if _, err := a.Chart(nil, nil); !errors.Is(err, movement.ErrPace) {
		t.Errorf("Chart of a pace without a speed: error %v, want ErrPace", err)
	}
	if _, ok := a.Needed(3); ok {
		t.Error("a pace without a speed has a needed apex")
	}
	slow := returner(paceOf(0.5, 1, 5), -5)
	if apex, ok := slow.Needed(3); ok {
		t.Errorf("half a metre a second is enough with an apex of %v ft, want never", apex)
	}
}

func TestAdvisorOfARally(t *testing.T) {
	r := solved(t, base())
	a, depth, apex, ok := AdvisorOf(r)
	if !ok || depth != 4 || !near(float64(apex), 11, 1e-6) {
		t.Fatalf("AdvisorOf = depth %v, apex %v, %v, want 4, 11", depth, apex, ok)
	}
	if a.Target != pt(-5, 8) || a.Start.Distance(r.Tracks[game.Far1].Stops[1].Keyframe.Place) > 1e-9 {
		t.Errorf("runs from %v to %v, want from the ball to the line", a.Start, a.Target)
	}
	answer, err := a.Answer(depth, apex)
	if err != nil || !near(float64(answer.Bought.Third), float64(r.Strokes[2].At-r.Strokes[1].At), 1e-6) {
		t.Errorf("the third is struck %v s after the return, %v, want %v as in the rally", answer.Bought.Third, err, r.Strokes[2].At-r.Strokes[1].At)
	}
	short := base()
	short.Plays[0].Shots = short.Plays[0].Shots[:1]
	short.Plays[0].Tracks[game.Far1] = short.Plays[0].Tracks[game.Far1][:1]
	if _, _, _, ok := AdvisorOf(solved(t, short)); ok {
		t.Error("a play without a return has an advisor")
	}
}

func BenchmarkChart(b *testing.B) {
	a := returner(paceOf(6, 1, 5), -5)
	for b.Loop() {
		if _, err := a.Chart(nil, nil); err != nil {
			b.Fatal(err)
		}
	}
}
