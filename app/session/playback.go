package session

import (
	"homeside/model/rally"
	"homeside/model/units"
)

// Now is the moment shown.
func (s *Session) Now() units.Seconds { return s.now }

// Playing says whether the play runs.
func (s *Session) Playing() bool { return s.playing }

// Speed is how fast it runs: 1 is match speed.
func (s *Session) Speed() float64 { return s.speed }

// SetSpeed changes how fast it runs.
func (s *Session) SetSpeed(v float64) {
	if v > 0 {
		s.speed = v
		s.touch()
	}
}

// SetCuts has a play that runs shown at its events only: each picture stands
// until the next event comes, as long as it would take to get there.
func (s *Session) SetCuts(yes bool) { s.cuts, s.stood = yes, 0 }

// Seek shows moment t, kept within the rally. Playing goes on from there.
func (s *Session) Seek(t units.Seconds) {
	s.now, s.stood = t, 0
	s.clampNow()
	s.touch()
}

func (s *Session) clampNow() {
	if r := s.Current(); r != nil {
		s.now = min(max(s.now, r.From), r.To)
	}
}

// TogglePlay starts or pauses; at the end of the rally or of the loop it starts
// again from the beginning.
func (s *Session) TogglePlay() {
	r := s.Current()
	if r == nil {
		return
	}
	s.playing, s.stood = !s.playing, 0
	if from, to, on := s.Loop(); s.playing && on && s.now >= to {
		s.now = from
	}
	if s.playing && s.now >= r.To {
		s.now = r.From
	}
	s.touch()
}

// Pause stops playing.
func (s *Session) Pause() {
	if s.playing {
		s.playing = false
		s.touch()
	}
}

// Advance lets real time pass: while playing, the moment moves on by it at the
// session's speed and stops at the end, or goes back to the start of the loop.
func (s *Session) Advance(dt units.Seconds) {
	r := s.Current()
	if !s.playing || r == nil {
		return
	}
	before := s.now
	if s.stood += dt * units.Seconds(s.speed); s.cuts {
		s.cut(r)
	} else {
		s.now, s.stood = s.wrapped(before, s.now+s.stood), 0
	}
	if s.now >= r.To {
		s.now, s.playing = r.To, false
	}
	if s.now != before || !s.playing {
		s.touch()
	}
}

// cut goes on to the last event that has come since the picture stands.
func (s *Session) cut(r *rally.Rally) {
	came := s.now + s.stood
	if back := s.wrapped(s.now, came); back < came {
		s.now, s.stood = back, 0
		return
	}
	if came >= r.To {
		s.now, s.stood = r.To, 0
		return
	}
	for _, e := range r.Events {
		if e.At > s.now && e.At <= came {
			s.now, s.stood = e.At, came-e.At
		}
	}
}

// sameMoment is within what times count as the same when stepping: far less
// than a frame, far more than rounding.
const sameMoment units.Seconds = 1e-6

// NextEvent shows the next event after now.
func (s *Session) NextEvent() {
	r := s.Current()
	if r == nil {
		return
	}
	for _, e := range r.Events {
		if e.At > s.now+sameMoment {
			s.Seek(e.At)
			return
		}
	}
}

// PreviousEvent shows the last event before now, or the beginning.
func (s *Session) PreviousEvent() {
	r := s.Current()
	if r == nil {
		return
	}
	to := r.From
	for _, e := range r.Events {
		if e.At < s.now-sameMoment {
			to = e.At
		}
	}
	s.Seek(to)
}
