package gesture_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"homeside/app/gesture"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// randomPart is any part, most of them there.
func randomPart(d *rand.Rand) edit.Part {
	return edit.Part{Kind: edit.PartKind(d.IntN(int(edit.TipPart) + 1)), Player: game.Players[d.IntN(4)], Index: d.IntN(6) - 2}
}

// Whatever hands do, one after the other, in the middle of one another, cancelled
// or not, at whatever moment: the lesson stays sound, nothing stays under way,
// each is one step at most, and undoing them all leaves what was there.
func TestRandomGestures(t *testing.T) {
	d := rand.New(rand.NewPCG(7, 7))
	s := session.New(serving(), "", nil)
	h := gesture.Hand{Snapping: gesture.Snapping{Lines: true, HalfFeet: true, Mirror: true, Reach: 0.5}}
	at := func() court.Point {
		return court.Pt(units.Feet(40*d.Float64()-20), units.Feet(60*d.Float64()-30))
	}
	steps := 0
	for i := range 400 {
		s.Seek(units.Seconds(4*d.Float64() - 1))
		before := s.Lesson()
		k := gesture.Keys{Add: d.IntN(4) == 0, Free: d.IntN(3) == 0}
		if d.IntN(8) == 0 {
			h.Place(s, lesson.Mark{Kind: lesson.MarkKinds[d.IntN(len(lesson.MarkKinds))], Span: lesson.Always(), Text: "x"}, at(), k)
		} else {
			h.Press(s, randomPart(d), at(), k)
		}
		for range d.IntN(4) {
			h.Move(at(), k)
		}
		cancelled := d.IntN(5) == 0
		if cancelled {
			h.Cancel()
		}
		h.Release()
		changed := !reflect.DeepEqual(before, s.Lesson())
		switch {
		case h.Down() || s.Previewing():
			t.Fatalf("gesture %d is still under way after it was let go", i)
		case cancelled && changed:
			t.Fatalf("gesture %d was cancelled and changed the lesson", i)
		case lesson.Validate(s.Lesson()) != nil:
			t.Fatalf("gesture %d leaves a lesson out of bounds: %v", i, lesson.Validate(s.Lesson()))
		}
		if changed {
			steps++
			s.Undo()
			if !reflect.DeepEqual(s.Lesson(), before) {
				t.Fatalf("gesture %d is not undone by one undo", i)
			}
			s.Redo()
		}
	}
	if steps < 100 {
		t.Errorf("of 400 gestures %d changed the lesson, want at least 100: has the test lost its way?", steps)
	}
	for s.Modified() {
		s.Undo()
	}
	if !reflect.DeepEqual(s.Lesson(), serving()) {
		t.Error("undoing all gestures does not give what was there")
	}
}
