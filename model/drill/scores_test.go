package drill

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
)

func scores(t testing.TB, o ScoreOptions) *Scores {
	t.Helper()
	s, err := NewScores(o)
	if err != nil {
		t.Fatalf("NewScores(%+v): %v", o, err)
	}
	return s
}

// The answer keeps to the rules as published (USA Pickleball Official Rulebook
// 2026): a team's starter is on the right at an even score of its own and on the
// left at an odd one (5.B.3), written out here without model/game.
func TestScoreAnswersKeepToParity(t *testing.T) {
	for _, team := range court.Ends {
		s := scores(t, ScoreOptions{Team: team, Seed: 5})
		calls := map[string]bool{}
		for range 300 {
			a := s.Ask()
			starter := a.State.Starter(team)
			want := starter
			if a.State.Score()[team]%2 == 1 {
				want = starter.Partner()
			}
			got := a.Answer()
			if got.Right != want || got.Server.Team() != a.State.Serving() {
				t.Fatalf("%v, %v serves, team %v: %v serves, %v on the right, want %v there", a.State.Call(), a.State.Serving(), team, got.Server, got.Right, want)
			}
			calls[a.State.Call().String()] = true
			s.Next()
		}
		if len(calls) < 60 {
			t.Errorf("300 questions ask only %d calls", len(calls))
		}
	}
}

// What a question tells beside the call decides who serves (USA Pickleball
// Official Rulebook 2026, 5.B, 14.A, written out here without game.Next): after a
// point the same, after the first server's fault the partner and, where sides go
// by parity, after a side out whoever the own score puts on the right.
func TestWhatCameBeforeDecidesTheServer(t *testing.T) {
	for _, f := range []game.Format{game.SideOut, game.RallyParity} {
		s := scores(t, ScoreOptions{Settings: game.Settings{Format: f}, Seed: 11})
		seen := map[Led]int{}
		for range 300 {
			a := s.Ask()
			starter := a.State.Starter(a.State.Serving())
			if a.State.Score()[a.State.Serving()]%2 == 1 {
				starter = starter.Partner()
			}
			want := map[Led]game.Player{Began: game.Near1, Point: a.Before.Server(), Partner: a.Before.Server().Partner(), Over: starter}[a.Led()]
			if got := a.Answer().Server; got != want {
				t.Fatalf("%v: %v after %v, %v: %v serves, want %v", f, a.State.Call(), a.Before.Call(), a.Led(), got, want)
			}
			seen[a.Led()]++
			s.Next()
		}
		if seen[Began] == 0 || seen[Point] == 0 || seen[Over] == 0 || (seen[Partner] > 0) != (f == game.SideOut) {
			t.Errorf("%v: 300 questions were led to by %v", f, seen)
		}
	}
}

// Every state asked is one that a call and the starters allow.
func TestScoresCanBeReached(t *testing.T) {
	for _, f := range []game.Format{game.SideOut, game.RallyParity, game.RallyOwnServe, game.RallyFixed} {
		s := scores(t, ScoreOptions{Settings: game.Settings{Format: f}, Seed: 2})
		for range 200 {
			a := s.Ask()
			if err := a.State.Call().Check(f, 0); err != nil || a.State.Over() {
				t.Fatalf("%v asks %v: %v, over %v", f, a.State.Call(), err, a.State.Over())
			}
			s.Next()
		}
	}
}

// An answer is judged part by part, and only a whole one keeps the streak.
func TestSay(t *testing.T) {
	s := scores(t, ScoreOptions{Seed: 9})
	right := s.Ask().Answer()
	for _, c := range []struct {
		say  ScoreAnswer
		want ScoreVerdict
		run  int
	}{
		{right, ScoreVerdict{true, true}, 1},
		{ScoreAnswer{right.Server, right.Right.Partner()}, ScoreVerdict{Server: true}, 0},
		{ScoreAnswer{right.Server.Partner(), right.Right}, ScoreVerdict{Places: true}, 0},
		{right, ScoreVerdict{true, true}, 1},
	} {
		if got := s.Say(c.say); got != c.want || s.Streak().Run != c.run {
			t.Errorf("Say(%v) = %+v, run %d, want %+v, %d", c.say, got, s.Streak().Run, c.want, c.run)
		}
	}
	if got := s.Streak(); got != (Streak{Asked: 4, Right: 2, Run: 1, Best: 1}) {
		t.Errorf("streak %+v, want 2 of 4 right", got)
	}
}

func TestScoresRefuse(t *testing.T) {
	if _, err := NewScores(ScoreOptions{Settings: game.Settings{To: -3}}); err == nil {
		t.Error("a game to -3 is drilled")
	}
}
