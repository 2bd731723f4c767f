package advice

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

func TestNothingToMendInTheBase(t *testing.T) {
	if got := ids(Check(solved(t, base()))); !slices.Equal(got, []finding.ID{finding.ShortOfLine}) {
		t.Errorf("Check(base) = %v, want only where the returner is at third contact", got)
	}
	if got := Check(nil); got != nil {
		t.Errorf("Check(nil) = %v", got)
	}
}

// A late player is late by exactly what the run takes too long, and with the
// speed that the finding asks for is on time.
func TestLateArrival(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(3.5, -22.9)}, {At: after(0, 1.6), Place: pt(-4, -22.9)}}
	})
	f := the(t, Check(solved(t, l)), finding.LateArrival)
	pace := movement.DefaultPace()
	run, err := pace.Shuffling().Fastest(movement.Run{Distance: units.Feet(7.5).Metres()})
	if err != nil {
		t.Fatal(err)
	}
	want := 0.2 + run.Duration() - 1.6 // stroke recovery first
	if got := arg[units.Seconds](t, f, "late"); !near(float64(got), float64(want), 1e-9) || f.Severity != finding.Late {
		t.Errorf("late by %v s, %v, want %v", got, f.Severity, want)
	}
	if !f.Someone || f.Player != game.Near1 || f.Where != pt(-4, -22.9) || f.When != 1.6 {
		t.Errorf("finding %+v, want about near1 at -4, -22.9 and 1.6 s", f)
	}
	needs := arg[units.MetresPerSecond](t, f, "needs")
	if again := Check(solved(t, paced(l, game.Near1, needs+1e-6))); has(again, finding.LateArrival) {
		t.Errorf("with %v m/s still late: %v", needs, ids(again))
	}
	if again := Check(solved(t, paced(l, game.Near1, needs*0.97))); !has(again, finding.LateArrival) {
		t.Errorf("with a little less than %v m/s not late", needs)
	}
}

func TestNoSpeedIsEnough(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near1] = []lesson.Keyframe{{Place: pt(3.5, -22.9)}, {At: after(0, 0.1), Place: pt(-4, -22.9)}}
	})
	f := the(t, Check(solved(t, l)), finding.LateArrival)
	if v, ok := f.Args.Get("needs"); ok {
		t.Errorf("needs %v m/s to be there before the recovery is over, want no speed", v)
	}
}

// A serving pair that is still running when the return bounces is told so; one
// that stands by then, or walks in from then, is not.
func TestServersInPlace(t *testing.T) {
	bounce := lesson.Event{Shot: 1, Moment: lesson.Bounce}
	for _, c := range []struct {
		name  string
		place court.Point
		at    lesson.Anchor
		leave *lesson.Anchor
		want  bool
	}{
		{"switch that takes too long", pt(-4, -23), lesson.Anchor{Event: bounce, Offset: 0.5}, nil, true},
		{"switch done in time", pt(-4, -23), lesson.At(bounce), nil, false},
		{"walks in behind the bounce", pt(3.5, -15), lesson.Anchor{Event: bounce, Offset: 2}, new(lesson.At(bounce)), false},
	} {
		r := solved(t, with(func(p *lesson.Play) {
			p.Tracks[game.Near1] = append(p.Tracks[game.Near1], lesson.Keyframe{At: c.at, Place: c.place, Leave: c.leave})
		}))
		all := Check(r)
		if got := has(all, finding.NotInPlace); got != c.want {
			t.Errorf("%s: not in place = %v, want %v: %v", c.name, got, c.want, ids(all))
		}
		if !c.want {
			continue
		}
		f := the(t, all, finding.NotInPlace)
		if after := arg[units.Seconds](t, f, "after"); !near(float64(after), 0.5, 1e-9) {
			t.Errorf("%s: in place %v s after the bounce, want 0.5", c.name, after)
		}
		if short := arg[units.Feet](t, f, "short"); !near(float64(short), float64(f.Where.Distance(c.place)), 1e-9) {
			t.Errorf("%s: %v ft short, want %v", c.name, short, f.Where.Distance(c.place))
		}
	}
}

// flat has the returner change sides after a return too low for that.
func flat() lesson.Lesson {
	return with(func(p *lesson.Play) {
		p.Shots[1].Intent = lesson.Apex(5)
		p.Shots[2].Meet, p.Shots[2].Intent = lesson.Meet{}, lesson.Apex(5) // taken after the bounce
		p.Shots[3].By = game.Far2
		p.Tracks[game.Far1][1] = lesson.Keyframe{At: after(2, 0.3), Place: pt(5, 7.5), Facing: 180}
		p.Tracks[game.Far2] = []lesson.Keyframe{{Place: pt(-11, 7.5), Facing: 180}, {At: after(2, 0), Place: pt(-5, 7.7), Facing: 180}}
	})
}

