package advice

import (
	"math"
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

func pt(x, y float64) court.Point { return court.Pt(units.Feet(x), units.Feet(y)) }

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

func after(shot int, offset units.Seconds) lesson.Anchor {
	return lesson.Anchor{Event: lesson.ContactOf(shot), Offset: offset}
}

// base is a play of invented people in which nobody is late, comes close or does
// anything else to be told: near1 serves, far1 returns high, near2 drops, far1 volleys.
func base() lesson.Lesson {
	return lesson.Lesson{
		Teams: [2]lesson.Team{
			{Name: "Harbour Lane", Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}},
			{Name: "Fernmoor", Players: [2]lesson.Player{{Name: "Oskar"}, {Name: "Tilde"}}},
		},
		Plays: []lesson.Play{{
			Lead: lesson.DefaultLead,
			Shots: []lesson.Shot{
				{By: game.Near1, Aim: pt(-5, 18), Intent: lesson.Apex(7.5)},
				{By: game.Far1, Aim: pt(-4, -18), Intent: lesson.Apex(11)},
				{By: game.Near2, Aim: pt(-3, 11), Intent: lesson.Apex(9), Meet: lesson.Meet{How: lesson.OnVolley, Height: 2}},
				{By: game.Far1, Aim: pt(-2, -16), Intent: lesson.Apex(6)},
			},
			Tracks: [4][]lesson.Keyframe{
				{{Place: pt(3.5, -22.9)}},
				{{Place: pt(-5, -23)}},
				{{Place: pt(-5, 25), Facing: 180}, {At: after(2, 0.4), Place: pt(-5, 8), Facing: 180, Leave: new(after(1, 0))}},
				{{Place: pt(5, 7.7), Facing: 180}},
			},
		}},
	}
}

func with(change func(p *lesson.Play)) lesson.Lesson {
	l := base()
	change(&l.Plays[0])
	return l
}

// paced gives a player a top speed.
func paced(l lesson.Lesson, id game.Player, v units.MetresPerSecond) lesson.Lesson {
	who, pace := l.Player(id), movement.DefaultPace()
	pace.TopSpeed = v
	who.Pace = &pace
	return l.WithPlayer(id, who)
}

func solved(t testing.TB, l lesson.Lesson) *rally.Rally {
	t.Helper()
	if bad := lesson.Validate(l); bad != nil {
		t.Fatalf("the test's own lesson: %v", bad)
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	for i, s := range r.Strokes {
		if s.Trouble != 0 || s.Stopped() {
			t.Fatalf("the test's own %s: %v, into the net: %v", lesson.ShotName(i), s.Trouble, s.Stopped())
		}
	}
	return r
}

func ids(all []finding.Finding) (out []finding.ID) {
	for _, f := range all {
		out = append(out, f.ID)
	}
	return out
}

// the is the one finding with an ID.
func the(t *testing.T, all []finding.Finding, id finding.ID) finding.Finding {
	t.Helper()
	i := slices.IndexFunc(all, func(f finding.Finding) bool { return f.ID == id })
	if i < 0 {
		t.Fatalf("findings %v, want %s among them", ids(all), id)
	}
	return all[i]
}

func has(all []finding.Finding, id finding.ID) bool { return slices.Contains(ids(all), id) }

func arg[T any](t *testing.T, f finding.Finding, name string) T {
	t.Helper()
	v, ok := f.Args.Get(name)
	if !ok {
		t.Fatalf("%s has no %q: %v", f.ID, name, f.Args)
	}
	out, ok := v.(T)
	if !ok {
		t.Fatalf("%s: %q is a %T", f.ID, name, v)
	}
	return out
}
