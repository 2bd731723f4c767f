package edit_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// fitting is a lesson of one play that is right for a state of its game: the
// correct server serves from the correct court, the correct receiver returns.
func fitting(t *rapid.T) (lesson.Lesson, game.State) {
	s := states(t)
	l := lesson.Lesson{Scoring: lesson.Scoring{Format: s.Format(), To: s.Points()}, Plays: []lesson.Play{lessontest.Plays().Draw(t, "play")}}
	for _, e := range court.Ends {
		l.Teams[e].Starter = s.Starter(e).Number()
	}
	l.Plays[0] = edit.Carry(l, 0, s)
	return l, s
}

// checkFits fails unless the lesson's play is right for a state of its game. One
// call may leave two receivers open in a format where partners swap on their own
// serve only.
func checkFits(t *rapid.T, what string, l lesson.Lesson) game.State {
	p := l.Plays[0]
	o, _ := p.OpeningOf()
	all, err := game.Query{Format: l.Scoring.Format, To: l.Scoring.To, Starters: l.Starters(), Call: o.Call, Serving: o.Serving, Server: &o.Server}.Who()
	if err != nil {
		t.Fatalf("%s: %+v is served at no state of a game: %v", what, o, err)
	}
	for _, s := range all {
		right := p.Fits(s) && (len(p.Shots) < 2 || p.Shots[1].By == s.Receiver())
		for _, id := range []game.Player{s.Server(), s.Receiver()} {
			right = right && court.SideOf(id.Team(), p.AtServe(id).Place) == s.From()
		}
		if right {
			return s
		}
	}
	t.Fatalf("%s: of the states %+v none is served as %+v", what, all, p)
	return game.State{}
}

// A play that is right for its score is right for the mirrored score, and
// mirrored twice it is the same (USA Pickleball Official Rulebook 2026, 5.B: who
// serves from where and who receives). Where a point more or less would end the
// game the score goes the other way and does not come back.
func TestMirrorSidesFitsTheScore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, s := fitting(t)
		if (s.Call() == game.Call{}) && !s.Format().Rally() {
			return
		}
		before := checkFits(t, "before", l)
		once := edit.MirrorSides(l, 0)
		if once.Plays[0].Situation == l.Plays[0].Situation {
			return // no game comes to the score of the other court
		}
		after := checkFits(t, "mirrored", once)
		if after.From() == before.From() {
			t.Fatalf("mirrored from %v to %v the serve still comes from the %v", before.Call(), after.Call(), after.From())
		}
		twice := edit.MirrorSides(once, 0)
		checkFits(t, "mirrored twice", twice)
		if twice.Plays[0].Situation == l.Plays[0].Situation && sameServer(l, twice) && !near(edit.Mirrored(edit.Mirrored(l.Plays[0])), twice.Plays[0]) {
			t.Fatalf("mirrored twice %+v is %+v", l.Plays[0], twice.Plays[0])
		}
	})
}

func sameServer(a, b lesson.Lesson) bool {
	one, _ := a.Plays[0].Server()
	two, _ := b.Plays[0].Server()
	return one == two
}

// A worked pair of scores: 4-7-2 is even, 5-7-2 odd. The same server goes to the
// other court, the receivers stay, so the other of them receives.
func TestMirrorSidesFromEvenToOdd(t *testing.T) {
	l := lesson.Lesson{Plays: []lesson.Play{edit.OrdinaryPlay()}}
	l.Plays[0].Situation = lesson.Situation{Call: game.Call{Serving: 4, Receiving: 6, Server: 2}}
	got := edit.MirrorSides(l, 0).Plays[0]
	if want := (game.Call{Serving: 5, Receiving: 6, Server: 2}); got.Situation.Call != want {
		t.Errorf("4-6-2 mirrored is called %v, want %v", got.Situation.Call, want)
	}
	if got.Shots[0].By != game.Near1 || got.Shots[1].By != game.Far2 {
		t.Errorf("mirrored, %v serves and %v returns, want near1 and far2", got.Shots[0].By, got.Shots[1].By)
	}
	if at, want := got.AtServe(game.Near1).Place, court.Pt(-3.5, -22.9); at != want {
		t.Errorf("mirrored, the server stands at %v, want %v", at, want)
	}
	if at, want := got.AtServe(game.Far2).Place, court.Pt(5, 24.5); at != want {
		t.Errorf("mirrored, the receiver stands at %v, want %v", at, want)
	}
	if back := edit.MirrorSides(edit.MirrorSides(l, 0), 0); !near(back.Plays[0], l.Plays[0]) {
		t.Errorf("mirrored twice the play is %+v, want %+v", back.Plays[0], l.Plays[0])
	}
	l.Plays[0].Situation.Call = game.Call{Serving: 10, Receiving: 6, Server: 2}
	if got, want := edit.MirrorSides(l, 0).Plays[0].Situation.Call.Serving, 9; got != want {
		t.Errorf("10-6-2 of a game to 11 mirrored is called with %d points, want %d", got, want)
	}
	l.Plays[0].Situation = lesson.Situation{}
	if got := edit.MirrorSides(l, 0).Plays[0]; !reflect.DeepEqual(got, edit.Mirrored(l.Plays[0])) {
		t.Errorf("a play whose score is not said, mirrored, is %+v, want its mirror image", got)
	}
}

