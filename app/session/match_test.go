package session_test

import (
	"errors"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
)

// served is a lesson with one ordinary serve at the start of a game.
func served(f game.Format) lesson.Lesson {
	p := edit.OrdinaryPlay()
	p.Situation.Call = game.StartCall(f)
	return lesson.Lesson{Scoring: lesson.Scoring{Format: f}, Plays: []lesson.Play{p}}
}

// elevenNine is the winners of a game that the near team, serving first, wins
// 11-9: the teams score in turn up to 9-9.
func elevenNine(t *testing.T, f game.Format) (winners []court.End, states []game.State) {
	t.Helper()
	s, err := game.Settings{Format: f}.Start()
	if err != nil {
		t.Fatal(err)
	}
	states = append(states, s)
	for point := range 20 {
		team := court.End(point % 2)
		if point == 19 {
			team = court.Near
		}
		for before := s.Score()[team]; s.Score()[team] == before; {
			s = s.Next(team)
			winners, states = append(winners, team), append(states, s)
		}
	}
	if s.Score() != [2]int{11, 9} || !s.Over() {
		t.Fatalf("the game ends at %v, want 11-9", s.Score())
	}
	return winners, states
}

// shows checks that the session is at a state with a play that is served so.
func shows(t *testing.T, s *session.Session, what string, want game.State) {
	t.Helper()
	if got := s.MatchState(); got != want {
		t.Errorf("%s: the walk is at %v of %v, want %v of %v", what, got.Call(), got.Server(), want.Call(), want.Server())
	}
	p, _ := s.Play()
	if !want.Over() && (!p.Fits(want) || court.SideOf(want.Serving(), p.AtServe(want.Server()).Place) != want.From()) {
		t.Errorf("%s: play %q is shown, want one of %v served by %v from the %v", what, p.Title, want.Call(), want.Server(), want.From())
	}
	if !s.InMatch() {
		t.Errorf("%s: InMatch() = false, want true", what)
	}
	for _, f := range s.Findings() {
		if f.Severity == finding.Fault {
			t.Errorf("%s: at %v the rules find %s, want no fault", what, want.Call(), f.ID)
		}
	}
}

// A whole game to 11-9, rally by rally and walked through, agrees with the state
// machine in every format.
func TestMatchToElevenNine(t *testing.T) {
	for _, f := range game.Formats {
		winners, states := elevenNine(t, f)
		s := session.New(served(f), "", nil)
		for i, w := range winners {
			if err := s.RallyWon(w); err != nil {
				t.Fatalf("%v: RallyWon(%v) of rally %d = %v", f, w, i+1, err)
			}
			shows(t, s, f.String()+" won", states[i+1])
		}
		if got := s.RallyWon(court.Near); !errors.Is(got, session.ErrGameOver) {
			t.Errorf("%v: RallyWon after the end = %v, want %v", f, got, session.ErrGameOver)
		}
		if got := lesson.Validate(s.Lesson()); got != nil {
			t.Errorf("%v: Validate after the game = %v, want nil", f, got)
		}
		walkThrough(t, s, states)
	}
}

func walkThrough(t *testing.T, s *session.Session, states []game.State) {
	t.Helper()
	step, _ := s.CanUndo()
	s.FirstState()
	for _, want := range states {
		shows(t, s, "walked on", want)
		s.NextState()
	}
	for i := len(states) - 2; i >= 0; i-- {
		s.PreviousState()
		shows(t, s, "walked back", states[i])
	}
	s.LastState()
	shows(t, s, "walked to the end", states[len(states)-1])
	if now, _ := s.CanUndo(); now != step {
		t.Errorf("walking made the step %q, want none", now)
	}
}

