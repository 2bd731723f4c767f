package session_test

import (
	"reflect"
	"testing"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

var (
	near2   = edit.Part{Kind: edit.PlayerPart, Player: game.Near2}
	far1    = edit.Part{Kind: edit.PlayerPart, Player: game.Far1}
	toMid   = edit.Part{Kind: edit.KeyframePart, Player: game.Near2, Index: 1}
	toEnd   = edit.Part{Kind: edit.KeyframePart, Player: game.Near2, Index: 2}
	implied = edit.Part{Kind: edit.KeyframePart, Player: game.Far1, Index: rally.ImpliedAt(1)}
)

// What is held has keyframes, whatever moment it is held at; what is held twice
// is held once; the numbers of keyframes follow those that come in before them.
func TestGrasp(t *testing.T) {
	returned := solve(t, drill()).Strokes[1].At
	for _, c := range []struct {
		name    string
		at      units.Seconds
		parts   []edit.Part
		want    []edit.Part
		lengths [2]int // of near2's and far1's tracks
	}{
		{"a player at a keyframe", 1, []edit.Part{near2}, []edit.Part{toMid}, [2]int{3, 1}},
		{"a player on the run", 0.5, []edit.Part{near2}, []edit.Part{toMid}, [2]int{4, 1}},
		{"the player and that keyframe", 1, []edit.Part{near2, toMid}, []edit.Part{toMid}, [2]int{3, 1}},
		{"a later keyframe and a new one", 0.5, []edit.Part{toEnd, near2}, []edit.Part{{Kind: edit.KeyframePart, Player: game.Near2, Index: 3}, toMid}, [2]int{4, 1}},
		{"a new one and a later keyframe", 0.5, []edit.Part{near2, toEnd}, []edit.Part{toMid, {Kind: edit.KeyframePart, Player: game.Near2, Index: 3}}, [2]int{4, 1}},
		{"an implied place", 0, []edit.Part{implied}, []edit.Part{{Kind: edit.KeyframePart, Player: game.Far1, Index: 1}}, [2]int{3, 2}},
		{"the hitter at the contact", returned, []edit.Part{far1}, []edit.Part{{Kind: edit.KeyframePart, Player: game.Far1, Index: 1}}, [2]int{3, 2}},
		{"the run to an implied place", 0, []edit.Part{{Kind: edit.RunPart, Player: game.Far1, Index: rally.ImpliedAt(1)}}, []edit.Part{{Kind: edit.RunPart, Player: game.Far1, Index: 1}}, [2]int{3, 2}},
		{"what is not there", 0, []edit.Part{{Kind: edit.MarkPart}, {Kind: edit.KeyframePart, Player: game.Near1, Index: 4}}, nil, [2]int{3, 1}},
	} {
		s := session.New(drill(), "", nil)
		s.Seek(c.at)
		g, ok := s.Grasp(c.parts...)
		if ok != (c.want != nil) || !reflect.DeepEqual(g.Parts(), c.want) {
			t.Errorf("%s: Grasp holds %+v (%v), want %+v", c.name, g.Parts(), ok, c.want)
		}
		if got := [2]int{len(g.Play().Tracks[game.Near2]), len(g.Play().Tracks[game.Far1])}; got != c.lengths {
			t.Errorf("%s: the tracks have %v keyframes, want %v", c.name, got, c.lengths)
		}
		if s.Modified() || !reflect.DeepEqual(s.Lesson(), drill()) {
			t.Errorf("%s: a grasp changed the lesson", c.name)
		}
	}
}

// Places that were implied stay where they were when they are held, and their
// picks become those of the keyframes.
func TestNudgeAnImpliedPlace(t *testing.T) {
	s := session.New(drill(), "", nil)
	was := s.Current().Tracks[game.Far1].Stops[1].Keyframe.Place
	s.Pick(implied)
	if !s.Nudge("nudge", court.Pt(0.5, 0)) {
		t.Fatal("Nudge of an implied place does nothing")
	}
	p, _ := s.Play()
	if got := p.Tracks[game.Far1][1]; got.Place.Distance(was.Add(court.Pt(0.5, 0))) > 1e-9 || got.At != lesson.At(lesson.ContactOf(1)) {
		t.Errorf("nudged by half a foot from %v, far1 returns from %+v", was, got)
	}
	if got, want := s.Picked(), []edit.Part{{Kind: edit.KeyframePart, Player: game.Far1, Index: 1}}; !reflect.DeepEqual(got, want) {
		t.Errorf("after the nudge %+v is picked, want %+v", got, want)
	}
	s.Undo()
	if !reflect.DeepEqual(s.Lesson(), drill()) || len(s.Picked()) != 0 {
		t.Errorf("undone, %+v is picked and the lesson %+v", s.Picked(), s.Lesson())
	}
}

func TestNudgeWithoutAPick(t *testing.T) {
	s := session.New(drill(), "", nil)
	if s.Nudge("nudge", court.Pt(1, 0)) || s.Modified() {
		t.Error("a nudge of nothing left a step")
	}
}

// Deleting takes what can go; a player away from keyframes, an aim and an
// implied place cannot.
func TestDelete(t *testing.T) {
	for _, c := range []struct {
		name  string
		at    units.Seconds
		parts []edit.Part
		want  int // keyframes of near2
	}{
		{"the keyframe of the moment", 1, []edit.Part{near2}, 2},
		{"a run", 0, []edit.Part{{Kind: edit.RunPart, Player: game.Near2, Index: 2}}, 2},
		{"two", 0, []edit.Part{toMid, toEnd}, 1},
		{"all", 0, []edit.Part{near2, toMid, toEnd}, 1},
		{"a player on the run", 0.5, []edit.Part{near2}, 3},
		{"what cannot go", 0, []edit.Part{{Kind: edit.AimPart}, implied}, 3},
	} {
		s := session.New(drill(), "", nil)
		s.Seek(c.at)
		done := s.Delete("delete", c.parts...)
		p, _ := s.Play()
		if got := len(p.Tracks[game.Near2]); got != c.want || done != (c.want < 3) || s.Modified() != done {
			t.Errorf("%s deleted (%v): near2 has %d keyframes, want %d", c.name, done, got, c.want)
		}
	}
}

// Another play and another lesson have nothing picked.
func TestPicksBelongToAPlay(t *testing.T) {
	s := session.New(drill(), "", nil)
	s.Pick(near2, toMid)
	if s.Selected() != game.Near2 {
		t.Errorf("with near2 picked the card shows %v", s.Selected())
	}
	s.SelectPlay(1)
	if got := s.Picked(); got != nil {
		t.Errorf("in another play %v is picked", got)
	}
	s.PickAlso(near2)
	s.PickAlso(toMid)
	s.PickAlso(near2)
	if got := s.Picked(); !reflect.DeepEqual(got, []edit.Part{toMid}) {
		t.Errorf("added twice, near2 is still picked: %v", got)
	}
	s.Load(drill(), "")
	if got := s.Picked(); got != nil {
		t.Errorf("in another lesson %v is picked", got)
	}
}

// A keyframe can be given to a player at any moment, once.
func TestState(t *testing.T) {
	s := session.New(drill(), "", nil)
	at := s.Current().Tracks[game.Near2].At(0.5).Place
	for range 2 {
		s.State("add a place", game.Near2, 0.5)
		p, _ := s.Play()
		if got := p.Tracks[game.Near2]; len(got) != 4 || got[1].Place != at {
			t.Errorf("near2's places are %+v, want one at %v after half a second", got, at)
		}
	}
	s.Undo()
	if s.Modified() {
		t.Error("the second place left a step")
	}
}

func TestChangeMark(t *testing.T) {
	s := session.New(drill(), "", nil)
	if !s.AddMark("add", lesson.Mark{Span: lesson.Always(), Text: "here"}) {
		t.Fatal("AddMark adds nothing")
	}
	s.ChangeMark("change", 0, func(m lesson.Mark) lesson.Mark { m.Text = "there"; return m })
	s.ChangeMark("change", 0, func(m lesson.Mark) lesson.Mark { return m }) // no step
	s.ChangeMark("change", 3, func(m lesson.Mark) lesson.Mark { m.Text = "nowhere"; return m })
	if p, _ := s.Play(); p.Marks[0].Text != "there" {
		t.Errorf("the mark says %q, want there", p.Marks[0].Text)
	}
	s.Undo()
	s.Undo()
	if s.Modified() {
		t.Error("two undos do not take the mark and its change back")
	}
}
