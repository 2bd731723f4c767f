package edit_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/units"
)

func keyframe(id game.Player, i int) edit.Part {
	return edit.Part{Kind: edit.KeyframePart, Player: id, Index: i}
}

func runTo(id game.Player, i int) edit.Part {
	return edit.Part{Kind: edit.RunPart, Player: id, Index: i}
}

// hooked is near1's track of three places, both runs bent.
func hooked() lesson.Play {
	p := lessontest.SamplePlay()
	p.Tracks[game.Near1] = []lesson.Keyframe{
		{Place: court.Pt(0, -20)}, {Place: court.Pt(4, -20), Via: new(court.Pt(2, -18))}, {Place: court.Pt(4, -10), Via: new(court.Pt(6, -15))},
	}
	return p
}

// What moves with a keyframe, a run, and both ends of a bend.
func TestShift(t *testing.T) {
	for _, c := range []struct {
		name   string
		parts  []edit.Part
		places [3]court.Point
		via    [3]court.Point // of the second and the third
	}{
		{"an end", []edit.Part{keyframe(game.Near1, 2)}, [3]court.Point{{X: 0, Y: -20}, {X: 4, Y: -20}, {X: 6, Y: -6}}, [3]court.Point{1: {X: 2, Y: -18}, 2: {X: 7, Y: -13}}},
		{"the middle", []edit.Part{keyframe(game.Near1, 1)}, [3]court.Point{{X: 0, Y: -20}, {X: 6, Y: -16}, {X: 4, Y: -10}}, [3]court.Point{1: {X: 3, Y: -16}, 2: {X: 7, Y: -13}}},
		{"a run", []edit.Part{runTo(game.Near1, 1)}, [3]court.Point{{X: 2, Y: -16}, {X: 6, Y: -16}, {X: 4, Y: -10}}, [3]court.Point{1: {X: 4, Y: -14}, 2: {X: 7, Y: -13}}},
		{"twice the same", []edit.Part{runTo(game.Near1, 1), keyframe(game.Near1, 1), runTo(game.Near1, 1)}, [3]court.Point{{X: 2, Y: -16}, {X: 6, Y: -16}, {X: 4, Y: -10}}, [3]court.Point{1: {X: 4, Y: -14}, 2: {X: 7, Y: -13}}},
		{"what is not there", []edit.Part{keyframe(game.Near1, 3), keyframe(game.Near1, -1), {Kind: edit.MarkPart, Index: 9}, {}}, [3]court.Point{{X: 0, Y: -20}, {X: 4, Y: -20}, {X: 4, Y: -10}}, [3]court.Point{1: {X: 2, Y: -18}, 2: {X: 6, Y: -15}}},
	} {
		got := edit.Shift(hooked(), c.parts, court.Pt(2, 4)).Tracks[game.Near1]
		for i, k := range got {
			if k.Place != c.places[i] || k.Via != nil && *k.Via != c.via[i] {
				t.Errorf("%s moved by 2, 4: place %d is %v by %v, want %v by %v", c.name, i, k.Place, k.Via, c.places[i], c.via[i])
			}
		}
	}
}

func TestShiftAimsAndMarks(t *testing.T) {
	p := lessontest.SamplePlay()
	got := edit.Shift(p, []edit.Part{{Kind: edit.AimPart, Index: 1}, {Kind: edit.MarkPart, Index: 0}, {Kind: edit.MarkPart, Index: 1}}, court.Pt(1, -2))
	if at, want := got.Shots[1].Aim, court.Pt(4, 17); at != want {
		t.Errorf("the aim is %v, want %v", at, want)
	}
	if m := got.Marks[0]; m.Place != court.Pt(2, 20.5) || m.Tip != court.Pt(-4, 20.5) {
		t.Errorf("the arrow goes from %v to %v, want from 2, 20.5 to -4, 20.5", m.Place, m.Tip)
	}
	if m := got.Marks[1]; m.Place != court.Pt(1, -27) || m.Tip != (court.Point{}) {
		t.Errorf("the text is at %v with the tip %v, want at 1, -27 and none", m.Place, m.Tip)
	}
	if !reflect.DeepEqual(p, lessontest.SamplePlay()) {
		t.Error("Shift changed the play it was given")
	}
}

