package gesture_test

import (
	"math"
	"reflect"
	"testing"

	"homeside/app/gesture"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// serving is a lesson with a serve from ordinary places.
func serving() lesson.Lesson {
	return lesson.Lesson{Plays: []lesson.Play{{
		Lead:  1.5,
		Shots: []lesson.Shot{{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)}},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(5, -23)}}, {{Place: court.Pt(-5, -23)}},
			{{Place: court.Pt(-5, 24), Facing: 180}}, {{Place: court.Pt(5, 7.5), Facing: 180}},
		},
	}}}
}

func placeOf(s *session.Session, id game.Player) court.Point {
	return s.Current().At(s.Now()).Players[id].Drawn.Place
}

var _ gesture.Editor = (*session.Session)(nil)

// A drag previews every place under the hand and is one step in the end.
func TestDragIsOneStep(t *testing.T) {
	s := session.New(serving(), "", nil)
	s.TogglePlay()
	var d gesture.Drag
	// The pointer takes hold a foot right of the player's place and keeps to it.
	d.Press(s, game.Far2, court.Pt(5, 7.5), court.Pt(6, 7.5))
	if s.Playing() {
		t.Error("the play runs on while a player is held")
	}
	for _, p := range []court.Point{court.Pt(6.5, 8), court.Pt(8, 9), court.Pt(9, 10)} {
		d.Move(p)
		want := p.Sub(court.Pt(1, 0))
		if id, at, ok := d.Active(); !ok || id != game.Far2 || at != want {
			t.Errorf("with the pointer at %v: %v at %v (%v), want far2 at %v", p, id, at, ok, want)
		}
		if got := placeOf(s, game.Far2); got != want || s.Modified() {
			t.Errorf("with the pointer at %v the preview shows %v, modified %v, want %v", p, got, s.Modified(), want)
		}
	}
	d.Release("move Bo")
	if name, _ := s.CanUndo(); name != "move Bo" || placeOf(s, game.Far2) != court.Pt(8, 10) || d.Down() {
		t.Errorf("released: undo %q, at %v, down %v, want the step move Bo to 8, 10", name, placeOf(s, game.Far2), d.Down())
	}
	s.Undo()
	if _, more := s.CanUndo(); more || placeOf(s, game.Far2) != court.Pt(5, 7.5) {
		t.Errorf("one undo leaves %v, more to undo %v, want everything back", placeOf(s, game.Far2), more)
	}
}

// A click moves nobody, nor does a hand that shakes by less than the slack.
func TestClickMovesNobody(t *testing.T) {
	s := session.New(serving(), "", nil)
	var d gesture.Drag
	d.Press(s, game.Near1, court.Pt(5, -23), court.Pt(5, -23))
	d.Move(court.Pt(5+gesture.Slack*0.99, -23))
	if _, _, ok := d.Active(); ok || s.Previewing() {
		t.Error("a hand that shakes moves the player")
	}
	d.Release("move")
	if _, ok := s.CanUndo(); ok || s.Modified() || !reflect.DeepEqual(s.Lesson(), serving()) {
		t.Error("a click left a step")
	}
	d.Press(s, game.Near1, court.Pt(5, -23), court.Pt(5, -23))
	d.Move(court.Pt(5+gesture.Slack, -23))
	if _, _, ok := d.Active(); !ok {
		t.Error("a drag by the slack does not move the player")
	}
	d.Move(court.Pt(5, -23)) // back within the slack: still a drag
	if got := placeOf(s, game.Near1); got != court.Pt(5, -23) {
		t.Errorf("dragged back, near1 is at %v, want 5, -23", got)
	}
}

// Escape puts everything back and leaves nothing behind.
func TestEscapeLeavesNothing(t *testing.T) {
	s := session.New(serving(), "", nil)
	var d gesture.Drag
	d.Press(s, game.Near1, court.Pt(5, -23), court.Pt(5, -23))
	d.Move(court.Pt(0, -30))
	d.Cancel()
	d.Move(court.Pt(0, -35))
	d.Release("move")
	if _, ok := s.CanUndo(); ok || s.Previewing() || s.Modified() || d.Down() || !reflect.DeepEqual(s.Lesson(), serving()) {
		t.Errorf("after Escape: draft %v, modified %v, down %v, want nothing", s.Previewing(), s.Modified(), d.Down())
	}
}

// A press during a drag begins anew: what the first one showed is gone.
func TestPressDuringADrag(t *testing.T) {
	s := session.New(serving(), "", nil)
	var d gesture.Drag
	d.Press(s, game.Near1, court.Pt(5, -23), court.Pt(5, -23))
	d.Move(court.Pt(0, -30))
	d.Press(s, game.Far1, court.Pt(-5, 24), court.Pt(-5, 24))
	d.Release("move")
	if _, ok := s.CanUndo(); ok || s.Previewing() || !reflect.DeepEqual(s.Lesson(), serving()) {
		t.Errorf("a second press left a draft: %v, or a step: %v", s.Previewing(), ok)
	}
}

func TestDragWithoutPress(t *testing.T) {
	var d gesture.Drag
	d.Move(court.Pt(1, 1)) // no editor: must not be asked
	d.Release("x")
	d.Cancel()
	if _, _, ok := d.Active(); ok || d.Down() {
		t.Error("a drag that never began is under way")
	}
}

// Places stay numbers within a lesson's bounds, so that what a drag makes can be saved.
func TestDragStaysWithinBounds(t *testing.T) {
	nan, inf := units.Feet(math.NaN()), units.Feet(math.Inf(1))
	for _, p := range []court.Point{{X: 1e9, Y: -1e9}, {X: -201, Y: 199}, {X: nan, Y: 0}, {X: 0, Y: inf}, {X: inf, Y: -inf}} {
		s := session.New(serving(), "", nil)
		var d gesture.Drag
		d.Press(s, game.Far1, court.Pt(-5, 24), court.Pt(-5, 24))
		d.Move(court.Pt(0, 20))
		d.Move(p)
		d.Release("move")
		if bad := lesson.Validate(s.Lesson()); bad != nil {
			t.Errorf("dragged to %v: %v", p, bad)
		}
	}
}

// While it is dragged, a player at a moment within a run gets a place there.
func TestDragInTheMiddleOfARun(t *testing.T) {
	l := serving()
	l.Plays[0] = l.Plays[0].WithTrack(game.Far2, []lesson.Keyframe{{Place: court.Pt(5, 7.5)}, {At: lesson.Anchor{Offset: 2}, Place: court.Pt(-5, 7.5)}})
	s := session.New(l, "", nil)
	s.Seek(1)
	var d gesture.Drag
	at := placeOf(s, game.Far2)
	d.Press(s, game.Far2, at, at)
	d.Move(at.Add(court.Pt(0, 4)))
	d.Release("move")
	if got := s.Lesson().Plays[0].Tracks[game.Far2]; len(got) != 3 || got[1].Place != court.Pt(0, 11.5) || got[1].At.Offset != 1 {
		t.Errorf("the track is %+v, want a place at 0, 11.5 after a second", got)
	}
}
