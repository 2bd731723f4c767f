package session_test

import (
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// compared is a session with an ordinary play and the kinds behind it; the last
// kind's play is shown.
func compared(t *testing.T, returns bool, kinds ...formation.Kind) *session.Session {
	t.Helper()
	s := session.New(started(), "", nil)
	for _, k := range kinds {
		written(t, s, session.Request{Kind: k, Returns: returns})
	}
	return s
}

// The tell is the pair's whose formation it is: a stack's before the serve, a
// switch's after its own side's contact, none of what is the same.
func TestTell(t *testing.T) {
	for _, c := range []struct {
		returns bool
		a, b    formation.Kind
		team    court.End
		want    []formation.Use // any of them
	}{
		{false, lesson.Ordinary, lesson.Stacked, court.Near, []formation.Use{formation.ShowsAtServe}},
		{true, lesson.Ordinary, lesson.Stacked, court.Far, []formation.Use{formation.ShowsAtServe}},
		{false, lesson.Stayed, lesson.Switched, court.Near, []formation.Use{formation.InTimeToUse, formation.TooLateToUse}},
		{true, lesson.Stayed, lesson.Switched, court.Far, []formation.Use{formation.InTimeToUse, formation.TooLateToUse}},
		{false, lesson.Ordinary, lesson.Stayed, court.Near, []formation.Use{formation.NeverShows}},
	} {
		s := compared(t, c.returns, c.a, c.b)
		s.Compare(1)
		got, ok := s.Tell()
		if !ok || got.Team != c.team || !uses(c.want, got.Place.Use) {
			t.Errorf("%v beside %v, returning %v: the %v team's tell is %v, %v; want the %v team's, one of %v", c.a, c.b, c.returns, got.Team, got.Place.Use, ok, c.team, c.want)
		}
		if own := s.Current().TimeAt(lesson.At(lesson.ContactOf(0))); got.Place.Use == formation.InTimeToUse && got.Place.At <= own {
			t.Errorf("%v beside %v shows at %v, before the own contact", c.a, c.b, got.Place.At)
		}
	}
}

func uses(all []formation.Use, u formation.Use) bool {
	for _, w := range all {
		if w == u {
			return true
		}
	}
	return false
}

// How long opponents need decides what they can use of the same sign.
func TestOpponentsNeed(t *testing.T) {
	s := compared(t, false, lesson.Stayed, lesson.Switched)
	s.Compare(1)
	before, _ := s.Tell()
	for _, c := range []struct {
		needs units.Seconds
		want  formation.Use
	}{{before.Place.Before - 0.01, formation.InTimeToUse}, {before.Place.Before + 0.01, formation.TooLateToUse}, {0, before.Place.Use}} {
		s.OpponentsNeed(c.needs)
		if got, _ := s.Tell(); got.Place.Use != c.want || got.Place.At != before.Place.At {
			t.Errorf("needing %v s a sign %v s before the contact is %v at %v, want %v at %v", c.needs, before.Place.Before, got.Place.Use, got.Place.At, c.want, before.Place.At)
		}
	}
}

// The comparing follows the two plays: opening the other one swaps them, new
// plays move them, and it ends where plays go.
func TestComparingFollows(t *testing.T) {
	s := compared(t, false, lesson.Stayed, lesson.Switched)
	is := func(what string, play int, on bool) {
		t.Helper()
		if got, ok := s.Comparing(); ok != on || on && got != play {
			t.Errorf("%s: Comparing() = %d, %v, want %d, %v", what, got, ok, play, on)
		}
	}
	is("nothing asked", 0, false)
	s.Compare(1)
	is("asked", 1, true)
	s.SelectPlay(1)
	is("the other is opened", 2, true)
	s.SelectPlay(0)
	is("a third is opened", 2, true)
	written(t, s, session.Request{Kind: lesson.Stacked})
	is("a play comes in before", 3, true)
	s.Undo()
	is("plays have gone", 0, false)
	s.Compare(s.PlayIndex())
	is("a play beside itself", 0, false)
	s.Compare(99)
	is("no such play", 0, false)
	s.Compare(2)
	s.StopComparing()
	is("stopped", 0, false)
}

// A change of either play is seen at once.
func TestComparedIsSolvedAgain(t *testing.T) {
	s := compared(t, false, lesson.Ordinary, lesson.Ordinary)
	s.Compare(1)
	if got, _ := s.Tell(); got.Place.Shows {
		t.Fatalf("two ordinary plays differ at %v", got.Place.At)
	}
	l := s.Lesson()
	s.Preview(edit.ReplacePlay(l, 2, edit.MoveKeyframe(l.Plays[2], game.Near2, 0, court.Pt(-8, -23))))
	if got, _ := s.Tell(); got.Place.Use != formation.ShowsAtServe || got.Place.Who != game.Near2 {
		t.Errorf("near2 held elsewhere: %v by %v, want before the serve by near2", got.Place.Use, got.Place.Who)
	}
}
