package gesture_test

import (
	"math"
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

// serving is a lesson with a serve from ordinary places; far2 runs across after it.
func serving() lesson.Lesson {
	return lesson.Lesson{Plays: []lesson.Play{{
		Lead:  1.5,
		Shots: []lesson.Shot{{By: game.Near1, Aim: court.Pt(-5, 18), Intent: lesson.Apex(8)}},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(5, -23)}}, {{Place: court.Pt(-5, -23)}},
			{{Place: court.Pt(-5, 24), Facing: 180}},
			{{Place: court.Pt(5, 7.5), Facing: 180}, {At: lesson.Anchor{Offset: 2}, Place: court.Pt(-5, 7.5), Facing: 180}},
		},
		Marks: []lesson.Mark{{Kind: lesson.ArrowMark, Span: lesson.Always(), Place: court.Pt(0, -10), Tip: court.Pt(3, -10)}},
	}}}
}

var (
	far2  = edit.Part{Kind: edit.PlayerPart, Player: game.Far2}
	near1 = edit.Part{Kind: edit.PlayerPart, Player: game.Near1}
	none  edit.Part
	keys  gesture.Keys
)

func placeOf(s *session.Session, id game.Player) court.Point {
	return s.Current().At(s.Now()).Players[id].Drawn.Place
}

var _ gesture.Editor = (*session.Session)(nil)

// A drag previews every place under the hand and is one step in the end. The
// pointer takes hold a foot right of the player's place and keeps to it.
func TestDragIsOneStep(t *testing.T) {
	s := session.New(serving(), "", nil)
	s.TogglePlay()
	s.Seek(0)
	var h gesture.Hand
	h.Press(s, far2, court.Pt(6, 7.5), keys)
	if s.Playing() {
		t.Error("the play runs on while a player is held")
	}
	for _, p := range []court.Point{court.Pt(6.5, 8), court.Pt(8, 9), court.Pt(9, 10)} {
		h.Move(p, keys)
		want := p.Sub(court.Pt(1, 0))
		if a, at, ok := h.Moving(); !ok || a != far2 || at != want {
			t.Errorf("with the pointer at %v: %v at %v (%v), want far2 at %v", p, a, at, ok, want)
		}
		if got := placeOf(s, game.Far2); got != want || s.Modified() {
			t.Errorf("with the pointer at %v the preview shows %v, modified %v, want %v", p, got, s.Modified(), want)
		}
	}
	h.Release()
	if name, _ := s.CanUndo(); name != "move far2" || placeOf(s, game.Far2) != court.Pt(8, 10) || h.Down() {
		t.Errorf("released: undo %q, at %v, down %v, want the step move far2 to 8, 10", name, placeOf(s, game.Far2), h.Down())
	}
	s.Undo()
	if _, more := s.CanUndo(); more || placeOf(s, game.Far2) != court.Pt(5, 7.5) {
		t.Errorf("one undo leaves %v, more to undo %v, want everything back", placeOf(s, game.Far2), more)
	}
}