// What is moved there and back is where it was, unless it met the bounds; it
// never leaves them, and what is held keeps its shape there.
func TestShiftThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := lessontest.Plays().Draw(t, "play")
		parts := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) edit.Part {
			kind := rapid.SampledFrom([]edit.PartKind{edit.KeyframePart, edit.RunPart, edit.AimPart, edit.MarkPart}).Draw(t, "kind")
			return edit.Part{Kind: kind, Player: rapid.SampledFrom(game.Players[:]).Draw(t, "player"), Index: rapid.IntRange(-1, 4).Draw(t, "index")}
		}), 0, 6).Draw(t, "parts")
		x, y := rapid.Float64Range(-500, 500).Draw(t, "x"), rapid.Float64Range(-500, 500).Draw(t, "y")
		by := court.Pt(units.Feet(x), units.Feet(y))
		moved := edit.Shift(p, parts, by)
		if bad := lesson.Validate(lesson.Lesson{Plays: []lesson.Play{moved}}); bad != nil {
			t.Fatalf("Shift by %v leaves the bounds: %v", by, bad[0])
		}
		from, to := edit.Places(p, parts), edit.Places(moved, parts)
		for i := range from {
			if way := to[i].Sub(from[i]); way.Distance(to[0].Sub(from[0])) > 1e-9 {
				t.Fatalf("Shift by %v moved one place by %v and another by %v", by, to[0].Sub(from[0]), way)
			}
		}
		if len(from) == 0 || to[0].Sub(from[0]).Distance(by) > 1e-9 {
			return // nothing held, or the bounds met
		}
		for i, at := range edit.Places(edit.Shift(moved, parts, by.Times(-1)), parts) {
			if at.Distance(from[i]) > 1e-9 {
				t.Fatalf("there and back by %v, a place is %v, was %v", by, at, from[i])
			}
		}
	})
}

// Everybody keeps a place, and the marks that stay keep their order.
func TestRemove(t *testing.T) {
	for _, c := range []struct {
		parts  []edit.Part
		places []units.Feet // near1's y
		marks  int
	}{
		{[]edit.Part{keyframe(game.Near1, 1)}, []units.Feet{-20, -10}, 2},
		{[]edit.Part{runTo(game.Near1, 2), {Kind: edit.MarkPart, Index: 0}}, []units.Feet{-20, -20}, 1},
		{[]edit.Part{keyframe(game.Near1, 0), keyframe(game.Near1, 1), keyframe(game.Near1, 2)}, []units.Feet{-10}, 2},
		{[]edit.Part{keyframe(game.Near1, 7), {Kind: edit.MarkPart, Index: 1}, {Kind: edit.MarkPart, Index: 0}}, []units.Feet{-20, -20, -10}, 0},
		{[]edit.Part{{Kind: edit.AimPart}, {Kind: edit.PlayerPart}}, []units.Feet{-20, -20, -10}, 2},
	} {
		p := hooked()
		got := edit.Remove(p, c.parts)
		var places []units.Feet
		for _, k := range got.Tracks[game.Near1] {
			places = append(places, k.Place.Y)
		}
		if !reflect.DeepEqual(places, c.places) || len(got.Marks) != c.marks {
			t.Errorf("Remove(%v) leaves near1's places at %v and %d marks, want %v and %d", c.parts, places, len(got.Marks), c.places, c.marks)
		}
		if len(p.Tracks[game.Near1]) != 3 || len(p.Marks) != 2 {
			t.Errorf("Remove(%v) changed the play it was given", c.parts)
		}
	}
}

func TestMarksKeepWhatTheirKindHas(t *testing.T) {
	p := edit.AddMark(lesson.Play{}, lesson.Mark{Kind: lesson.ConeMark, Place: court.Pt(1, 2), Tip: court.Pt(3, 4)})
	if m := p.Marks[0]; m.Tip != (court.Point{}) {
		t.Errorf("a cone has the tip %v, want none", m.Tip)
	}
	if got := edit.MoveTip(p, 0, court.Pt(5, 5)); !reflect.DeepEqual(got, p) {
		t.Errorf("MoveTip of a cone gives %+v, want it as it was", got.Marks)
	}
	p = edit.ReplaceMark(p, 0, lesson.Mark{Kind: lesson.ZoneMark, Place: court.Pt(1, 2), Tip: court.Pt(999, 4)})
	if m := p.Marks[0]; m.Tip != court.Pt(lesson.MaxCoordinate, 4) {
		t.Errorf("a zone's corner 999 ft away is at %v, want at the bounds", m.Tip)
	}
	for range lesson.MaxMarks + 5 {
		p = edit.AddMark(p, lesson.Mark{})
	}
	if len(p.Marks) != lesson.MaxMarks {
		t.Errorf("a full play has %d marks, want %d", len(p.Marks), lesson.MaxMarks)
	}
}
