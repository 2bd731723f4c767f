package session_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/finding"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
)

// started is a lesson with one ordinary serve at the start of a game in which
// everybody has said who started.
func started() lesson.Lesson {
	l := served(game.SideOut)
	for _, e := range court.Ends {
		l.Teams[e].Starter = 1
	}
	return l
}

// written inserts the play that is asked for.
func written(t *testing.T, s *session.Session, r session.Request) formation.Written {
	t.Helper()
	w, err := s.WriteFormation(r)
	if err != nil {
		t.Fatalf("WriteFormation(%+v): %v", r, err)
	}
	must(t, s.InsertWritten(w))
	return w
}

// Every kind for either pair comes in behind the play shown, at its score and
// its server, without a fault, as one step that undo takes back.
func TestInsertEveryKind(t *testing.T) {
	for _, returns := range []bool{false, true} {
		for _, k := range formation.Kinds {
			for _, to := range formation.ServesTo {
				for _, walk := range []bool{false, true} {
					insertOne(t, session.Request{Kind: k, Returns: returns, Serve: to, WalkOn: walk})
				}
			}
		}
	}
}

func insertOne(t *testing.T, r session.Request) {
	t.Helper()
	before := edit.AddPlay(started(), edit.Mirrored(edit.OrdinaryPlay()))
	s := session.New(before, "", nil)
	w := written(t, s, r)
	p, _ := s.Play()
	if got := len(s.Lesson().Plays); got != 3 || s.PlayIndex() != 1 || !reflect.DeepEqual(p, w.Play) {
		t.Errorf("%+v: %d plays with %d shown, %q; want 3 with 1, %q", r, got, s.PlayIndex(), p.Title, w.Play.Title)
	}
	if want := before.Plays[0].Situation; p.Situation != want || p.Shots[0].By != game.Near1 {
		t.Errorf("%+v: written at %+v, served by %v, want %+v by near1", r, p.Situation, p.Shots[0].By, want)
	}
	if team := p.Shots[0].By.Team(); (w.Situation.Team == team) == r.Returns {
		t.Errorf("%+v: it is the formation of the %v team and %v serves", r, w.Situation.Team, team)
	}
	if finding.Faults(s.Findings()) {
		t.Errorf("%+v: the rules find faults: %+v", r, s.Findings())
	}
	if err := lesson.Validate(s.Lesson()); err != nil {
		t.Errorf("%+v: Validate = %v", r, err)
	}
	s.Undo()
	if !reflect.DeepEqual(s.Lesson(), before) || s.PlayIndex() != 0 {
		t.Errorf("%+v: undone, %d plays with %d shown, want the lesson as it was with 0", r, len(s.Lesson().Plays), s.PlayIndex())
	}
	s.Redo()
	if s.PlayIndex() != 1 || len(s.Lesson().Plays) != 3 {
		t.Errorf("%+v: done again, play %d of %d is shown, want 1 of 3", r, s.PlayIndex(), len(s.Lesson().Plays))
	}
}

// Who walks on starts where the play shown leaves everybody.
func TestWalkOn(t *testing.T) {
	s := session.New(started(), "", nil)
	r := s.Current()
	w := written(t, s, session.Request{Kind: lesson.Stacked, WalkOn: true})
	for _, id := range game.Players {
		if got, want := w.Play.Tracks[id][0].Place, r.Tracks[id].RunAt(r.To).Place; got != want {
			t.Errorf("%v begins at %v, want where the last play ended, %v", id, got, want)
		}
	}
}

// Rallies of a match keep their plays, and the walk stays in the match.
func TestInsertIntoAMatch(t *testing.T) {
	s := session.New(started(), "", nil)
	must(t, s.RallyWon(court.Near))
	must(t, s.RallyWon(court.Near))
	s.FirstState()
	w := written(t, s, session.Request{Kind: lesson.Switched, Returns: true})
	rallies := s.Lesson().Match.Rallies
	if rallies[0].Play != 1 || rallies[1].Play != 3 {
		t.Errorf("the rallies are shown by plays %d and %d, want 1 and 3", rallies[0].Play, rallies[1].Play)
	}
	if st := s.MatchState(); s.MatchAt() != 0 || !s.InMatch() || w.Situation.State != st {
		t.Errorf("the walk is at %d, in the match %v, written for %+v; want 0, true, %+v", s.MatchAt(), s.InMatch(), w.Situation.State, st)
	}
}

// What cannot be written says why in plain words, and nothing is inserted.
func TestNothingIsInsertedOnARefusal(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*lesson.Lesson)
		kind  formation.Kind
		want  string
	}{
		{"no score", func(l *lesson.Lesson) { l.Plays[0].Situation.Call = game.Call{} }, lesson.Ordinary, session.ErrNoScore.Error()},
		{"a call by the others", func(l *lesson.Lesson) { l.Plays[0].Situation.Serving = court.Far }, lesson.Ordinary, session.ErrNoScore.Error()},
		{"who started is open", func(l *lesson.Lesson) { l.Teams[court.Far].Starter = 0 }, lesson.Ordinary, session.ErrOpenScore.Error()},
		{"the wrong server", func(l *lesson.Lesson) {
			l.Plays[0].Situation.Call.Server, l.Plays[0].Shots[0].By = 1, game.Near2
		}, lesson.Ordinary, "near2 does not hold the serve"},
		{"no such score", func(l *lesson.Lesson) { l.Plays[0].Situation.Call.Serving = 40 }, lesson.Ordinary, "impossible"},
		{"no kind", func(*lesson.Lesson) {}, lesson.FormationUnsaid, "want ordinary, stack"},
		{"one side for two", func(l *lesson.Lesson) {
			l.Teams[court.Near].Players[0].Serving, l.Teams[court.Near].Players[1].Serving = lesson.WantLeft, lesson.WantLeft
		}, lesson.Stacked, "both want the left"},
		{"no reason to move", func(l *lesson.Lesson) { l.Teams[court.Near].Players[0].Serving = lesson.WantRight }, lesson.Stacked, "no need to stack"},
	} {
		l := started()
		c.spoil(&l)
		s := session.New(l, "", nil)
		_, err := s.WriteFormation(session.Request{Kind: c.kind})
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: WriteFormation = %v, want an error with %q", c.name, err, c.want)
		}
		if s.Modified() || len(s.Lesson().Plays) != 1 {
			t.Errorf("%s: the lesson has changed", c.name)
		}
	}
}

// A lesson without plays begins its game; a full one takes no more.
func TestInsertIntoEmptyAndFull(t *testing.T) {
	s := session.New(lesson.Lesson{}, "", nil)
	w := written(t, s, session.Request{Kind: lesson.Stacked})
	if got := w.Situation.State.Call(); got != game.StartCall(game.SideOut) || s.PlayIndex() != 0 || len(s.Lesson().Plays) != 1 {
		t.Errorf("without plays: written at %v, play %d of %d, want 0-0-2, 0 of 1", got, s.PlayIndex(), len(s.Lesson().Plays))
	}
	full := started()
	for len(full.Plays) < lesson.MaxPlays {
		full.Plays = append(full.Plays, full.Plays[0])
	}
	s = session.New(full, "", nil)
	w, err := s.WriteFormation(session.Request{Kind: lesson.Stacked})
	must(t, err)
	if err := s.InsertWritten(w); !errors.Is(err, session.ErrFull) || s.Modified() {
		t.Errorf("InsertWritten into a full lesson = %v, modified %v; want %v, false", err, s.Modified(), session.ErrFull)
	}
}
