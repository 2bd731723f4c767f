package signal

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Score intervals without continuity correction in the table of R. G. Newcombe,
// Statistics in Medicine 17 (1998) 857, method 3 (quoted from memory, recomputed apart from
// this program).
func TestIntervalOf(t *testing.T) {
	for _, c := range []struct {
		won, n    int
		low, high float64
	}{
		{81, 263, 0.2553, 0.3662}, {15, 148, 0.0624, 0.1605}, {0, 20, 0, 0.1611}, {1, 29, 0.0061, 0.1718}, {0, 0, 0, 1}, {20, 20, 0.8389, 1},
	} {
		got := IntervalOf(lesson.Count{Rallies: c.n, Won: c.won})
		if far(got.Low, c.low, 5e-5) || far(got.High, c.high, 5e-5) || !got.Contains((c.low+c.high)/2) {
			t.Errorf("IntervalOf(%d of %d) = %v, want %v to %v", c.won, c.n, got, c.low, c.high)
		}
	}
}

// played is a rally of a match.
func played(winner court.End, did lesson.Formation, to lesson.ReturnTo) lesson.MatchRally {
	return lesson.MatchRally{Winner: winner, Formations: [2]lesson.Formation{did, lesson.Ordinary}, Return: to}
}

// A game worked through by hand: near serves 0-0-2 from the right, 1-0-2 from the
// left, 2-0-2 from the right and loses; far's rally counts for nobody here.
func TestTallyOf(t *testing.T) {
	l := lesson.Lesson{Match: lesson.Match{Rallies: []lesson.MatchRally{
		played(court.Near, lesson.Switched, lesson.DownLine), // from the right: down the line is the left half
		played(court.Near, lesson.Stayed, lesson.ToMover),    // from the left: the server's half is the left
		played(court.Far, lesson.Ordinary, lesson.ToMover),   // from the right: right
		played(court.Near, lesson.Switched, lesson.DownLine), // far serves
	}}}
	right, err := TallyOf(l, court.Near, court.Right)
	want := Tally{}
	want[Switch][Left] = lesson.Count{Rallies: 1, Won: 1}
	want[Stay][Right] = lesson.Count{Rallies: 1}
	if err != nil || right != want {
		t.Errorf("TallyOf near, right = %v, %v, want %v", right, err, want)
	}
	left, err := TallyOf(l, court.Near, court.Left)
	want = Tally{}
	want[Stay][Left] = lesson.Count{Rallies: 1, Won: 1}
	if err != nil || left != want {
		t.Errorf("TallyOf near, left = %v, %v, want %v", left, err, want)
	}
	if _, ok := right.Game(); ok {
		t.Errorf("%v.Game() knows four chances, want false: two have no rally", right)
	}
}

// What shows nothing does not count, whatever it is joined with.
func TestTallyLeavesOut(t *testing.T) {
	for _, did := range lesson.Formations {
		for _, to := range lesson.ReturnsTo {
			l := lesson.Lesson{Match: lesson.Match{Rallies: []lesson.MatchRally{played(court.Far, did, to)}}}
			got, err := TallyOf(l, court.Near, court.Right)
			counts := (did == lesson.Switched || did == lesson.Stayed || did == lesson.Ordinary) && (to == lesson.ToMover || to == lesson.DownLine)
			if err != nil || (got != Tally{}) != counts {
				t.Errorf("%v with a return %v: %v, %v, counts is to be %v", did, to, got, err, counts)
			}
		}
	}
}

func TestTallyRefuses(t *testing.T) {
	l := lesson.Lesson{Match: lesson.Match{From: &lesson.Opening{Call: game.Call{Serving: 30, Receiving: 2, Server: 1}}}}
	if got, err := TallyOf(l, court.Near, court.Right); err == nil {
		t.Errorf("TallyOf a match from 30-2-1 = %v, want an error", got)
	}
}

func TestTallyGame(t *testing.T) {
	tally := Tally{{{Rallies: 10, Won: 3}, {Rallies: 10, Won: 7}}, {{Rallies: 5, Won: 3}, {Rallies: 5, Won: 2}}}
	if got, ok := tally.Game(); !ok || got != (Game{{0.3, 0.7}, {0.6, 0.4}}) {
		t.Errorf("%v.Game() = %v, %v", tally, got, ok)
	}
}