func TestRallyWonIsOneStep(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	must(t, s.RallyWon(court.Near))
	if got := len(s.Lesson().Plays); got != 2 {
		t.Fatalf("after a rally the lesson has %d plays, want the carried one too", got)
	}
	s.Undo()
	if l := s.Lesson(); len(l.Plays) != 1 || l.Match.Begun() || s.PlayIndex() != 0 || s.MatchAt() != 0 {
		t.Errorf("after Undo: %d plays, match %+v, play %d, state %d; want the first lesson at its play", len(l.Plays), l.Match, s.PlayIndex(), s.MatchAt())
	}
	s.Redo()
	if s.MatchState().Call().String() != "1-0-2" || s.PlayIndex() != 1 {
		t.Errorf("after Redo the walk is at %v with play %d, want 1-0-2 with play 1", s.MatchState().Call(), s.PlayIndex())
	}
}

// The same score twice opens the same play.
func TestAPlayIsUsedAgain(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	for range 3 { // 0-0-1 far, 0-0-2 far, 0-0-1 near
		must(t, s.RallyWon(s.MatchState().Serving().Other()))
	}
	for range 4 { // round once more: 0-0-2 near, then the same serves again
		must(t, s.RallyWon(s.MatchState().Serving().Other()))
	}
	if got := len(s.Lesson().Plays); got != 5 { // with the first of near1
		t.Errorf("after two rounds without a point there are %d plays, want 5", got)
	}
}

// A match can begin in the middle of a game: at 4-7-2 the partner of the one who
// started serves from the left (check vector: both servers agree with 4-7-2).
func TestMatchBeginsAtThePlayShown(t *testing.T) {
	l := served(game.SideOut)
	l.Plays[0] = edit.Renamed(l.Plays[0], [4]game.Player{game.Near2, game.Near1, game.Far2, game.Far1})
	l.Plays[0].Situation.Call = game.Call{Serving: 4, Receiving: 7, Server: 2}
	s := session.New(l, "", nil)
	must(t, s.RallyWon(court.Near))
	want := lesson.Opening{Call: game.Call{Serving: 4, Receiving: 7, Server: 2}, Server: game.Near2}
	if got := s.Lesson().Match.From; got == nil || *got != want {
		t.Errorf("the match begins at %+v, want %+v", got, want)
	}
	if st := s.MatchState(); st.Call().String() != "5-7-2" || st.Server() != game.Near2 || st.From() != court.Right {
		t.Errorf("the walk is at %v, %v from the %v, want 5-7-2, near2 from the right", st.Call(), st.Server(), st.From())
	}
}

func TestRallyWonRefuses(t *testing.T) {
	impossible := served(game.SideOut)
	impossible.Plays[0].Situation.Call = game.Call{Serving: 12, Receiving: 3, Server: 1}
	for _, c := range []struct {
		name  string
		start func() *session.Session
		want  error
	}{
		{"no play", func() *session.Session { return session.New(lesson.Lesson{}, "", nil) }, session.ErrNoPlay},
		{"impossible call", func() *session.Session { return session.New(impossible, "", nil) }, game.ErrImpossible},
		{"another play", func() *session.Session {
			l := served(game.SideOut)
			other := l.Plays[0]
			other.Situation.Call = game.Call{Serving: 9, Receiving: 9, Server: 1}
			s := session.New(edit.AddPlay(l, other), "", nil)
			must(t, s.RallyWon(court.Near))
			s.SelectPlay(1)
			return s
		}, session.ErrOutOfMatch},
	} {
		s := c.start()
		before, _ := s.CanUndo()
		if got := s.RallyWon(court.Near); !errors.Is(got, c.want) {
			t.Errorf("%s: RallyWon = %v, want %v", c.name, got, c.want)
		}
		if after, _ := s.CanUndo(); after != before {
			t.Errorf("%s: a refused rally made the step %q", c.name, after)
		}
	}
}

