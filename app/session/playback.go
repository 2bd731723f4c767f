package session

import "homeside/model/units"

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

// Seek shows moment t, kept within the rally. Playing goes on from there.
func (s *Session) Seek(t units.Seconds) {
	s.now = t
	s.clampNow()
	s.touch()
}

func (s *Session) clampNow() {
	if r := s.Current(); r != nil {
		s.now = min(max(s.now, r.From), r.To)
	}
}

// TogglePlay starts or pauses; at the end it starts again from the beginning.
func (s *Session) TogglePlay() {
	r := s.Current()
	if r == nil {
		return
	}
	s.playing = !s.playing
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
// session's speed and stops at the end.
func (s *Session) Advance(dt units.Seconds) {
	r := s.Current()
	if !s.playing || r == nil {
		return
	}
	s.now += dt * units.Seconds(s.speed)
	if s.now >= r.To {
		s.now, s.playing = r.To, false
	}
	s.touch()
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