func TestReturnerNotSet(t *testing.T) {
	r := solved(t, flat())
	f := the(t, Check(r), finding.NotSet)
	third := r.Strokes[2]
	over, ok := third.Planned.Reaches(pt(0, 7.5).Y.Metres())
	if !ok {
		t.Fatal("the third does not reach the line")
	}
	if want := third.At + over; !near(float64(f.When), float64(want), 1e-9) {
		t.Errorf("told at %v s, want when the third is over the line at %v s", f.When, want)
	}
	leg := r.Tracks[game.Far1].Legs[1]
	if got, want := arg[units.Seconds](t, f, "after"), leg.To-f.When; got != want || want <= 0 {
		t.Errorf("set %v s after, want %v", got, want)
	}
	pose := r.Tracks[game.Far1].RunAt(f.When)
	if got, want := float64(arg[units.Feet](t, f, "short")), float64(pose.Place.Distance(pt(5, 7.5))); !near(got, want, 1e-9) {
		t.Errorf("%v ft short, want %v", got, want)
	}
	if fast := Check(solved(t, paced(flat(), game.Far1, 14))); has(fast, finding.NotSet) && has(fast, finding.LateArrival) {
		t.Error("late at 14 m/s")
	}
}

func TestShortOfTheLine(t *testing.T) {
	r := solved(t, base())
	f := the(t, Check(r), finding.ShortOfLine)
	pose := r.Tracks[game.Far1].RunAt(r.Strokes[2].At)
	if got, want := arg[units.Feet](t, f, "short"), pose.Place.Y-7; got != want || f.Severity != finding.Advice {
		t.Errorf("short by %v, %v, want %v as advice", got, f.Severity, want)
	}
	if got := arg[units.MetresPerSecond](t, f, "speed"); got != pose.Speed || got < 1 {
		t.Errorf("moves at %v m/s, want %v", got, pose.Speed)
	}
	stays := Check(solved(t, with(func(p *lesson.Play) { p.Tracks[game.Far1][1].Place = pt(-5, 15) })))
	if has(stays, finding.ShortOfLine) {
		t.Error("one who means to stay back is told to be short of the line")
	}
}

