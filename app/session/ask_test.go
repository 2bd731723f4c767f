package session_test

import (
	"errors"
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	signals "homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
)

// What is asked: nothing that is known, nothing that would change nothing.
func TestMissing(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(l *lesson.Lesson, p *lesson.Play)
		want  session.Missing
	}{
		{"all is said", func(l *lesson.Lesson, _ *lesson.Play) { l.Teams[0].Starter, l.Teams[1].Starter = 1, 1 }, session.Missing{}},
		{"no call", func(_ *lesson.Lesson, p *lesson.Play) { p.Situation.Call = game.Call{} }, session.Missing{Call: true}},
		{"called by the wrong team", func(_ *lesson.Lesson, p *lesson.Play) { p.Situation.Serving = court.Far }, session.Missing{Serving: true}},
		{"nobody said who started for far", func(l *lesson.Lesson, p *lesson.Play) { l.Teams[0].Starter = 1 },
			session.Missing{Questions: []game.Question{{Kind: game.AskStarter, Team: court.Far}}}},
	} {
		l := served(game.SideOut)
		c.spoil(&l, &l.Plays[0])
		if got := session.New(l, "", nil).Missing(); !reflect.DeepEqual(got, c.want) && (len(got.Questions)+len(c.want.Questions) > 0 || got.Call != c.want.Call || got.Serving != c.want.Serving) {
			t.Errorf("%s: Missing() = %+v, want %+v", c.name, got, c.want)
		}
	}
	if got := session.New(lesson.Lesson{}, "", nil).Missing(); got.Call || got.Questions != nil {
		t.Errorf("Missing() without a play = %+v, want nothing", got)
	}
}

func TestCall(t *testing.T) {
	for _, c := range []struct {
		text string
		want error // nil: taken
	}{{"4-7-2", nil}, {"12-3-1", game.ErrImpossible}, {"0-0-3", errAny}, {"four", errAny}, {"4-7", game.ErrImpossible}} {
		s := session.New(served(game.SideOut), "", nil)
		got := s.Call(c.text, court.Near)
		if c.want == errAny && got == nil || c.want != errAny && !errors.Is(got, c.want) {
			t.Errorf("Call(%q) = %v, want %v", c.text, got, c.want)
		}
		p, _ := s.Play()
		if call := p.Situation.Call.String(); (call == c.text) != (c.want == nil) || s.Modified() != (c.want == nil) {
			t.Errorf("after Call(%q) the play is at %s, modified %v", c.text, call, s.Modified())
		}
	}
}

var errAny = errors.New("any error")

func TestAnswersAreSteps(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	s.Started(game.Far2)
	s.Began(court.Far)
	l := s.Lesson()
	if l.Teams[court.Far].Starter != 2 || l.Match.First == nil || *l.Match.First != court.Far {
		t.Errorf("answered: starter %d, first %v, want 2 and far", l.Teams[court.Far].Starter, l.Match.First)
	}
	s.Undo()
	if name, _ := s.CanUndo(); name != "far2 started" || s.Lesson().Match.First != nil {
		t.Errorf("after Undo the last step is %q, want \"far2 started\"", name)
	}
}

// What signs mean is a step of the lesson; saying what they mean already is none.
func TestAgree(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	s.Agree(court.Far, signals.Usual())
	if s.Modified() {
		t.Error("agreeing on common practice changed a lesson without signs")
	}
	own := signals.Meanings{lesson.Switch, lesson.Stay, lesson.Fake}
	s.Agree(court.Far, own)
	s.Agree(court.Far, own)
	if got := s.Lesson().Teams[court.Far].Signs; got != lesson.Signs(own) || s.Lesson().Teams[court.Near].Signs != (lesson.Signs{}) {
		t.Errorf("the far pair's signs mean %v, want %v, the near pair's nothing", got, own)
	}
	if name, _ := s.CanUndo(); name != "what signs of the far team mean" {
		t.Errorf("the step is %q", name)
	}
	s.Undo()
	if s.Lesson().Teams[court.Far].Signs != (lesson.Signs{}) || s.Modified() {
		t.Error("undone the signs still mean something")
	}
}
