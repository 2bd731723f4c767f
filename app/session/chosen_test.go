package session

import (
	"math"
	"testing"

	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

func chosenAt(t *testing.T, s *Session) rally.Timed {
	t.Helper()
	e, ok := s.Chosen()
	if !ok {
		t.Fatal("nothing is chosen")
	}
	return e.What
}

// Keys go down and up the lanes and along each.
func TestChooseByKeys(t *testing.T) {
	s := New(timed(), "", nil)
	s.Seek(1.4)
	if _, ok := s.Chosen(); ok {
		t.Error("something is chosen at the start")
	}
	s.ChooseLane(1)
	if got := chosenAt(t, s); got.Kind != rally.Landing {
		t.Errorf("the first lane down chooses %+v, want a shot", got)
	}
	for _, want := range []game.Player{game.Near1, game.Near2, game.Far1, game.Far2} {
		if s.ChooseLane(1); chosenAt(t, s).Player != want {
			t.Errorf("a lane further down chooses %+v, want one of %v", chosenAt(t, s), want)
		}
	}
	s.Seek(1.4)
	s.ChooseLane(-1)
	s.ChooseLane(1)
	for _, c := range []struct {
		by   int
		want units.Seconds
	}{{-9, 0}, {1, 0.5}, {1, 0.5}, {1, 1.5}, {99, 2.5}, {1, 2.5}} {
		s.ChooseNext(c.by)
		if e, _ := s.Chosen(); e.From != c.want {
			t.Errorf("by %d: %+v at %v s, want at %v", c.by, e.What, e.From, c.want)
		}
	}
	if s.Selected() != game.Far2 || s.Now() != 2.5 {
		t.Errorf("a place chosen selects %v at %v, want far2 at its 2.5 s", s.Selected(), s.Now())
	}
	s.ChooseLane(1)
	if got := chosenAt(t, s); s.Current().LaneOf(got) != rally.CaptionLane {
		t.Errorf("below the players: %+v, want the caption", got)
	}
	s.ChooseLane(1)
	s.ChooseLane(1) // there is no lane further down
	if got := chosenAt(t, s); s.Current().LaneOf(got) != rally.SignalLane {
		t.Errorf("at the foot: %+v, want the signal", got)
	}
	s.Unchoose()
	s.ChooseLane(-1)
	if got := chosenAt(t, s); s.Current().LaneOf(got) != rally.SignalLane {
		t.Errorf("up from nothing: %+v, want the lowest lane", got)
	}
}

// Moves of one thing that follow one another are one step; another thing, an undo
// or a save begins a new one.
func TestMovesByKeysAreOneStep(t *testing.T) {
	s := New(timed(), "", nil)
	at := func() units.Seconds { e, _ := s.Chosen(); return e.From }
	move := func(by units.Seconds) {
		if err := s.MoveChosen("move far2", by); err != nil {
			t.Fatal(err)
		}
	}
	if err := s.MoveChosen("nothing chosen", 1); err != nil || s.Modified() {
		t.Errorf("with nothing chosen: %v, modified %v", err, s.Modified())
	}
	s.Choose(rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 1})
	for range 4 {
		move(0.05)
	}
	if math.Abs(float64(at()-1.7)) > rounding || math.Abs(float64(s.Now()-at())) > 1e-9 {
		t.Errorf("moved to %v, shown %v, want both 1.7", at(), s.Now())
	}
	s.Undo()
	if at() != 1.5 || s.Modified() {
		t.Errorf("one undo leaves %v, modified %v, want 1.5 as opened", at(), s.Modified())
	}
	move(0.05)
	s.Saved("file")
	move(0.05)
	s.Undo()
	if math.Abs(float64(at()-1.55)) > rounding || s.Modified() {
		t.Errorf("undone to %v, modified %v, want the saved 1.55", at(), s.Modified())
	}
	move(0.05)
	s.Choose(rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 2})
	move(0.05)
	s.Undo()
	if name, ok := s.CanUndo(); !ok {
		t.Errorf("moves of two things were one step %q", name)
	}
}

