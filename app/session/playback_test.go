package session_test

import (
	"testing"

	"homeside/app/session"
	"homeside/model/lesson"
	"homeside/model/units"
)

func TestSeekStaysWithinTheRally(t *testing.T) {
	s := session.New(drill(), "", nil)
	r := s.Current()
	for at, want := range map[units.Seconds]units.Seconds{-100: -1.5, -1: -1, 0: 0, 1.25: 1.25, 100: r.To} {
		s.Seek(at)
		if got := s.Now(); got != want {
			t.Errorf("Seek(%v) shows %v, want %v", at, got, want)
		}
	}
}

// With cuts a play that runs shows its events only, each when it comes.
func TestCuts(t *testing.T) {
	s := session.New(drill(), "", nil)
	s.SetCuts(true)
	r := s.Current()
	s.Seek(r.From)
	s.TogglePlay()
	shown := map[units.Seconds]bool{}
	for elapsed := units.Seconds(0); s.Playing(); elapsed += 0.01 {
		s.Advance(0.01)
		shown[s.Now()] = true
		if due := r.From + elapsed + 0.02; s.Now() > due {
			t.Fatalf("after %.2f s it shows %v, which comes later", float64(elapsed), s.Now())
		}
	}
	events := map[units.Seconds]bool{r.From: true, r.To: true}
	for _, e := range r.Events {
		events[e.At] = true
	}
	for at := range shown {
		if !events[at] {
			t.Errorf("it shows %v, where nothing happens", at)
		}
	}
	if len(shown) != len(events) {
		t.Errorf("it shows %d moments, want all %d: %v", len(shown), len(events), shown)
	}
}

// Real time passes at the session's speed while playing, and stops at the end.
func TestAdvance(t *testing.T) {
	changes := 0
	s := session.New(drill(), "", func() { changes++ })
	s.Advance(1)
	if s.Now() != 0 || s.Playing() || changes != 0 {
		t.Errorf("while paused a second takes it to %v, %d changes, want it to stay", s.Now(), changes)
	}
	s.TogglePlay()
	s.Advance(0.5)
	if !s.Playing() || s.Now() != 0.5 {
		t.Errorf("after half a second it is at %v, playing %v, want 0.5", s.Now(), s.Playing())
	}
	s.SetSpeed(0.25)
	s.Advance(1)
	if s.Now() != 0.75 || s.Speed() != 0.25 {
		t.Errorf("after a second at a quarter of the speed it is at %v, want 0.75", s.Now())
	}
	for _, wrong := range []float64{0, -1} {
		if s.SetSpeed(wrong); s.Speed() != 0.25 {
			t.Errorf("SetSpeed(%v) made the speed %v, want it to stay", wrong, s.Speed())
		}
	}
	end := s.Current().To
	s.Advance(1000)
	if s.Playing() || s.Now() != end {
		t.Errorf("past the end it is at %v, playing %v, want stopped at %v", s.Now(), s.Playing(), end)
	}
	s.TogglePlay()
	if !s.Playing() || s.Now() != -1.5 {
		t.Errorf("started again at the end it is at %v, want the beginning at -1.5", s.Now())
	}
	s.Advance(0.4)
	s.Pause()
	before := changes
	s.Pause()
	if s.Playing() || changes != before {
		t.Error("Pause did not stop it, or stopped it twice")
	}
}

// Next and previous walk every moment at which something happens, and back.
func TestStepThroughEvents(t *testing.T) {
	s := session.New(drill(), "", nil)
	r := s.Current()
	var times []units.Seconds
	for _, e := range r.Events {
		if len(times) == 0 || e.At > times[len(times)-1] {
			times = append(times, e.At)
		}
	}
	s.Seek(-1.5)
	for _, want := range times {
		if s.NextEvent(); s.Now() != want {
			t.Fatalf("NextEvent shows %v, want %v of %v", s.Now(), want, times)
		}
	}
	if s.NextEvent(); s.Now() != r.To {
		t.Errorf("NextEvent at the end shows %v, want the end", s.Now())
	}
	for i := len(times) - 2; i >= 0; i-- {
		if s.PreviousEvent(); s.Now() != times[i] {
			t.Fatalf("PreviousEvent shows %v, want %v of %v", s.Now(), times[i], times)
		}
	}
	for range 2 {
		if s.PreviousEvent(); s.Now() != -1.5 {
			t.Errorf("PreviousEvent at the serve shows %v, want the beginning", s.Now())
		}
	}
}

func TestSelectPlay(t *testing.T) {
	s := session.New(drill(), "", nil)
	s.Seek(1)
	s.TogglePlay()
	s.Preview(lesson.Lesson{Title: "draft", Plays: drill().Plays})
	s.SelectPlay(1)
	if p, ok := s.Play(); !ok || p.Title != "second" || s.PlayIndex() != 1 || s.Now() != 0 || s.Playing() || s.Previewing() {
		t.Errorf("SelectPlay(1) shows %q at %v, playing %v, draft %v, want second at its serve", p.Title, s.Now(), s.Playing(), s.Previewing())
	}
	s.Seek(1)
	for _, same := range []int{1, -1, 2} {
		if s.SelectPlay(same); s.PlayIndex() != 1 || s.Now() != 1 {
			t.Errorf("SelectPlay(%d) shows play %d at %v, want it to stay", same, s.PlayIndex(), s.Now())
		}
	}
}

// An empty lesson has nothing to play, and nothing fails.
func TestEmptyLesson(t *testing.T) {
	s := session.New(lesson.Lesson{}, "", nil)
	s.TogglePlay()
	s.Advance(1)
	s.NextEvent()
	s.PreviousEvent()
	s.Seek(3)
	if _, ok := s.Play(); ok || s.Current() != nil || s.Problem() == nil || s.Playing() {
		t.Errorf("an empty lesson has a play: %v, %v, playing %v", s.Current(), s.Problem(), s.Playing())
	}
}
