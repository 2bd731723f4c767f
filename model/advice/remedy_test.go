package advice

import (
	"testing"

	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

func hows(all []Remedy) map[How]Remedy {
	out := map[How]Remedy{}
	for _, r := range all {
		out[r.How] = r
	}
	return out
}

// checkGone solves a mended play and looks for the finding.
func checkGone(t *testing.T, l lesson.Lesson, f finding.Finding, r Remedy) {
	t.Helper()
	for _, g := range Check(solved(t, l.WithPlay(0, r.Play))) {
		if g.ID == f.ID && g.Player == f.Player {
			t.Errorf("remedy %v by %v leaves %+v", r.How, r.By, g)
		}
	}
}

// A late switch: later by the lateness, or a shorter run; the return is no matter.
func TestFixesForALateArrival(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(3.5, -22.9)}, {At: after(0, 1.2), Place: pt(-4, -22.9)}}
	})
	f := the(t, Check(solved(t, l)), finding.LateArrival)
	all := Fixes(f, l, 0, 0)
	got := hows(all)
	if len(got) != 2 {
		t.Fatalf("remedies %+v, want later and nearer", all)
	}
	late := float64(arg[units.Seconds](t, f, "late"))
	if r := got[MoveLater]; !(r.By >= late && r.By < late+0.011) || !near(float64(r.Play.Tracks[game.Near1][1].At.Offset), 1.2+r.By, 1e-12) {
		t.Errorf("later by %v s, want %v rounded up", r.By, late)
	}
	x := got[MoveNearer].Play.Tracks[game.Near1][1].Place.X
	if r := got[MoveNearer]; !near(float64(x+4), r.By, 1e-9) || !(r.By > 0.2) {
		t.Errorf("nearer by %v ft, stands at %v", r.By, x)
	}
	for _, r := range all {
		checkGone(t, l, f, r)
	}
	// An inch more is too much.
	p := l.Plays[0].WithTrack(game.Near1, []lesson.Keyframe{l.Plays[0].Tracks[game.Near1][0], {At: after(0, 1.2), Place: pt(float64(x)-0.1, -22.9)}})
	if !has(Check(solved(t, l.WithPlay(0, p))), finding.LateArrival) {
		t.Errorf("0.1 ft farther than %v ft is in time too: not the farthest", x)
	}
	if p, ok := Fix(f, l, 0); !ok || p.Tracks[game.Near1][1].At.Offset != got[MoveLater].Play.Tracks[game.Near1][1].At.Offset {
		t.Error("Fix is not the first of Fixes")
	}
}

// A returner who is not set is helped by the lowest return on half feet that does.
func TestFixesAskForAHigherReturn(t *testing.T) {
	l := flat()
	f := the(t, Check(solved(t, l)), finding.NotSet)
	got := hows(Fixes(f, l, 0, 0))
	r, ok := got[HigherReturn]
	if !ok || r.By <= 5 || r.By > 12 || float64(r.Play.Shots[1].Intent.Apex) != r.By {
		t.Fatalf("higher return %+v, %v, want between 5 and 12 ft", r, ok)
	}
	for _, r := range got {
		checkGone(t, l, f, r)
	}
	lower := l.Plays[0].Shots[1]
	lower.Intent = lesson.Apex(units.Feet(r.By) - 0.5)
	if after := Check(solved(t, l.WithPlay(0, l.Plays[0].WithShot(1, lower)))); !has(after, finding.NotSet) && lates(after) <= lates(Check(solved(t, l))) {
		t.Errorf("half a foot lower than %v ft helps too", r.By)
	}
	if r, ok := hows(Fixes(f, l, 0, 5.5))[HigherReturn]; ok {
		t.Errorf("above the cap of 5.5 ft a return of %v ft is asked for", r.By)
	}
}

