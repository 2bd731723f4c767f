package formation

import (
	"errors"
	"testing"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/rules"
)

// Every sibling of every kind is a sound play, and without a fault unless it
// says that somebody comes too late: who runs late may run into the ball.
func TestSiblings(t *testing.T) {
	for _, pace := range movement.Presets {
		for _, serves := range [2]bool{true, false} {
			for _, kind := range Kinds {
				s := plain(kind, serves)
				s.pace = pace
				all, err := s.write(t).WhatIf()
				if err != nil {
					t.Fatalf("%s %v, serves %v: %v", pace.Key, kind, serves, err)
				}
				if want := len(Changes); kind != lesson.Poached && len(all) != want || kind == lesson.Poached && len(all) != int(ThirdAtRunner) {
					t.Errorf("%v, serves %v: %d siblings, want %d", kind, serves, len(all), want)
				}
				for _, sib := range all {
					l := lessonOf(sib.Written)
					if p := lesson.Validate(l); p != nil {
						t.Fatalf("%v, %v: %v", kind, sib.Change, p)
					}
					for _, f := range rules.Check(sib.Rally, l) {
						if f.Severity == finding.Fault && sib.Answer.Verdict != TooLate {
							t.Errorf("%s %v, serves %v, %v: %v about %v at %.2f s, %v, %v", pace.Key, kind, serves, sib.Change, f.ID, f.Player, f.When, f.Where, f.Args)
						}
					}
				}
			}
		}
	}
}

func sibling(t *testing.T, w Written, c Change) Sibling {
	t.Helper()
	all, err := w.WhatIf()
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range all {
		if s.Change == c {
			return s
		}
	}
	t.Fatalf("no sibling: %v", c)
	return Sibling{}
}

// Who takes the return of a stacked serve: near1 serves from the right and ends
// on the left, where the mover and the line are; both are right-handed, so that
// the forehand in the middle is near1's.
func TestWhoTakesTheReturn(t *testing.T) {
	w := plain(lesson.Stacked, true).write(t)
	if got := w.Play.Shots[third].By; got != game.Near2 {
		t.Errorf("%v takes the cross-court return, want near2, who fills in", got)
	}
	for c, want := range map[Change]game.Player{ReturnAtMover: game.Near1, ReturnMiddle: game.Near1, ReturnDownLine: game.Near1, ReturnShort: game.Near2} {
		s := sibling(t, w, c)
		if s.Takes != want || s.Play.Shots[third].By != want {
			t.Errorf("%v: %v takes it, want %v", c, s.Takes, want)
		}
	}
}

func TestForehandInTheMiddle(t *testing.T) {
	for _, c := range []struct {
		right, left lesson.Hand
		want        game.Player
	}{
		{lesson.RightHanded, lesson.RightHanded, game.Near2},
		{lesson.LeftHanded, lesson.LeftHanded, game.Near1},
		{lesson.LeftHanded, lesson.RightHanded, game.Near2}, // both: the left one
		{lesson.RightHanded, lesson.LeftHanded, game.Near2}, // neither: likewise
	} {
		s := plain(lesson.Ordinary, true) // near1 on the right
		s.hands = [2]lesson.Hand{c.right, c.left}
		if got := sibling(t, s.write(t), ReturnMiddle).Takes; got != c.want {
			t.Errorf("right player %v-handed, left %v-handed: %v takes the middle, want %v", c.right, c.left, got, c.want)
		}
	}
}

// The one who is lobbed turns and runs forward, the other changes sides.
func TestLob(t *testing.T) {
	for _, serves := range [2]bool{true, false} {
		w := plain(lesson.Stacked, serves).write(t)
		s := sibling(t, w, LobOverFiller)
		if s.Takes != game.Near2 {
			t.Errorf("serves %v: %v runs the lob down, want near2, who fills in", serves, s.Takes)
		}
		legs := s.Rally.Tracks[game.Near2].Legs
		run := legs[len(legs)-2]
		if run.Gait != rally.Forward || run.Run.Distance == 0 {
			t.Errorf("serves %v: near2 runs the lob down %v over %v m, want forward", serves, run.Gait, run.Run.Distance)
		}
		if s.Side(game.Near1) != court.Right {
			t.Errorf("serves %v: near1 ends at %v, want on the right: was on the left and changes sides", serves, s.End(game.Near1))
		}
	}
}

// After a wide serve a return down the line would come too near to the stacked
// partner, who then steps in early.
func TestStepsInEarly(t *testing.T) {
	s := plain(lesson.Stacked, false)
	early := func(serve ServeTo, to lesson.ReturnTo) bool {
		situation := s.situation(t)
		situation.Serve, situation.Return = serve, to
		w, err := Write(situation, s.kind)
		if err != nil {
			t.Fatal(err)
		}
		leave := w.Play.Tracks[game.Near2][1].Leave
		return leave.Event == lesson.Event{Shot: 0, Moment: lesson.Bounce}
	}
	if early(ServeMiddle, lesson.ReturnUnsaid) || early(ServeWide, lesson.ReturnUnsaid) || early(ServeMiddle, lesson.DownLine) {
		t.Error("the partner steps in early without need")
	}
	if !early(ServeWide, lesson.DownLine) {
		t.Error("the partner waits in the line of the return")
	}
}

func TestSiblingOfWhatIsPlayed(t *testing.T) {
	s := plain(lesson.Ordinary, true)
	s.serve = ServeWide
	all, err := s.write(t).WhatIf()
	if err != nil {
		t.Fatal(err)
	}
	for _, sib := range all {
		if sib.Change == ServeWider {
			t.Errorf("a wide serve has the sibling %v", sib.Change)
		}
	}
	w := plain(lesson.Ordinary, true).write(t)
	w.Situation.State = game.State{}.Next(court.Near)
	for range 20 {
		w.Situation.State = w.Situation.State.Next(court.Near)
	}
	if _, err := w.WhatIf(); !errors.Is(err, ErrRefused) {
		t.Errorf("siblings after the game: %v, want a refusal", err)
	}
}
