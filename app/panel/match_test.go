package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/lesson"
)

func walkOf(t *testing.T, l lesson.Lesson) (*Match, *session.Session) {
	t.Helper()
	test.NewTempApp(t)
	var p *Match
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = NewMatch(s)
	p.Refresh()
	return p, s
}

func TestMatchSaysHowToBegin(t *testing.T) {
	p, s := walkOf(t, start())
	if !strings.HasPrefix(p.say.Text, "No match is kept yet.") || p.steps.Visible() || p.tally.box.Visible() {
		t.Errorf("without a match the card says %q with steps %v and a tally %v, want how to begin only", p.say.Text, p.steps.Visible(), p.tally.box.Visible())
	}
	tap(t, p.Box, "Start a match here")
	if !s.Lesson().Match.Begun() || len(p.states) != 1 || !p.tally.box.Visible() {
		t.Errorf("begun %v with %d states, want true and 1", s.Lesson().Match.Begun(), len(p.states))
	}
}

// A click in the list opens that score's play.
func TestMatchListWalks(t *testing.T) {
	p, s := walkOf(t, start())
	for range 3 {
		if err := s.RallyWon(court.Near); err != nil {
			t.Fatal(err)
		}
	}
	p.list.Select(1)
	if play, _ := s.Play(); s.MatchAt() != 1 || play.Situation.Call.String() != "1-0-2" {
		t.Errorf("state 1 is clicked: at %d with %v, want 1 with 1-0-2", s.MatchAt(), play.Situation.Call)
	}
	row := newState()
	p.fill(1, row)
	if got, want := said(row), "2. 1-0-2  Ivo, left, to Tilde"; got != want {
		t.Errorf("row 1 says %q, want %q", got, want)
	}
}

// What is chosen is noted of the rally shown and counted; walking on shows what
// the next one has.
func TestMatchTally(t *testing.T) {
	p, s := walkOf(t, start())
	p.tally.did[court.Near].SetSelectedIndex(int(lesson.Stacked)) // nothing is kept yet: waits for the winner
	if err := s.RallyWon(court.Near); err != nil {
		t.Fatal(err)
	}
	if got := p.tally.did[court.Near].SelectedIndex(); got != int(lesson.FormationUnsaid) {
		t.Errorf("the next rally's formation is %v, want unsaid", lesson.Formation(got))
	}
	s.FirstState()
	p.tally.went.SetSelectedIndex(int(lesson.DownLine))
	want := lesson.MatchRally{Winner: court.Near, Formations: [2]lesson.Formation{lesson.Stacked, 0}, Return: lesson.DownLine, Play: 1}
	if got := s.Lesson().Match.Rallies[0]; got != want {
		t.Errorf("the rally is noted as %+v, want %+v", got, want)
	}
	if got, want := p.counts.Text, "Harbour Lane: stacked 1, won 1."; got != want {
		t.Errorf("the counts say %q, want %q", got, want)
	}
}
