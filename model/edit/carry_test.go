package edit_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// states draws a state that somebody serves at.
func states(t *rapid.T) game.State {
	set := game.Settings{
		Format: rapid.SampledFrom(game.Formats[:]).Draw(t, "format"), First: rapid.SampledFrom(court.Ends[:]).Draw(t, "first"),
		Starters: [2]game.Player{game.PlayerOf(court.Near, rapid.IntRange(1, 2).Draw(t, "near")), game.PlayerOf(court.Far, rapid.IntRange(1, 2).Draw(t, "far"))},
	}
	m, err := game.Replay(set, rapid.StringMatching(`[nf]{0,40}`).Draw(t, "winners"))
	if err != nil {
		t.Fatalf("Replay = %v", err)
	}
	for m.State().Over() {
		m = m.Undo()
	}
	return m.State()
}

// Whatever play is carried to whatever score: the correct server serves from
// the correct court (USA Pickleball Official Rulebook 2026, 5.B), the correct
// receiver stands diagonally across and returns, and the lesson stays sound.
func TestCarryPutsEverybodyRight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, s := lessontest.Lessons().Draw(t, "lesson"), states(t)
		p := edit.Carry(l, rapid.IntRange(-1, len(l.Plays)).Draw(t, "shown"), s)
		if got := lesson.Validate(edit.AddPlay(l, p)); got != nil {
			t.Fatalf("Validate of the lesson with Carry(%v) = %v, want nil", s.Call(), got)
		}
		if !p.Fits(s) {
			t.Fatalf("Carry(%v) is %+v, want a play that fits", s.Call(), p.Situation)
		}
		for _, id := range []game.Player{s.Server(), s.Receiver()} {
			if got := court.SideOf(id.Team(), p.AtServe(id).Place); got != s.From() {
				t.Fatalf("Carry(%v): %v stands on the %v, want the %v", s.Call(), id, got, s.From())
			}
		}
		if len(p.Shots) > 1 && p.Shots[1].By != s.Receiver() {
			t.Fatalf("Carry(%v): %v returns, want %v", s.Call(), p.Shots[1].By, s.Receiver())
		}
	})
}

func TestCarryLeavesTheOldLesson(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, s := lessontest.Sample(), states(t)
		edit.AddPlay(l, edit.Carry(l, 0, s))
		if want := lessontest.Sample(); !reflect.DeepEqual(l, want) {
			t.Fatalf("Carry(%v) changed the lesson to %+v", s.Call(), l)
		}
	})
}

func TestCarryOfAGameThatIsOver(t *testing.T) {
	m, err := game.Replay(game.Settings{}, "nnnnnnnnnnn")
	if err != nil {
		t.Fatal(err)
	}
	if got := edit.Carry(lessontest.Sample(), 0, m.State()); len(got.Shots) != 0 {
		t.Errorf("Carry(11-0) = %+v, want no serve", got)
	}
}

// pairs is a lesson with an ordinary serve and a stacked one, both by near1 from
// the right; near1 wants the left and near2 the right.
func pairs() lesson.Lesson {
	l := lesson.Lesson{Plays: []lesson.Play{edit.OrdinaryPlay(), stacked()}}
	l.Teams[court.Near].Players[0].Serving = lesson.WantLeft
	l.Teams[court.Near].Players[1].Serving = lesson.WantRight
	return l
}

func stacked() lesson.Play {
	p := edit.OrdinaryPlay()
	p.Title = "stacked"
	bounce := lesson.At(lesson.Event{Shot: 1, Moment: lesson.Bounce})
	p.Tracks[game.Near1] = []lesson.Keyframe{{Place: court.Pt(1.6, -22.9)}, {At: bounce, Place: court.Pt(-5, -23)}}
	p.Tracks[game.Near2] = []lesson.Keyframe{{Place: court.Pt(7.5, -23.2)}, {At: bounce, Place: court.Pt(5, -23)}}
	return p
}

// A pair keeps the sides it wants whatever the score: it stacks when the score
// puts the server on the wrong side, and serves from ordinary places otherwise.
func TestCarryKeepsTheSidesThatAreWanted(t *testing.T) {
	for _, c := range []struct {
		winners string
		server  game.Player
		from    court.Side
		partner court.Side // where the server's partner stands
	}{
		{"", game.Near1, court.Right, court.Right},     // 0-0-2: stacked
		{"n", game.Near1, court.Left, court.Right},     // 1-0-2: ordinary, mirrored
		{"fnn", game.Near1, court.Right, court.Right},  // 0-0-1: stacked
		{"fnnf", game.Near2, court.Left, court.Left},   // 0-0-2: stacked, mirrored
		{"fnnfn", game.Near2, court.Right, court.Left}, // 1-0-2: ordinary
	} {
		m, err := game.Replay(game.Settings{}, c.winners)
		if err != nil {
			t.Fatal(err)
		}
		p := edit.Carry(pairs(), 0, m.State())
		by, _ := p.Server()
		from := court.SideOf(court.Near, p.AtServe(by).Place)
		partner := court.SideOf(court.Near, p.AtServe(by.Partner()).Place)
		if by != c.server || from != c.from || partner != c.partner {
			t.Errorf("Carry(%v): %v serves from the %v, the partner on the %v; want %v, %v, %v", m.State().Call(), by, from, partner, c.server, c.from, c.partner)
		}
		for id, want := range map[game.Player]court.Side{game.Near1: court.Left, game.Near2: court.Right} {
			track := p.Tracks[id]
			if got := court.SideOf(court.Near, track[len(track)-1].Place); got != want {
				t.Errorf("Carry(%v): %v ends on the %v, want the %v", m.State().Call(), id, got, want)
			}
		}
	}
}

// Captions and marks speak of the old score; signals do not.
func TestCarryLeavesWordsBehind(t *testing.T) {
	m, err := game.Replay(game.Settings{First: court.Far}, "")
	if err != nil {
		t.Fatal(err)
	}
	l := lessontest.Sample()
	l.Teams = [2]lesson.Team{}
	p := edit.Carry(l, 0, m.State())
	if len(p.Marks) != 0 || len(p.Cues) != 1 || p.Cues[0].Kind != lesson.Signal || p.Notes != "" {
		t.Errorf("Carry keeps marks %v, cues %v, notes %q; want the signal only", p.Marks, p.Cues, p.Notes)
	}
	if got, want := p.Title, "0-0-2: far1 serves from the right"; got != want {
		t.Errorf("Carry is called %q, want %q", got, want)
	}
}