// A key takes the thing from event to event.
func TestSnapByKeys(t *testing.T) {
	s := New(timed(), "", nil)
	s.Choose(rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 1})
	met, _ := s.Current().TimeOf(lesson.ContactOf(1))
	for _, c := range []struct {
		by   int
		want lesson.Anchor
	}{{1, lesson.At(lesson.ContactOf(1))}, {-1, lesson.At(lesson.Event{Moment: lesson.Bounce})}, {1, lesson.At(lesson.ContactOf(1))}} {
		if err := s.SnapChosen("snap", c.by); err != nil {
			t.Fatal(err)
		}
		if got := s.Lesson().Plays[0].Tracks[game.Far2][1].At; got != c.want {
			t.Errorf("snapped by %d hangs on %+v, want %+v (the return is at %v)", c.by, got, c.want, met)
		}
	}
	s.Choose(rally.Timed{Kind: rally.Landing, Index: 1})
	if err := s.SnapChosen("snap", 1); err == nil {
		t.Error("a shot that is not said by its time was moved")
	}
}

// A new cue begins at the moment, hangs on the event there and ends with the rally.
func TestNewCues(t *testing.T) {
	s := New(timed(), "", nil)
	r := s.Current()
	met, _ := r.TimeOf(lesson.ContactOf(1))
	s.Seek(met)
	c, ok := s.NewCue(lesson.Caption)
	if !ok || c.Span.From != lesson.At(lesson.ContactOf(1)) {
		t.Errorf("NewCue at the return = %+v, %v, want it to begin there", c, ok)
	}
	s.Seek(r.To)
	if c, _ := s.NewCue(lesson.Caption); s.CueLasts(c) < leastCue-1e-9 {
		t.Errorf("a caption made at the end lasts %v", s.CueLasts(c))
	}
	c.Text = "now"
	s.AddCue("add a caption", s.Lasting(c, 0.7))
	if got := chosenAt(t, s); got != (rally.Timed{Kind: rally.Saying, Index: 2}) {
		t.Errorf("the new caption is not chosen: %+v", got)
	}
	if got := s.CueLasts(s.Lesson().Plays[0].Cues[2]); math.Abs(float64(got-0.7)) > 0.011 {
		t.Errorf("the caption lasts %v, want 0.7", got)
	}
	signal, _ := s.NewCue(lesson.Signal)
	if signal.Giver != game.Far2 || signal.Reader != game.Far1 {
		t.Errorf("a signal goes from %v to %v, want from the receiver's partner far2", signal.Giver, signal.Reader)
	}
	c = s.Lesson().Plays[0].Cues[0]
	c.Text = "watch him"
	s.ChangeCue("change a caption", 0, c)
	s.DeleteCue("delete a signal", 1)
	cues := s.Lesson().Plays[0].Cues
	if len(cues) != 2 || cues[0].Text != "watch him" || cues[1].Text != "now" {
		t.Errorf("the cues are %+v", cues)
	}
	if bad := lesson.Validate(s.Lesson()); bad != nil {
		t.Error(bad)
	}
	for range 3 {
		s.Undo()
	}
	if s.Modified() {
		t.Error("adding, changing and deleting are not three steps")
	}
}

// A place or a run is chosen in time and picked on the court together.
func TestChosenIsPicked(t *testing.T) {
	s := New(timed(), "", nil)
	for _, c := range []struct {
		what rally.Timed
		part edit.Part
	}{
		{rally.Timed{Kind: rally.Arrival, Player: game.Far2, Index: 1}, edit.Part{Kind: edit.KeyframePart, Player: game.Far2, Index: 1}},
		{rally.Timed{Kind: rally.Running, Player: game.Far2, Index: 2}, edit.Part{Kind: edit.RunPart, Player: game.Far2, Index: 2}},
		{rally.Timed{Kind: rally.AtContact, Player: game.Far1, Index: 1}, edit.Part{Kind: edit.KeyframePart, Player: game.Far1, Index: rally.ImpliedAt(1)}},
	} {
		s.Pick()
		s.Choose(c.what)
		if got := s.Picked(); len(got) != 1 || got[0] != c.part {
			t.Errorf("choosing %+v picks %+v, want %+v", c.what, got, c.part)
		}
		s.Unchoose()
		if got := s.Picked(); len(got) != 0 {
			t.Errorf("with nothing chosen %+v is picked", got)
		}
		s.Pick(c.part)
		if got := chosenAt(t, s); got != c.what {
			t.Errorf("picking %+v chooses %+v, want %+v", c.part, got, c.what)
		}
	}
	s.Pick(edit.Part{Kind: edit.PlayerPart, Player: game.Near1})
	if e, ok := s.Chosen(); ok {
		t.Errorf("with a player picked %+v is chosen, want nothing", e)
	}
}
