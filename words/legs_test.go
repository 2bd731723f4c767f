package words

import (
	"strings"
	"testing"

	"homeside/model/advice"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

func legPair() lesson.Lesson {
	return lesson.Lesson{Teams: [2]lesson.Team{{Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}}}}
}

func TestLegSentences(t *testing.T) {
	late := finding.Is("late", units.Seconds(0.254))
	short, after := finding.Is("short", units.Feet(4.5)), finding.Is("after", units.Seconds(0.4))
	shot, far := finding.Is("shot", finding.Shot(2)), finding.Is("distance", units.Feet(2.5))
	front := finding.Is("front", game.Near2)
	one, other := finding.Is("one", game.Near1), finding.Is("other", game.Near2)
	for _, c := range []struct {
		id   finding.ID
		args finding.Args
		want string
	}{
		{finding.LateArrival, finding.Args{late, finding.Is("needs", units.MetresPerSecond(7)), finding.Is("speed", units.MetresPerSecond(6))},
			"Ivo is 0.25 s late, 1 ft behind the baseline, 4 ft left of the centreline. The plan needs a top speed of 23.0 ft/s (7.0 m/s); here it is 19.7 ft/s (6.0 m/s)."},
		{finding.LateArrival, finding.Args{late}, "Ivo is 0.25 s late, 1 ft behind the baseline, 4 ft left of the centreline. No speed is enough."},
		{finding.NotInPlace, finding.Args{short, after}, "Ivo still runs when the return bounces: 4 ft 6 in to go, in place 0.40 s later."},
		{finding.NotSet, finding.Args{short, after}, "Ivo still runs when the third arrives: 4 ft 6 in to go, set 0.40 s later."},
		{finding.OutOfReach, finding.Args{shot, finding.Is("beyond", units.Feet(1))}, "Ivo cannot reach the third: it is 1 ft beyond arm, paddle and lunge."},
		{finding.CloseCrossing, finding.Args{far, one, other, front}, "Ivo and Mara come within 2 ft 6 in of one another, Mara in front: agree who goes in front."},
		{finding.CloseCrossing, finding.Args{far, one, other}, "Ivo and Mara come within 2 ft 6 in of one another, neither in front: agree who goes in front."},
		{finding.CloseCrossing, finding.Args{finding.Is("distance", units.Feet(0.01)), one, other, front}, "Ivo and Mara run into one another: agree who goes in front, or leave one of them more room."},
		{finding.CrossingOrder, finding.Args{finding.Is("stated", game.Near2)}, "Ivo goes in front where the paths cross, the play says Mara."},
		{finding.RunsBackward, finding.Args{far}, "Ivo goes 2 ft 6 in backwards: turn and run, never backpedal."},
		{finding.NearObstacle, finding.Args{far}, "Ivo passes 2 ft 6 in from an obstacle."},
		{finding.ShortOfLine, finding.Args{short, finding.Is("speed", units.MetresPerSecond(3))}, "When the third is struck Ivo is 4 ft 6 in short of the kitchen line and moves at 9.8 ft/s (3.0 m/s): that is normal, be balanced before the ball comes."},
		{finding.ShortOfLine, finding.Args{short}, "When the third is struck Ivo is 4 ft 6 in short of the kitchen line, balanced: that is normal."},
		{finding.Lunge, finding.Args{shot, far}, "Ivo lunges for the third, 2 ft 6 in away."},
		{finding.Backhand, finding.Args{shot}, "Ivo takes the third on the backhand."},
		{finding.NoStack, finding.Args{finding.Is("needs", units.Feet(15)), finding.Is("most", units.Feet(12))}, "Do not stack on Ivo's return: it would have to rise to 15 ft, and more than 12 ft is too much to ask."},
		{finding.NoStack, nil, "Do not stack on Ivo's return: no return buys the time for that run."},
	} {
		f := finding.New(c.id, 1, court.Pt(-4, -23), c.args...).About(game.Near1)
		if got, ok := legSentence(f, legPair()); !ok || got != c.want {
			t.Errorf("legSentence(%s) = %q, %v, want %q", c.id, got, ok, c.want)
		}
	}
	if got, ok := legSentence(finding.New(finding.WrongServer, 0, court.Point{}), legPair()); ok {
		t.Errorf("legSentence(wrong server) = %q, want none", got)
	}
}

// There is a second sentence just where a figure may lack.
func TestLegSentencesThatLack(t *testing.T) {
	for id, w := range legSentences {
		if finding.KindOf(id).Severity != finding.New(id, 0, court.Point{}).Severity || (w.lack == "") != (w.less == "") {
			t.Errorf("%s: %+v, want a kind, and a second sentence just where a figure may lack", id, w)
		}
	}
}

func TestReturnAdvice(t *testing.T) {
	a := advice.Answer{
		Needs: advice.Needs{Run: 19.25, Through: 2.02, Stopped: 2.5}, Depth: 6, Apex: 9, Cap: 12, Needed: 8.5,
		Bought: flight.Bought{Third: 1.84, Line: 2.61}, Stopped: 0.11, Through: 0.59,
	}
	for d, want := range []string{
		"Ivo is just set when the third arrives.",
		"Ivo is just set when the third arrives. A third is at the kitchen line 2.61 s after this return; Ivo needs 2.50 s to stand there, 2.02 s to run through: 0.11 s to spare. Times are estimates, not instructions to sprint.",
		"Ivo is just set when the third arrives. A third is at the kitchen line 2.61 s after this return; Ivo needs 2.50 s to stand there, 2.02 s to run through: 0.11 s to spare. The run is 19 ft 3 in. The return rises to 9 ft and lands 6 ft inside the baseline; the third is struck 1.84 s after it. Landing there it is high enough from 8 ft 6 in on. More than 12 ft is not asked for. Times are estimates, not instructions to sprint.",
	} {
		if got := ReturnAdvice(a, "Ivo", Detail(d)); got != want {
			t.Errorf("ReturnAdvice(%s) = %q\nwant %q", Details()[d], got, want)
		}
	}
	seen := map[string]bool{}
	for _, v := range advice.Verdicts {
		a.Verdict = v
		got := ReturnAdvice(a, "Ivo", InWords)
		if seen[got] || got == "" {
			t.Errorf("verdict %d says %q, want words of its own", v, got)
		}
		seen[got] = true
	}
	a.Verdict, a.Stopped, a.Needed = advice.DoNotStack, -0.4, 0
	if got := ReturnAdvice(a, "Ivo", AllNumbers); !strings.Contains(got, "0.40 s too late") || !strings.Contains(got, "no height is enough") {
		t.Errorf("too late: %q", got)
	}
}