// What every kind of part does when it is pressed at one place and dragged to
// another, in one step.
func TestWhatAPartDoes(t *testing.T) {
	for _, c := range []struct {
		name     string
		part     edit.Part
		from, to court.Point
		step     string
		check    func(p lesson.Play) bool
	}{
		{"keyframe", edit.Part{Kind: edit.KeyframePart, Player: game.Far2, Index: 1}, court.Pt(-5, 7.5), court.Pt(-6, 9), "move far2",
			func(p lesson.Play) bool { return p.Tracks[game.Far2][1].Place == court.Pt(-6, 9) }},
		{"run", edit.Part{Kind: edit.RunPart, Player: game.Far2, Index: 1}, court.Pt(0, 7.5), court.Pt(0, 10), "move a run of far2",
			func(p lesson.Play) bool {
				return p.Tracks[game.Far2][0].Place == court.Pt(5, 10) && p.Tracks[game.Far2][1].Place == court.Pt(-5, 10)
			}},
		{"bend", edit.Part{Kind: edit.BendPart, Player: game.Far2, Index: 1}, court.Pt(0, 7.5), court.Pt(1, 12), "bend a run of far2",
			func(p lesson.Play) bool { v := p.Tracks[game.Far2][1].Via; return v != nil && *v == court.Pt(1, 12) }},
		{"aim", edit.Part{Kind: edit.AimPart}, court.Pt(-5, 18), court.Pt(-7, 20), "aim the serve",
			func(p lesson.Play) bool { return p.Shots[0].Aim == court.Pt(-7, 20) }},
		{"facing", edit.Part{Kind: edit.FacingPart, Player: game.Near1}, court.Pt(5, -21), court.Pt(8, -23.1), "turn near1",
			func(p lesson.Play) bool { return p.Tracks[game.Near1][0].Facing == 90 }},
		{"mark", edit.Part{Kind: edit.MarkPart}, court.Pt(1, -10), court.Pt(2, -12), "move a mark",
			func(p lesson.Play) bool {
				return p.Marks[0].Place == court.Pt(1, -12) && p.Marks[0].Tip == court.Pt(4, -12)
			}},
		{"tip", edit.Part{Kind: edit.TipPart}, court.Pt(3, -10), court.Pt(4, -15), "change a mark",
			func(p lesson.Play) bool {
				return p.Marks[0].Place == court.Pt(0, -10) && p.Marks[0].Tip == court.Pt(4, -15)
			}},
	} {
		s := session.New(serving(), "", nil)
		var h gesture.Hand
		h.Press(s, c.part, c.from, keys)
		h.Move(c.from.Toward(c.to, 0.5), keys)
		h.Move(c.to, keys)
		h.Release()
		p, _ := s.Play()
		if name, _ := s.CanUndo(); name != c.step || !c.check(p) {
			t.Errorf("%s dragged from %v to %v: step %q, want %q; the play is\n%+v", c.name, c.from, c.to, name, c.step, p)
		}
		s.Undo()
		if _, more := s.CanUndo(); more || !reflect.DeepEqual(s.Lesson(), serving()) {
			t.Errorf("%s: one undo does not put everything back", c.name)
		}
	}
}

// A bend let go near the straight line makes the run straight, unless snapping
// is suspended.
func TestBendStraightens(t *testing.T) {
	bent := serving()
	bent.Plays[0] = edit.Bend(bent.Plays[0], game.Far2, 1, court.Pt(0, 12))
	for _, free := range []bool{false, true} {
		s := session.New(bent, "", nil)
		var h gesture.Hand
		k := gesture.Keys{Free: free}
		h.Press(s, edit.Part{Kind: edit.BendPart, Player: game.Far2, Index: 1}, court.Pt(0, 12), k)
		h.Move(court.Pt(0.2, 7.7), k)
		h.Release()
		if got := s.Lesson().Plays[0].Tracks[game.Far2][1].Via; (got == nil) == free {
			t.Errorf("let go 0.3 ft beside the straight line, snapping suspended %v: the bend is %v", free, got)
		}
	}
}

// All that is picked moves by the same way when one of it is dragged.
func TestSeveralMoveTogether(t *testing.T) {
	s := session.New(serving(), "", nil)
	s.Pick(near1, edit.Part{Kind: edit.MarkPart})
	var h gesture.Hand
	h.Press(s, near1, court.Pt(5, -23), keys)
	h.Move(court.Pt(6, -25), keys)
	h.Release()
	p, _ := s.Play()
	if name, _ := s.CanUndo(); name != "move 2 things" || p.Tracks[game.Near1][0].Place != court.Pt(6, -25) || p.Marks[0].Place != court.Pt(1, -12) || p.Marks[0].Tip != court.Pt(4, -12) {
		t.Errorf("step %q, near1 at %v, the mark %+v, want both moved by 1, -2", name, p.Tracks[game.Near1][0].Place, p.Marks[0])
	}
	if len(s.Picked()) != 2 {
		t.Errorf("after the drag %v is picked, want both still", s.Picked())
	}
}

// A click picks one and moves nobody, with Shift it adds or takes out; a click
// on nothing picks nothing.
func TestClicksPick(t *testing.T) {
	s := session.New(serving(), "", nil)
	var h gesture.Hand
	click := func(a edit.Part, k gesture.Keys) {
		h.Press(s, a, court.Pt(5, -23), k)
		h.Move(court.Pt(5+gesture.Slack*0.99, -23), k)
		h.Release()
	}
	for _, c := range []struct {
		part edit.Part
		add  bool
		want []edit.Part
	}{
		{near1, false, []edit.Part{near1}}, {far2, true, []edit.Part{near1, far2}}, {near1, true, []edit.Part{far2}},
		{near1, true, []edit.Part{far2, near1}}, {far2, false, []edit.Part{far2}}, {none, true, []edit.Part{far2}}, {none, false, nil},
	} {
		click(c.part, gesture.Keys{Add: c.add})
		if got := s.Picked(); !reflect.DeepEqual(got, c.want) {
			t.Errorf("a click on %+v, adding %v: picked %+v, want %+v", c.part, c.add, got, c.want)
		}
	}
	if _, ok := s.CanUndo(); ok || s.Modified() || !reflect.DeepEqual(s.Lesson(), serving()) {
		t.Error("clicks left a step")
	}
}