// A slow returner is told not to stack, a quick one is not, nor one who stays on
// the own side.
func TestStackAdvice(t *testing.T) {
	slow := solved(t, paced(flat(), game.Far1, 3))
	f, ok := Stack(slow, 0)
	if !ok || f.ID != finding.NoStack || f.Player != game.Far1 || f.Severity != finding.Advice {
		t.Fatalf("Stack(3 m/s) = %+v, %v, want the advice not to stack", f, ok)
	}
	needs := arg[units.Feet](t, f, "needs")
	if needs <= 12 || arg[units.Feet](t, f, "most") != 12 || arg[units.Seconds](t, f, "short") <= 0 {
		t.Errorf("%+v, want an apex above the cap of 12 ft", f)
	}
	if f, ok := Stack(slow, needs+1); ok {
		t.Errorf("Stack with a cap above what it needs = %+v, want nothing", f)
	}
	if f, ok := Stack(solved(t, paced(flat(), game.Far1, 7)), 0); ok {
		t.Errorf("Stack(7 m/s) = %+v, want nothing", f)
	}
	if f, ok := Stack(solved(t, paced(base(), game.Far1, 2)), 0); ok {
		t.Errorf("Stack of one who stays on the own side = %+v, want nothing", f)
	}
	if _, ok := Stack(&rally.Rally{}, 0); ok {
		t.Error("Stack of no rally gives advice")
	}
}

func TestNoFixForOthers(t *testing.T) {
	l := base()
	if got := Fixes(finding.New(finding.Backhand, 1, pt(0, 0)), l, 0, 0); got != nil {
		t.Errorf("Fixes(backhand) = %v, want none", got)
	}
	if got := Fixes(finding.New(finding.NotSet, 1, pt(0, 0)), l, 7, 0); got != nil {
		t.Errorf("Fixes of a play that is not there = %v", got)
	}
	stale := finding.New(finding.LateArrival, 1, pt(0, 0), finding.Is("stop", 99)).About(game.Near1)
	for _, r := range Fixes(stale, l, 0, 0) {
		if r.How == MoveLater || r.How == MoveNearer {
			t.Errorf("Fixes of a place that is gone moves it: %+v", r)
		}
	}
}

// A server whose drawn switch takes longer than it has to is to be there sooner.
func TestFixesForAServerNotInPlace(t *testing.T) {
	bounce := lesson.Event{Shot: 1, Moment: lesson.Bounce}
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near1] = append(p.Tracks[game.Near1], lesson.Keyframe{At: lesson.Anchor{Event: bounce, Offset: 0.5}, Place: pt(-4, -23)})
	})
	f := the(t, Check(solved(t, l)), finding.NotInPlace)
	got := hows(Fixes(f, l, 0, 0))
	r, ok := got[MoveEarlier]
	if !ok || !near(r.By, 0.5, 0.011) || !near(float64(r.Play.Tracks[game.Near1][1].At.Offset), 0, 0.011) {
		t.Errorf("earlier %+v, %v, want by half a second", r, ok)
	}
	for _, r := range got {
		checkGone(t, l, f, r)
	}
}

// A run whose own end the ball decides is not put off: the ball does not wait.
func TestTheBallDoesNotWait(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near2] = []lesson.Keyframe{{Place: pt(9, -12)}, {At: after(2, 0), Place: pt(-7, -24), Facing: 0, Leave: new(after(1, 0.8))}}
	})
	f := the(t, Check(solved(t, l)), finding.LateArrival)
	got := hows(Fixes(f, l, 0, 0))
	if r, ok := got[MoveLater]; ok {
		t.Errorf("the third is struck %v s later: %+v", r.By, r)
	}
	for _, r := range got {
		checkGone(t, l, f, r)
	}
}

// The third out of reach: a higher return gives the striker the time.
func TestFixesForABallOutOfReach(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near2] = []lesson.Keyframe{{Place: pt(7, -20)}, {At: after(1, 0), Place: pt(7, -20)}, {At: after(1, 9), Place: pt(7, -20), Leave: new(after(1, 8))}}
		p.Shots[1].Intent, p.Shots[1].Aim = lesson.Apex(5), pt(-4, -18)
	})
	l = paced(l, game.Near2, 3)
	f := the(t, Check(solved(t, l)), finding.OutOfReach)
	got := hows(Fixes(f, l, 0, 0))
	if r, ok := got[HigherReturn]; !ok || r.By > 12 {
		t.Errorf("higher return %+v, %v, want one up to 12 ft", r, ok)
	}
	for _, r := range got {
		checkGone(t, l, f, r)
	}
}
