package drilling

import (
	"math"
	"testing"

	"homeside/app/session"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/drill"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/units"
)

func endSide(r *rally.Rally, id game.Player) court.Side {
	return court.SideOf(id.Team(), r.Tracks[id].RunAt(r.To).Place)
}

// In a lesson without plays and without names a stay keeps the pair's sides, a
// switch changes them, and a fake does so for a while: for both pairs, serving and
// receiving.
func TestMovements(t *testing.T) {
	s := session.New(lesson.Lesson{}, "", func() {})
	for _, team := range court.Ends {
		for _, serves := range []bool{false, true} {
			m := newMovements(s, team, serves)
			lead := m.lead()
			for _, what := range drill.Usual() {
				made := m.of(what)
				if made.rally == nil || made.own {
					t.Fatalf("%v, serves %v, %v: nothing was written (%s)", team, serves, what, made.why)
				}
				r := made.rally
				if got := r.Play.Shots[0].By.Team() == team; got != serves {
					t.Errorf("%v, %v: the pair serves: %v, want %v", team, what, got, serves)
				}
				for _, id := range []game.Player{lead, lead.Partner()} {
					began := court.SideOf(team, r.Tracks[id].RunAt(0).Place)
					if changed := endSide(r, id) != began; changed != (what == lesson.Switch) {
						t.Errorf("%v, serves %v, %v: %v changes sides: %v", team, serves, what, id, changed)
					}
				}
				checkFeint(t, r, lead.Partner(), what)
			}
		}
	}
}

// checkFeint looks how far the partner goes aside before the third shot: a stay
// not at all, a fake a step.
func checkFeint(t *testing.T, r *rally.Rally, mate game.Player, what lesson.Meaning) {
	t.Helper()
	if what == lesson.Switch {
		return
	}
	began, most := r.Tracks[mate].RunAt(0).Place, 0.0
	for i := range 100 {
		at := r.Tracks[mate].RunAt(r.TimeAt(lesson.At(lesson.Event{Shot: 1, Moment: lesson.Bounce})) * units.Seconds(i) / 100)
		most = math.Max(most, math.Abs(float64(at.Place.X-began.X)))
	}
	if feint := most > 1 && most < 3; feint != (what == lesson.Fake) || !feint && most > 0.1 {
		t.Errorf("%v: before the return has bounced %v goes %.1f ft aside", what, mate, most)
	}
}

// The play shown is the movement where it has such a signal of the pair's.
func TestPlayShownIsTheMovement(t *testing.T) {
	l := exporttest.BuiltIn(t)
	server, _ := l.Plays[0].Server()
	pair := server.Team().Other()
	l.Plays[0].Cues = []lesson.Cue{{Kind: lesson.Signal, Meaning: lesson.Switch, Giver: game.PlayerOf(pair, 1), Reader: game.PlayerOf(pair, 2)}}
	s := session.New(l, "", func() {})
	m := newMovements(s, pair, false)
	if got := m.of(lesson.Switch); !got.own || got.rally != s.Current() {
		t.Errorf("the play shown is not the movement of its signal: %+v", got)
	}
	for name, other := range map[string]movement{
		"another meaning": m.of(lesson.Stay), "the other pair": newMovements(s, pair.Other(), true).of(lesson.Switch), "the pair serves": newMovements(s, pair, true).of(lesson.Switch),
	} {
		if other.own || other.rally == nil {
			t.Errorf("%s: own %v, written %v", name, other.own, other.rally != nil)
		}
	}
}

// Where nobody swaps a lead and a score can still be found, and a lesson with a
// chair is written or says why not.
func TestMovementsOfAnyLesson(t *testing.T) {
	for _, l := range []lesson.Lesson{lessontest.Sample(), {Scoring: lesson.Scoring{Format: game.RallyFixed}}, {Scoring: lesson.Scoring{Format: game.RallyOwnServe, To: 21}}} {
		m := newMovements(session.New(l, "", func() {}), court.Near, false)
		for _, what := range drill.Usual() {
			if got := m.of(what); (got.rally == nil) != (got.why != "") {
				t.Errorf("%v: rally %v, why %q", what, got.rally != nil, got.why)
			}
		}
	}
}

// Everybody is shown where the score puts them, and nobody runs.
func TestPlacesAt(t *testing.T) {
	l := exporttest.BuiltIn(t)
	for _, f := range game.Formats {
		r, err := drill.NewScores(drill.ScoreOptions{Settings: game.Settings{Format: f}, Seed: 7})
		if err != nil {
			t.Fatal(err)
		}
		for range 40 {
			st := r.Ask().State
			shown, err := placesAt(l, st)
			if err != nil {
				t.Fatalf("%v: %v", st.Call(), err)
			}
			for _, id := range game.Players {
				at := shown.Tracks[id].RunAt(onTheWay).Place
				if court.SideOf(id.Team(), at) != st.SideOf(id) || at != shown.Tracks[id].RunAt(shown.From).Place {
					t.Errorf("%v %v: %v stands at %v, want on the %v", f, st.Call(), id, at, st.SideOf(id))
				}
			}
			if got := shown.Play.Shots[0].By; got != st.Server() || len(shown.Play.Shots) != 1 {
				t.Errorf("%v: %v serves in %d shots, want %v in one", st.Call(), got, len(shown.Play.Shots), st.Server())
			}
			r.Next()
		}
	}
}
