package formation

import (
	"fmt"
	"testing"

	"homeside/model/advice"
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rules"
	"homeside/model/units"
)

// Every kind, court, player, hand, preset pace, serve and format.
func TestGrid(t *testing.T) {
	for _, pace := range movement.Presets {
		for _, format := range []game.Format{game.SideOut, game.RallyParity} {
			t.Run(fmt.Sprintf("%s %v", pace.Key, format), func(t *testing.T) {
				t.Parallel()
				n := 0
				eachSpot(pace, format, func(s spot) {
					n++
					checkSpot(t, s)
				})
				if want := len(Kinds) * 2 * 2 * 2 * 4 * 3; n != want {
					t.Errorf("%d plays, want %d", n, want)
				}
			})
		}
	}
}

func eachSpot(pace movement.Preset, format game.Format, see func(spot)) {
	for _, kind := range Kinds {
		for _, lead := range [2]game.Player{game.Near1, game.Far2} {
			for _, side := range [2]court.Side{court.Right, court.Left} {
				for i := range 4 {
					for _, serve := range ServesTo {
						for _, serves := range [2]bool{true, false} {
							see(spot{kind, serves, lead, side, [2]lesson.Hand{hands[i&1], hands[i>>1]}, pace, serve, format})
						}
					}
				}
			}
		}
	}
}

func checkSpot(t *testing.T, s spot) {
	t.Helper()
	w := s.write(t)
	l := lessonOf(w)
	if p := lesson.Validate(l); p != nil {
		t.Fatalf("%+v: %v", s, p)
	}
	for _, f := range rules.Check(w.Rally, l) {
		if f.Severity <= finding.Caution || f.ID == finding.PartnerInside {
			t.Errorf("%+v: %v about %v at %.2f s, %v, %v", s, f.ID, f.Player, f.When, f.Where, f.Args)
		}
	}
	checkDeadlines(t, s, w)
	checkSides(t, s, w)
	if s.side == court.Right && s.format == game.SideOut { // the format moves nobody
		checkMirror(t, s, w)
	}
}

// As run the pair meets its deadlines, or the play says what it would take.
func checkDeadlines(t *testing.T, s spot, w Written) {
	t.Helper()
	late := false
	for _, f := range advice.Check(w.Rally) {
		if f.Severity == finding.Late && f.Someone && f.Player.Team() == w.Situation.Team {
			late = true
		}
		if f.ID == finding.CloseCrossing || f.ID == finding.CrossingOrder || f.ID == finding.RunsBackward {
			t.Errorf("%+v: %v at %v, %v", s, f.ID, f.Where, f.Args)
		}
	}
	if told := w.Answer.Verdict == TooLate; told != late || told == w.InTime() {
		t.Errorf("%+v: somebody is late: %v; %v, margins %v", s, late, w.Answer, w.Margins)
	}
	if a := w.Answer; a.Verdict == TooLate && a.Needed != 0 && a.Needed <= MostApex || a.Verdict == Raised && a.Apex > MostApex {
		t.Errorf("%+v: %+v", s, a)
	}
}

// The pair ends on the sides that the kind promises.
func checkSides(t *testing.T, s spot, w Written) {
	t.Helper()
	crossed := Moves(s.kind) || s.kind == lesson.Poached && !s.serves
	for _, id := range [2]game.Player{s.lead, s.lead.Partner()} {
		if s.kind == lesson.Poached && w.Answer.Verdict == TooLate {
			continue // who does not get to the ball does not get any farther
		}
		if got := w.Side(id) != w.Situation.State.SideOf(id); got != crossed {
			t.Errorf("%+v: %v ends at %v, has changed sides: %v", s, id, w.End(id), got)
		}
	}
}

// mirrorGrain is how exactly flights are solved, in feet.
const mirrorGrain = 1e-5

// The pair mirrored from left to right gets the play mirrored from left to right.
func checkMirror(t *testing.T, s spot, w Written) {
	t.Helper()
	m := s
	m.side = court.Left
	situation := m.situation(t)
	for _, id := range game.Players {
		p := s.people().Player(id)
		p.Hand = other(p.Hand)
		situation.Lesson = situation.Lesson.WithPlayer(id, p)
	}
	got, err := Write(situation, m.kind)
	if err != nil {
		t.Fatalf("Write(%+v): %v", m, err)
	}
	want := w.Play.Mirrored()
	for _, who := range game.Players {
		id := samePart(w, got, who)
		if len(got.Play.Tracks[id.got]) != len(want.Tracks[id.want]) {
			t.Fatalf("%+v: %v has %d places, its mirror %d", s, id, len(want.Tracks[id.want]), len(got.Play.Tracks[id.got]))
		}
		for i, k := range got.Play.Tracks[id.got] {
			if o := want.Tracks[id.want][i]; k.Place.Distance(o.Place) > mirrorGrain || k.At != o.At || (k.Via == nil) != (o.Via == nil) {
				t.Errorf("%+v, %v, place %d: mirrored %+v, got %+v", s, id, i, o, k)
			}
		}
	}
	for i, shot := range got.Play.Shots {
		o := want.Shots[i]
		if shot.Aim.Distance(o.Aim) > mirrorGrain || shot.Side != o.Side || shot.Intent != o.Intent {
			t.Errorf("%+v, shot %d: mirrored %+v, got %+v", s, i, o, shot)
		}
	}
	checkMirroredRuns(t, s, w, got)
}

type part struct{ want, got game.Player }

// samePart is who plays a player's part in the mirrored play: there is another
// server or receiver at that score.
func samePart(w, m Written, id game.Player) part {
	p := part{id, id}
	a, b := w.Situation.State, m.Situation.State
	if (id == a.Server() || id == a.Receiver()) != (id == b.Server() || id == b.Receiver()) {
		p.got = id.Partner()
	}
	return p
}

func checkMirroredRuns(t *testing.T, s spot, w, m Written) {
	t.Helper()
	for i := range 6 {
		at := w.Rally.To * units.Seconds(i) / 6
		for _, id := range game.Players {
			a, b := w.Rally.Tracks[id].RunAt(at).Place, m.Rally.Tracks[samePart(w, m, id).got].RunAt(at).Place
			if court.Pt(-a.X, a.Y).Distance(b) > 1e-3 {
				t.Errorf("%+v: %v at %.2f s is at %v, mirrored at %v", s, id, at, a, b)
			}
		}
	}
}