// A band picks the players, keyframes and marks in it.
func TestBand(t *testing.T) {
	all := []edit.Part{far2, {Kind: edit.KeyframePart, Player: game.Far2, Index: 1}}
	for _, c := range []struct {
		from, to court.Point
		want     []edit.Part
	}{
		{court.Pt(-9, 10), court.Pt(9, 5), all},
		{court.Pt(9, 5), court.Pt(0, 10), []edit.Part{far2}},
		{court.Pt(-9, 5), court.Pt(0, 10), all[1:]},
		{court.Pt(-1, -12), court.Pt(4, -5), []edit.Part{{Kind: edit.MarkPart}}},
		{court.Pt(-1, -12), court.Pt(2, -5), nil}, // half of the arrow
	} {
		s := session.New(serving(), "", nil)
		var h gesture.Hand
		h.Press(s, none, c.from, keys)
		h.Move(c.to, keys)
		if r, ok := h.Band(); !ok || r != court.RectOf(c.from, c.to) {
			t.Errorf("the band from %v to %v is %v, %v", c.from, c.to, r, ok)
		}
		h.Release()
		if got := s.Picked(); !reflect.DeepEqual(got, c.want) {
			t.Errorf("a band from %v to %v picks %+v, want %+v", c.from, c.to, got, c.want)
		}
	}
}

// Escape in the middle of any gesture leaves nothing behind, whatever follows.
func TestEscapeLeavesNothing(t *testing.T) {
	for _, a := range []edit.Part{none, near1, {Kind: edit.MarkPart}, {Kind: edit.TipPart}, {Kind: edit.AimPart},
		{Kind: edit.BendPart, Player: game.Far2, Index: 1}, {Kind: edit.RunPart, Player: game.Far2, Index: 1}, {Kind: edit.FacingPart, Player: game.Far1}} {
		s := session.New(serving(), "", nil)
		var h gesture.Hand
		h.Press(s, a, court.Pt(5, -23), keys)
		h.Move(court.Pt(0, -30), keys)
		h.Cancel()
		h.Move(court.Pt(0, -35), keys)
		h.Release()
		if _, ok := s.CanUndo(); ok || s.Previewing() || s.Modified() || h.Down() || !reflect.DeepEqual(s.Lesson(), serving()) {
			t.Errorf("after Escape on %+v: draft %v, modified %v, down %v, want nothing", a, s.Previewing(), s.Modified(), h.Down())
		}
	}
}

// A press during a drag begins anew: what the first one showed is gone.
func TestPressDuringADrag(t *testing.T) {
	s := session.New(serving(), "", nil)
	var h gesture.Hand
	h.Press(s, near1, court.Pt(5, -23), keys)
	h.Move(court.Pt(0, -30), keys)
	h.Press(s, far2, court.Pt(5, 7.5), keys)
	h.Release()
	if _, ok := s.CanUndo(); ok || s.Previewing() || !reflect.DeepEqual(s.Lesson(), serving()) {
		t.Errorf("a second press left a draft: %v, or a step: %v", s.Previewing(), ok)
	}
}

// Whatever else changes the lesson while the hand holds something ends the drag,
// and is not undone by it: before the first move as well as after.
func TestDragEndsWhenTheLessonChanges(t *testing.T) {
	for name, change := range map[string]func(s *session.Session){
		"undo":         (*session.Session).Undo,
		"delete":       func(s *session.Session) { s.Delete("delete", edit.Part{Kind: edit.MarkPart}) },
		"another play": func(s *session.Session) { s.SelectPlay(1) },
		"nudge":        func(s *session.Session) { s.Nudge("nudge", court.Pt(1, 0)) },
		"another file": func(s *session.Session) { s.Load(serving(), "other.json") },
		"shot":         func(s *session.Session) { s.CutShots("cut", 1); s.AddShot("add") },
	} {
		for _, moved := range []bool{false, true} {
			l := serving()
			l.Plays = append(l.Plays, l.Plays[0])
			s := session.New(l, "", nil)
			s.Pick(near1)
			s.Nudge("before", court.Pt(0, 1))
			var h gesture.Hand
			h.Press(s, near1, court.Pt(5, -22), keys)
			if moved {
				h.Move(court.Pt(3, -22), keys)
			}
			change(s)
			want, step := s.Lesson(), func() string { n, _ := s.CanUndo(); return n }
			before := step()
			h.Move(court.Pt(0, -22), keys)
			h.Move(court.Pt(1, -22), keys)
			h.Release()
			if s.Previewing() || h.Down() || step() != before || !reflect.DeepEqual(s.Lesson(), want) {
				t.Errorf("%s in a drag, moved %v: draft %v, down %v, last step %q, want %q and the lesson as %s left it", name, moved, s.Previewing(), h.Down(), step(), before, name)
			}
		}
	}
}