// With its roles reversed a play that is right for its score is right for the
// other team at the same call, wherever a game comes to that; twice reversed it
// is the same if both servers hold the serve by the score.
func TestReverseRolesFitsTheScore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, s := fitting(t)
		checkFits(t, "before", l)
		once := edit.ReverseRoles(l, 0)
		p := once.Plays[0]
		if p.Situation.Serving != s.Serving().Other() || p.Situation.Call != s.Call() {
			t.Fatalf("reversed, %v of the %v team is %+v", s.Call(), s.Serving(), p.Situation)
		}
		o, _ := p.OpeningOf()
		if _, err := once.StateAt(o); err != nil || (s.Call() == game.Call{}) && !s.Format().Rally() {
			if !near(edit.Turned(l.Plays[0]), p) {
				t.Fatalf("a call that no game comes to, reversed: %+v, want the play turned", p)
			}
			return
		}
		checkFits(t, "reversed", once)
		twice := edit.ReverseRoles(once, 0)
		checkFits(t, "reversed twice", twice)
		if sameServer(l, twice) && !near(edit.Turned(edit.Turned(l.Plays[0])), twice.Plays[0]) {
			t.Fatalf("reversed twice %+v is %+v", l.Plays[0], twice.Plays[0])
		}
	})
}

// Ends swapped twice give the same lesson, plays and match; what belongs to the
// court stays where it is.
func TestSwapEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lessontest.Lessons().Draw(t, "lesson")
		once := edit.SwapEnds(l)
		if bad := lesson.Validate(once); bad != nil {
			t.Fatalf("SwapEnds leaves the bounds: %v", bad[0])
		}
		again := edit.SwapEnds(edit.SwapEnds(once))
		for i := range once.Plays {
			if !near(again.Plays[i], once.Plays[i]) {
				t.Fatalf("swapped three times play %d is %+v, want as once %+v", i, again.Plays[i], once.Plays[i])
			}
		}
		again.Plays = once.Plays
		if !reflect.DeepEqual(again, once) {
			t.Fatalf("swapped three times the lesson is %+v, want as once %+v", again, once)
		}
		for i, p := range l.Plays {
			for n, m := range p.Marks {
				if got := once.Plays[i].Marks[n].Place; m.Kind == lesson.ObstacleMark && got != m.Place {
					t.Fatalf("an obstacle at %v stands at %v after the teams have changed ends", m.Place, got)
				}
			}
		}
	})
}

// The same person serves, to the same score, from the other end.
func TestSwapEndsOfAGame(t *testing.T) {
	l := lessontest.Sample()
	l.Match.From = nil
	before, err := l.Game()
	if err != nil {
		t.Fatal(err)
	}
	got := edit.SwapEnds(l)
	after, err := got.Game()
	if err != nil {
		t.Fatal(err)
	}
	for i, s := range before.States() {
		o := after.States()[i]
		if l.NameOf(s.Server()) != got.NameOf(o.Server()) || s.Call() != o.Call() || s.From() != o.From() || s.Serving() == o.Serving() {
			t.Errorf("rally %d: %s serves %v from the %v; with ends swapped %s serves %v from the %v", i, l.NameOf(s.Server()), s.Call(), s.From(), got.NameOf(o.Server()), o.Call(), o.From())
		}
	}
	if !reflect.DeepEqual(l.Plays, lessontest.Sample().Plays) {
		t.Error("SwapEnds changed the lesson it was given")
	}
}
