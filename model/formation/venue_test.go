package formation

import (
	"errors"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rules"
	"homeside/model/units"
)

// In a narrow hall everybody who is not after the ball stays on the surface.
func TestNarrowVenues(t *testing.T) {
	for _, room := range []lesson.Venue{{BehindBaseline: 5, BesideSideline: 1.5}, {BehindBaseline: 4, BesideSideline: 3}, {BehindBaseline: 2, BesideSideline: 1}, {BehindBaseline: 21, BesideSideline: 15}} {
		for _, kind := range Kinds {
			for _, serves := range [2]bool{true, false} {
				s := plain(kind, serves).situation(t)
				s.Lesson.Venue = room
				w, err := Write(s, kind)
				if err != nil {
					if !errors.Is(err, ErrRefused) || !Moves(kind) {
						t.Errorf("%v in %+v: %v", kind, room, err)
					}
					continue
				}
				for _, id := range game.Players {
					for _, k := range w.Play.Tracks[id] {
						if !room.Surface().Contains(k.Place) || k.Via != nil && !room.Surface().Contains(*k.Via) {
							t.Errorf("%v, serves %v, in %+v: %v is at %v", kind, serves, room, id, k.Place)
						}
					}
				}
				for _, f := range rules.Check(w.Rally, lessonOf(w)) {
					if f.ID == finding.OffSurface && f.Player != s.State.Receiver() {
						t.Errorf("%v, serves %v, in %+v: %v off the surface at %v", kind, serves, room, f.Player, f.Where)
					}
				}
			}
		}
	}
}

func TestNoRoomToPassBehind(t *testing.T) {
	s := plain(lesson.Switched, true).situation(t)
	for _, c := range []struct {
		room units.Feet
		want bool
	}{{0, true}, {8, true}, {5, true}, {4.5, false}, {2, false}} {
		s.Lesson.Venue.BehindBaseline = c.room
		if _, err := Write(s, lesson.Switched); (err == nil) != c.want {
			t.Errorf("switch on the serve with %v ft behind the baseline: %v, want room: %v", c.room, err, c.want)
		}
	}
}

// Whatever people, ball, air, room and words a lesson has, what is written is a
// sound play, and figures are numbers.
func TestAnyLesson(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lessontest.Lessons().Draw(t, "lesson")
		l.Plays, l.Match = nil, lesson.Match{}
		lead := rapid.SampledFrom(game.Players[:]).Draw(t, "lead")
		side := rapid.SampledFrom([]court.Side{court.Right, court.Left}).Draw(t, "side")
		state, err := StateFor(l.Scoring.Format, lead, rapid.Bool().Draw(t, "serves"), side)
		if err != nil {
			t.Fatal(err)
		}
		s := Situation{
			Lesson: l, State: state, Team: lead.Team(),
			Serve:  rapid.SampledFrom(ServesTo[:]).Draw(t, "serve"),
			Return: rapid.SampledFrom(lesson.ReturnsTo[:]).Draw(t, "return"),
			Third:  rapid.SampledFrom([]ThirdShot{UsualThird, DriveAtRunner}).Draw(t, "third"),
			Lob:    rapid.Bool().Draw(t, "lob"),
		}
		kind := rapid.SampledFrom(Kinds[:]).Draw(t, "kind")
		w, err := Write(s, kind)
		if errors.Is(err, ErrRefused) {
			return
		}
		if err != nil {
			t.Fatalf("Write(%v): %v", kind, err)
		}
		if bad := lesson.Validate(lessonOf(w)); bad != nil {
			t.Fatalf("Write(%v): %v", kind, bad)
		}
		for id, m := range w.Margins {
			if m != m || m < -1e6 || m > 1e6 {
				t.Fatalf("Write(%v): %v has %v s to spare", kind, id, m)
			}
		}
		if _, _, err := w.Tell(TellOptions{}); err != nil {
			t.Fatalf("Tell: %v", err)
		}
	})
}