// In the middle of a match the winner of that rally is put right; the later
// rallies stay won as they were.
func TestAPastRallyIsPutRight(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	for _, w := range []court.End{court.Near, court.Near, court.Far} {
		must(t, s.RallyWon(w))
	}
	s.ShowState(1)
	must(t, s.RallyWon(court.Near)) // as it was: only walks on
	if name, _ := s.CanUndo(); s.MatchAt() != 2 || s.Lesson().Match.Winners() != "nnf" {
		t.Errorf("the same winner: state %d, winners %s after %q, want 2 and nnf", s.MatchAt(), s.Lesson().Match.Winners(), name)
	}
	s.ShowState(1)
	must(t, s.RallyWon(court.Far))
	if got := s.Lesson().Match.Winners(); got != "nff" {
		t.Errorf("put right, the winners are %s, want nff", got)
	}
	if got := s.MatchState().Call().String(); got != "0-1-1" || s.MatchAt() != 2 {
		t.Errorf("put right, the walk is at state %d, %s, want 2, 0-1-1", s.MatchAt(), got)
	}
}

func TestTakeBackRally(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	must(t, s.RallyWon(court.Near))
	must(t, s.RallyWon(court.Far))
	s.TakeBackRally()
	if got := s.Lesson().Match.Winners(); got != "n" || s.MatchState().Call().String() != "1-0-2" || s.PlayIndex() != 1 {
		t.Errorf("taken back: winners %s at %v, play %d, want n at 1-0-2, play 1", got, s.MatchState().Call(), s.PlayIndex())
	}
	s.Undo()
	if got := s.Lesson().Match.Winners(); got != "nf" || s.MatchAt() != 2 {
		t.Errorf("undone: winners %s, state %d, want nf, 2", got, s.MatchAt())
	}
}

// A state whose play is gone is offered one.
func TestDrawState(t *testing.T) {
	l := served(game.SideOut)
	l.Match.Rallies = []lesson.MatchRally{{Winner: court.Near}, {Winner: court.Near}}
	s := session.New(l, "", nil)
	s.ShowState(1)
	if s.InMatch() || !s.OutOfMatch() {
		t.Fatalf("InMatch() = %v at a state without a play, want false", s.InMatch())
	}
	s.DrawState()
	if !s.InMatch() || s.PlayIndex() != 1 || s.MatchAt() != 1 {
		t.Errorf("drawn: in the match %v, play %d, state %d, want true, 1, 1", s.InMatch(), s.PlayIndex(), s.MatchAt())
	}
	s.DrawState()
	if got := len(s.Lesson().Plays); got != 2 {
		t.Errorf("drawn twice: %d plays, want 2", got)
	}
}

func TestTally(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	s.NoteFormation(court.Near, lesson.Stacked) // before the rally is played
	must(t, s.RallyWon(court.Near))
	s.NoteReturn(lesson.Short) // of the next one
	s.ShowState(0)
	s.NoteReturn(lesson.ToMover)
	want := lesson.MatchRally{Winner: court.Near, Formations: [2]lesson.Formation{lesson.Stacked, 0}, Return: lesson.ToMover, Play: 1}
	if got := s.Lesson().Match.Rallies[0]; got != want {
		t.Errorf("the rally is noted as %+v, want %+v", got, want)
	}
	if got, ok := s.Tally(); !ok || got != want {
		t.Errorf("Tally() = %+v, %v, want %+v", got, ok, want)
	}
	if name, _ := s.CanUndo(); name != "note a rally" {
		t.Errorf("the last step is %q, want the note", name)
	}
}

// Selecting a play of the match walks to its score.
func TestSelectingAPlayWalks(t *testing.T) {
	s := session.New(served(game.SideOut), "", nil)
	must(t, s.RallyWon(court.Near))
	must(t, s.RallyWon(court.Near))
	s.SelectPlay(1)
	if s.MatchAt() != 1 || !s.InMatch() {
		t.Errorf("the second play is selected: state %d, in the match %v, want 1, true", s.MatchAt(), s.InMatch())
	}
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}