// The striker's reach: arm and paddle 0.9725 m = 3.19 ft, with the lunge of
// 0.8 m 5.82 ft.
func TestStrikers(t *testing.T) {
	ball := rally.Stroke{}
	{
		r := solved(t, base())
		ball = r.Strokes[2] // far from everybody else's track
	}
	at := court.Pt(units.Metres(ball.From.X).Feet(), units.Metres(ball.From.Y).Feet())
	for _, c := range []struct {
		name     string
		off      court.Point // from the ball to the striker
		hand     lesson.Hand
		want     []finding.ID
		stretch  Stretch
		forehand bool
	}{
		{"on the forehand", pt(-2, 0), lesson.RightHanded, nil, AtArm, true},
		{"in front", pt(0, -2), lesson.RightHanded, nil, AtArm, true},
		{"on the backhand", pt(2, 0), lesson.RightHanded, []finding.ID{finding.Backhand}, AtArm, false},
		{"a left-hander's forehand", pt(2, 0), lesson.LeftHanded, nil, AtArm, true},
		{"a left-hander's backhand", pt(-2, 0), lesson.LeftHanded, []finding.ID{finding.Backhand}, AtArm, false},
		{"a lunge", pt(-4, 0), lesson.RightHanded, []finding.ID{finding.Lunge}, WithLunge, true},
		{"out of reach", pt(-6, 0), lesson.RightHanded, []finding.ID{finding.OutOfReach}, Beyond, true},
	} {
		l := with(func(p *lesson.Play) {
			stand := at.Add(c.off)
			p.Tracks[game.Near2] = []lesson.Keyframe{{Place: stand}, {At: after(2, 0), Place: stand}}
		})
		who := l.Player(game.Near2)
		who.Hand = c.hand
		r := solved(t, l.WithPlayer(game.Near2, who))
		m := Meet(r, 2)
		if m.Stretch != c.stretch || m.Forehand != c.forehand || !near(float64(m.Distance), float64(c.off.Length()), 1e-6) {
			t.Errorf("%s: Meet = %+v, want stretch %v, forehand %v", c.name, m, c.stretch, c.forehand)
		}
		var got []finding.ID
		for _, f := range Check(r) {
			if f.Player == game.Near2 {
				got = append(got, f.ID)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

func TestOutOfReachByHowMuch(t *testing.T) {
	l := with(func(p *lesson.Play) {
		p.Tracks[game.Near2] = []lesson.Keyframe{{Place: pt(9, -30)}, {At: after(2, 0), Place: pt(9, -30)}}
	})
	r := solved(t, l)
	f := the(t, Check(r), finding.OutOfReach)
	want := Meet(r, 2).Distance - movement.DefaultPace().Reach().Feet()
	if got := arg[units.Feet](t, f, "beyond"); got != want || want < 5 || arg[finding.Shot](t, f, "shot") != 2 {
		t.Errorf("beyond reach by %v ft, want %v", got, want)
	}
}

// random is an ordinary rally with random runs around it.
func random(t *rapid.T) lesson.Lesson {
	l := base()
	p := lessontest.Plays().Draw(t, "play")
	shots := l.Plays[0].Shots
	for len(p.Shots) < len(shots) {
		p.Shots = append(p.Shots, lesson.Shot{})
	}
	for i := range p.Shots {
		s := shots[i%4]
		s.By = game.Player(2*(i%2)) + game.Player(rapid.IntRange(0, 1).Draw(t, "by"))
		s.Aim.Y = units.Feet(16 * (1 - 2*(i%2)))
		s.Intent, s.Meet = lesson.Apex(9), lesson.Meet{}
		p.Shots[i] = s
	}
	p.Shots[0].From = &lesson.Place{Point: pt(3, -23), Height: 2.6}
	p.Lead = min(p.Lead, 5)
	for id := range p.Tracks {
		for i := range p.Tracks[id] { // a bend may fold, and then a hair decides
			p.Tracks[id][i].Via = nil
		}
	}
	l.Plays[0] = p
	return l
}

// Mirrored plays get mirrored findings.
func TestMirroredFindings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := random(t)
		r, err := rally.Solve(l, 0)
		if err != nil {
			t.Fatal(err)
		}
		turned := l.WithPlay(0, edit.Turned(l.Plays[0]))
		turned.Teams[0], turned.Teams[1] = l.Teams[1], l.Teams[0]
		m, err := rally.Solve(turned, 0)
		if err != nil {
			t.Fatal(err)
		}
		a, b := Check(r), Check(m)
		if len(a) != len(b) {
			t.Fatalf("%v, turned round %v", ids(a), ids(b))
		}
		for _, f := range a {
			if !slices.ContainsFunc(b, func(g finding.Finding) bool { return mirrors(f, g) }) {
				t.Fatalf("%+v has no mirror image in %+v", f, b)
			}
		}
	})
}

func mirrors(f, g finding.Finding) bool {
	return f.ID == g.ID && f.Someone == g.Someone && (!f.Someone || f.Player == g.Player^2) &&
		near(float64(f.When), float64(g.When), 1e-3) && f.Where.Distance(g.Where.Mirror()) < 0.02
}

// Every finding has a kind, a finite place and a time within the rally.
func TestFindingsAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, err := rally.Solve(random(t), 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range Check(r) {
			if finding.KindOf(f.ID).ID != f.ID || !f.Where.Finite() || f.When != f.When {
				t.Fatalf("finding %+v", f)
			}
			for _, a := range f.Args {
				if v, ok := a.Value.(units.Seconds); ok && !(v > 0) {
					t.Fatalf("%s: %s is %v s", f.ID, a.Name, v)
				}
				if v, ok := a.Value.(units.Feet); ok && !(v >= 0) {
					t.Fatalf("%s: %s is %v ft", f.ID, a.Name, v)
				}
			}
		}
	})
}

func BenchmarkCheck(b *testing.B) {
	r := solved(b, flat())
	b.ReportAllocs()
	for b.Loop() {
		if len(Check(r)) == 0 {
			b.Fatal("no findings")
		}
	}
}

// The whole of it: a four-shot play resolved with its findings.
func BenchmarkSolveAndCheck(b *testing.B) {
	l := flat()
	b.ReportAllocs()
	for b.Loop() {
		r, err := rally.Solve(l, 0)
		if err != nil {
			b.Fatal(err)
		}
		if len(Check(r)) == 0 {
			b.Fatal("no findings")
		}
	}
}
