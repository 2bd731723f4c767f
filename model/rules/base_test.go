package rules

import (
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

func pt(x, y float64) court.Point { return court.Pt(units.Feet(x), units.Feet(y)) }

// base is a play of invented people against which nothing can be said: 0-0-2,
// ordinary places, serve, return, a drop, and a volley from behind the line.
func base() lesson.Lesson {
	thirdBounces := lesson.At(lesson.Event{Shot: 2, Moment: lesson.Bounce})
	return lesson.Lesson{
		Teams: [2]lesson.Team{
			{Name: "Harbour Lane", Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}},
			{Name: "Fernmoor", Players: [2]lesson.Player{{Name: "Oskar"}, {Name: "Tilde"}}},
		},
		Plays: []lesson.Play{{
			Situation: lesson.Situation{Call: game.Call{Server: 2}},
			Lead:      lesson.DefaultLead,
			Shots: []lesson.Shot{
				{By: game.Near1, Aim: pt(-5, 18), Intent: lesson.Apex(7.5)},
				{By: game.Far1, Aim: pt(4, -18), Intent: lesson.Apex(8)},
				{By: game.Near1, Aim: pt(3, 11), Intent: lesson.Apex(8), Meet: lesson.Meet{How: lesson.OnVolley, Height: 2}},
				{By: game.Far2, Aim: pt(-2, -16), Intent: lesson.Apex(6)},
			},
			Tracks: [4][]lesson.Keyframe{
				{{Place: pt(3.5, -22.9)}, {At: thirdBounces, Place: pt(4.5, -14), Leave: after(2)}},
				{{Place: pt(-5, -23)}, {At: thirdBounces, Place: pt(-4.5, -14), Leave: after(2)}},
				{{Place: pt(-5, 24.5), Facing: 180}, {At: thirdBounces, Place: pt(-4.5, 8.5), Facing: 180, Leave: after(1)}},
				{{Place: pt(5, 8.5), Facing: 180}},
			},
		}},
	}
}

func after(shot int) *lesson.Anchor {
	return &lesson.Anchor{Event: lesson.ContactOf(shot), Offset: 0.2}
}

// stay gives a player one place for the whole play.
func stay(p *lesson.Play, id game.Player, at court.Point) {
	p.Tracks[id] = []lesson.Keyframe{{Place: at, Facing: id.Team().Facing()}}
}

// with is the base lesson with its play changed.
func with(change func(l *lesson.Lesson, p *lesson.Play)) lesson.Lesson {
	l := base()
	change(&l, &l.Plays[0])
	return l
}

// found is what the rules say about the lesson's play.
func found(t testing.TB, l lesson.Lesson) []finding.Finding {
	t.Helper()
	if problems := lesson.Validate(l); problems != nil {
		t.Fatalf("the lesson is not sound: %v", problems)
	}
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	return Check(r, l)
}

func ids(all []finding.Finding) []finding.ID {
	var out []finding.ID
	for _, f := range all {
		out = append(out, f.ID)
	}
	return out
}

func has(all []finding.Finding, id finding.ID) bool { return slices.Contains(ids(all), id) }

func TestNothingAgainstTheBase(t *testing.T) {
	if got := found(t, base()); len(got) > 0 {
		t.Errorf("Check(base) = %+v, want nothing", got)
	}
}

func TestChecksAreNumbered(t *testing.T) {
	for i, c := range checks {
		if c.number != i+1 || c.about == "" || c.find == nil {
			t.Errorf("check %d is %+v, want number %d with words and a function", i, c, i+1)
		}
	}
}

func TestNoRally(t *testing.T) {
	if got := Check(nil, base()); got != nil {
		t.Errorf("Check(nil) = %v, want nothing", got)
	}
	if got := Check(&rally.Rally{}, base()); got != nil {
		t.Errorf("Check(empty rally) = %v, want nothing", got)
	}
}