func TestHandWithoutPress(t *testing.T) {
	var h gesture.Hand
	h.Move(court.Pt(1, 1), keys) // no session: must not be asked
	h.Release()
	h.Cancel()
	if _, _, ok := h.Moving(); ok || h.Down() {
		t.Error("a gesture that never began is under way")
	}
}

// Places stay numbers within a lesson's bounds, so that what a drag makes can be saved.
func TestDragStaysWithinBounds(t *testing.T) {
	nan, inf := units.Feet(math.NaN()), units.Feet(math.Inf(1))
	for _, p := range []court.Point{{X: 1e9, Y: -1e9}, {X: -201, Y: 199}, {X: nan, Y: 0}, {X: 0, Y: inf}, {X: inf, Y: -inf}} {
		for _, a := range []edit.Part{near1, {Kind: edit.MarkPart}, {Kind: edit.TipPart}, {Kind: edit.AimPart}, {Kind: edit.BendPart, Player: game.Far2, Index: 1}} {
			s := session.New(serving(), "", nil)
			var h gesture.Hand
			h.Press(s, a, court.Pt(-5, 24), keys)
			h.Move(court.Pt(0, 20), keys)
			h.Move(p, keys)
			h.Release()
			if bad := lesson.Validate(s.Lesson()); bad != nil {
				t.Errorf("%+v dragged to %v: %v", a, p, bad)
			}
		}
	}
}

// A player dragged at a moment within a run gets a place there; at a contact
// that implied one, the place is stated.
func TestDragMakesAKeyframe(t *testing.T) {
	s := session.New(serving(), "", nil)
	s.Seek(1)
	var h gesture.Hand
	at := placeOf(s, game.Far2)
	h.Press(s, far2, at, keys)
	h.Move(at.Add(court.Pt(0, 4)), keys)
	h.Release()
	if got := s.Lesson().Plays[0].Tracks[game.Far2]; len(got) != 3 || got[1].Place != court.Pt(0, 11.5) || got[1].At.Offset != 1 {
		t.Errorf("the track is %+v, want a place at 0, 11.5 after a second", got)
	}
}

// New marks are placed by a press, those with a tip by a drag; a click gives the
// tip a length of its own.
func TestPlaceMarks(t *testing.T) {
	from, to := court.Pt(2, -10), court.Pt(5, -12)
	for _, c := range []struct {
		kind      lesson.MarkKind
		drag      bool
		place     court.Point
		tip       court.Point
		wantNamed string
	}{
		{lesson.TextMark, false, from, court.Point{}, "add a text"},
		{lesson.ConeMark, true, to, court.Point{}, "add a cone"},
		{lesson.ZoneMark, true, from, to, "add a zone"},
		{lesson.ArrowMark, true, from, to, "add an arrow"},
		{lesson.MeasureMark, false, from, court.Pt(6, -10), "add a measure line"},
		{lesson.HighlightMark, true, from, to, "add a highlight"},
	} {
		s := session.New(serving(), "", nil)
		var h gesture.Hand
		h.Place(s, lesson.Mark{Kind: c.kind, Span: lesson.Always()}, from, keys)
		if c.drag {
			h.Move(to, keys)
		}
		if n := len(s.Lesson().Plays[0].Marks); n != 2 || s.Modified() {
			t.Errorf("while a %v is placed there are %d marks, modified %v, want a preview of 2", c.kind, n, s.Modified())
		}
		h.Release()
		p, _ := s.Play()
		name, _ := s.CanUndo()
		if m := p.Marks[len(p.Marks)-1]; m.Kind != c.kind || m.Place != c.place || m.Tip != c.tip || name != c.wantNamed {
			t.Errorf("a new %v is %+v in the step %q, want it from %v to %v", c.kind, m, name, c.place, c.tip)
		}
		if !s.IsPicked(edit.Part{Kind: edit.MarkPart, Index: 1}) {
			t.Errorf("the new %v is not picked", c.kind)
		}
		s.Undo()
		if !reflect.DeepEqual(s.Lesson(), serving()) {
			t.Errorf("one undo does not take the %v away", c.kind)
		}
	}
}
