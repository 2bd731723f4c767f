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
	"homeside/model/rally"
	"homeside/model/units"
)

var _ gesture.TimeEditor = (*session.Session)(nil)

// running is a lesson in which far2 crosses in two seconds.
func running() lesson.Lesson {
	l := serveOnly()
	l.Plays[0] = l.Plays[0].WithTrack(game.Far2, []lesson.Keyframe{
		{Place: court.Pt(5, 7.5)}, {At: lesson.Anchor{Offset: 2}, Place: court.Pt(-5, 7.5)},
	})
	return l
}

func serveOnly() lesson.Lesson {
	return lesson.Lesson{Plays: []lesson.Play{{
		Lead:  1.5,
		Shots: []lesson.Shot{{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)}},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(5, -23)}}, {{Place: court.Pt(-5, -23)}},
			{{Place: court.Pt(-5, 24), Facing: 180}}, {{Place: court.Pt(5, 7.5), Facing: 180}},
		},
	}}}
}

var arrival = rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 1}

func hold(t *testing.T, s *session.Session) session.Retime {
	t.Helper()
	m, err := s.Retime(arrival)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func arrives(s *session.Session) units.Seconds {
	e, _ := s.Current().EntryOf(arrival)
	return e.From
}

const slack units.Seconds = 0.02

// A drag in time previews under the hand, keeps its distance from the pointer, and
// is one step in the end.
func TestTimingIsOneStep(t *testing.T) {
	s := session.New(running(), "", nil)
	s.TogglePlay()
	var d gesture.Timing
	d.Press(s, hold(t, s), 2.05) // a little beside the thing
	if s.Playing() {
		t.Error("the play runs on while a time is held")
	}
	for _, to := range []units.Seconds{2.15, 1.75, 1.5} {
		d.Move(to, 0, slack)
		want := to - 0.05
		_, now, ok := d.Active()
		if !ok || math.Abs(float64(now.At-want)) > 0.0051 || math.Abs(float64(arrives(s)-want)) > 0.0051 || s.Modified() {
			t.Errorf("pointer at %v: held at %v (%v), shown at %v, modified %v, want %v", to, now.At, ok, arrives(s), s.Modified(), want)
		}
	}
	if !d.Release("far2 later") {
		t.Error("Release says that nothing moved")
	}
	if name, _ := s.CanUndo(); name != "far2 later" || d.Down() {
		t.Errorf("released: undo %q, down %v", name, d.Down())
	}
	s.Undo()
	if _, more := s.CanUndo(); more || arrives(s) != 2 {
		t.Errorf("one undo leaves %v, more to undo %v", arrives(s), more)
	}
}

// Within reach of an event the thing is drawn to it; a reach of 0 suspends that.
func TestTimingSnaps(t *testing.T) {
	s := session.New(running(), "", nil)
	bounce := lesson.Event{Moment: lesson.Bounce}
	at, _ := s.Current().TimeOf(bounce)
	var d gesture.Timing
	d.Press(s, hold(t, s), 2)
	for _, c := range []struct {
		reach units.Seconds
		exact bool
	}{{0.1, true}, {0, false}} {
		d.Move(at+0.04, c.reach, slack)
		if _, now, _ := d.Active(); now.Exact != c.exact || c.exact && now.On != lesson.At(bounce) {
			t.Errorf("0.04 s beside the bounce with reach %v: on %+v, exact %v", c.reach, now.On, now.Exact)
		}
	}
}

// A click, a shaking hand, Escape and a second press leave nothing behind.
func TestTimingLeavesNothing(t *testing.T) {
	for name, do := range map[string]func(*gesture.Timing, *session.Session){
		"a click":        func(*gesture.Timing, *session.Session) {},
		"a shaking hand": func(d *gesture.Timing, _ *session.Session) { d.Move(2+slack/2, 0, slack) },
		"Escape":         func(d *gesture.Timing, _ *session.Session) { d.Move(1, 0, slack); d.Cancel(); d.Move(0.5, 0, slack) },
		"a press again":  func(d *gesture.Timing, s *session.Session) { d.Move(1, 0, slack); d.Press(s, hold(t, s), 2) },
	} {
		s := session.New(running(), "", nil)
		var d gesture.Timing
		d.Press(s, hold(t, s), 2)
		do(&d, s)
		if d.Release("x") || s.Previewing() || s.Modified() || d.Down() || !reflect.DeepEqual(s.Lesson(), running()) {
			t.Errorf("%s: previewing %v, modified %v, down %v, want nothing", name, s.Previewing(), s.Modified(), d.Down())
		}
	}
	var d gesture.Timing
	d.Move(1, 0, 0) // no editor: must not be asked
	if _, _, ok := d.Active(); ok || d.Release("x") {
		t.Error("a drag that never began is under way")
	}
}

// What else changes the lesson while a time is held ends the drag: an undone step
// does not come back with it, and nothing of it gets into another lesson.
func TestTimingEndsWhenTheLessonChanges(t *testing.T) {
	for name, change := range map[string]func(*session.Session){
		"undo":           func(s *session.Session) { s.Undo() },
		"another step":   func(s *session.Session) { s.Do("a title", retitled(s.Lesson(), "Other")) },
		"another lesson": func(s *session.Session) { s.Resume(session.New(serveOnly(), "", nil).Park()) },
	} {
		s := session.New(running(), "", nil)
		s.Do("the first title", retitled(s.Lesson(), "First"))
		var d gesture.Timing
		d.Press(s, hold(t, s), 2)
		d.Move(1.5, 0, slack)
		change(s)
		if s.Previewing() {
			t.Errorf("%s in a drag leaves its draft", name)
		}
		want, step := s.Lesson(), stepOf(s)
		d.Move(1.2, 0, slack)
		if d.Release("x") || d.Down() || s.Previewing() || !reflect.DeepEqual(s.Lesson(), want) || stepOf(s) != step {
			t.Errorf("%s in a drag: previewing %v, last step %q, want %q and the lesson as that left it", name, s.Previewing(), stepOf(s), step)
		}
	}
}

func retitled(l lesson.Lesson, title string) lesson.Lesson {
	l.Title = title
	return l
}

func stepOf(s *session.Session) string {
	name, _ := s.CanUndo()
	return name
}

// A new stretch goes from the press to the pointer, either way; an end taken hold
// of leaves the other. A click chooses none.
func TestStretch(t *testing.T) {
	s := session.New(running(), "", nil)
	var d gesture.Stretch
	check := func(name string, from, to units.Seconds) {
		t.Helper()
		if a, b, on := s.Loop(); !on || a != from || b != to {
			t.Errorf("%s: loop %v to %v (%v), want %v to %v", name, a, b, on, from, to)
		}
	}
	d.Press(s, 1)
	d.Move(1.01, slack)
	if d.Release() {
		t.Error("a click chose a stretch")
	}
	if _, _, on := s.Loop(); on {
		t.Error("a click left a loop")
	}
	d.Press(s, 1)
	d.Move(1.8, slack)
	check("to the right", 1, 1.8)
	d.Move(0.2, slack)
	check("to the left", 0.2, 1)
	if !d.Release() || d.Down() {
		t.Error("Release says that no stretch was chosen")
	}
	d.Take(s, 0.2, 1)
	d.Move(0.5, slack)
	check("by its start", 0.5, 1)
	d.Move(1.6, slack)
	check("by its start, beyond its end", 1, 1.6)
	d.Take(s, 1, 1.6)
	d.Move(0.1, slack)
	d.Cancel()
	check("cancelled", 1, 1.6)
	s.NoLoop()
	d.Press(s, 0.3)
	d.Move(1, slack)
	d.Cancel()
	if _, _, on := s.Loop(); on || d.Down() {
		t.Error("Cancel leaves a loop where there was none")
	}
}
