package lesson_test

import (
	"errors"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

func won(winners string) (m lesson.Match) {
	for i, w := range winners {
		m = m.WithRally(i, lesson.MatchRally{Winner: map[rune]court.End{'n': court.Near, 'f': court.Far}[w]})
	}
	return m
}

// The ladder of a published rules primer (4-3-1 lost, 4-3-2 won, 5-3-2 lost:
// side out at 3-5), kept from the middle of the game on.
func TestGameFromAnOpening(t *testing.T) {
	l := lesson.Lesson{Match: won("fnf")}
	l.Match.From = &lesson.Opening{Call: game.Call{Serving: 4, Receiving: 3, Server: 1}, Server: game.Near1}
	m, err := l.Game()
	if err != nil {
		t.Fatalf("Game() = %v", err)
	}
	want := []string{"4-3-1", "4-3-2", "5-3-2", "3-5-1"}
	for i, s := range m.States() {
		if got := s.Call().String(); got != want[i] {
			t.Errorf("state %d has call %s, want %s", i, got, want[i])
		}
	}
}

// Without an opening the match is the replay of its winners.
func TestGameIsTheReplay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		winners := rapid.StringMatching(`[nf]{0,60}`).Draw(t, "winners")
		l := lesson.Lesson{Match: won(winners)}
		l.Scoring.Format = rapid.SampledFrom(game.Formats[:]).Draw(t, "format")
		l.Match.First = new(rapid.SampledFrom(court.Ends[:]).Draw(t, "first"))
		l.Teams[court.Far].Starter = rapid.IntRange(0, 2).Draw(t, "starter")
		if got := l.Match.Winners(); got != winners {
			t.Fatalf("Winners() = %q, want %q", got, winners)
		}
		got, err := l.Game()
		if err != nil {
			t.Fatalf("Game() = %v", err)
		}
		want, err := game.Replay(game.Settings{Format: l.Scoring.Format, First: *l.Match.First, Starters: l.Starters()}, winners)
		if err != nil || got.State() != want.State() || got.Rallies() != want.Rallies() {
			t.Fatalf("Game() ends at %v, want %v (%v)", got.State().Call(), want.State().Call(), err)
		}
	})
}

func TestGameRefusesWhatNoGameComesTo(t *testing.T) {
	for _, c := range []struct {
		from lesson.Opening
		want error
	}{
		{lesson.Opening{Call: game.Call{Serving: 12, Receiving: 3, Server: 1}}, game.ErrImpossible},
		{lesson.Opening{Call: game.Call{Serving: 0, Receiving: 3, Server: 1}, Server: game.Near2}, lesson.ErrNoServe}, // facts: 0-n-1 is the starter's
	} {
		l := lesson.Lesson{Match: lesson.Match{From: &c.from}}
		if _, err := l.Game(); !errors.Is(err, c.want) {
			t.Errorf("Game() from %v = %v, want %v", c.from.Call, err, c.want)
		}
	}
}

func TestMatchIsAValue(t *testing.T) {
	old := won("nf")
	changed := old.WithRally(0, lesson.MatchRally{Winner: court.Far}).UpTo(1).WithRally(1, lesson.MatchRally{Return: lesson.Short})
	if got := old.Winners(); got != "nf" || old.Rallies[1].Return != lesson.ReturnUnsaid {
		t.Errorf("the old match became %+v, want nf", old)
	}
	if got := changed.Winners(); got != "fn" {
		t.Errorf("the changed match is %q, want fn", got)
	}
}

func TestByFormation(t *testing.T) {
	m := lessontest.Sample().Match
	for _, c := range []struct {
		team court.End
		f    lesson.Formation
		want lesson.Count
	}{
		{court.Far, lesson.Stacked, lesson.Count{Rallies: 1, Won: 1}}, {court.Far, lesson.Ordinary, lesson.Count{Rallies: 1}},
		{court.Near, lesson.Poached, lesson.Count{Rallies: 1, Won: 1}}, {court.Near, lesson.Stacked, lesson.Count{}},
	} {
		if got := m.ByFormation(c.team)[c.f]; got != c.want {
			t.Errorf("ByFormation(%v)[%v] = %+v, want %+v", c.team, c.f, got, c.want)
		}
	}
}

func TestFits(t *testing.T) {
	start, err := game.Settings{}.Start()
	if err != nil {
		t.Fatal(err)
	}
	fits := func(call game.Call, serving court.End, by game.Player) bool {
		p := lesson.Play{Situation: lesson.Situation{Call: call, Serving: serving}, Shots: []lesson.Shot{{By: by}}}
		return p.Fits(start)
	}
	for _, c := range []struct {
		call    game.Call
		serving court.End
		by      game.Player
		want    bool
	}{
		{game.Call{Server: 2}, court.Near, game.Near1, true}, {game.Call{Server: 2}, court.Near, game.Near2, false},
		{game.Call{Server: 1}, court.Near, game.Near1, false}, {game.Call{Server: 2}, court.Far, game.Far1, false},
	} {
		if got := fits(c.call, c.serving, c.by); got != c.want {
			t.Errorf("a play at %v served by %v fits 0-0-2 of near1: %v, want %v", c.call, c.by, got, c.want)
		}
	}
	if (lesson.Play{}).Fits(start) {
		t.Error("a play without a serve fits, want not")
	}
}

func TestAtServe(t *testing.T) {
	p := lessontest.SamplePlay()
	if got, want := p.AtServe(game.Far1).Place, court.Pt(1, 22.5); got != want {
		t.Errorf("AtServe(far1) = %v, want %v", got, want)
	}
	p.Tracks[game.Far1] = append([]lesson.Keyframe{{At: lesson.Anchor{Offset: -1}, Place: court.Pt(9, 25)}}, p.Tracks[game.Far1]...)
	if got, want := p.AtServe(game.Far1).Place, court.Pt(1, 22.5); got != want {
		t.Errorf("AtServe(far1) with an earlier place = %v, want %v", got, want)
	}
}
