package session

import "homeside/model/units"

// loop is a stretch of the play shown that is played again and again.
type loop struct {
	on       bool
	from, to units.Seconds // no length: the whole rally
}

// leastLoop is the shortest stretch that is played again and again.
const leastLoop units.Seconds = 0.1

// Loop is the stretch that is played again and again, kept within the rally;
// false if the play stops at its end.
func (s *Session) Loop() (from, to units.Seconds, on bool) {
	r := s.Current()
	if r == nil || !s.loop.on {
		return 0, 0, false
	}
	from, to = max(s.loop.from, r.From), min(s.loop.to, r.To)
	if to-from < leastLoop {
		from, to = r.From, r.To
	}
	return from, to, true
}

// SetLoop plays a stretch again and again, whichever end comes first; one too
// short to see is the whole rally.
func (s *Session) SetLoop(a, b units.Seconds) {
	s.loop = loop{true, min(a, b), max(a, b)}
	s.touch()
}

// LoopFrom begins the loop at the moment shown: to its end or, where that comes
// before, to the rally's.
func (s *Session) LoopFrom() {
	if r := s.Current(); r != nil {
		to := r.To
		if _, end, on := s.Loop(); on && end-s.now >= leastLoop {
			to = end
		}
		s.SetLoop(s.now, to)
	}
}

// LoopTo ends the loop at the moment shown.
func (s *Session) LoopTo() {
	if r := s.Current(); r != nil {
		from := r.From
		if start, _, on := s.Loop(); on && s.now-start >= leastLoop {
			from = start
		}
		s.SetLoop(from, s.now)
	}
}

// NoLoop plays no stretch again and again, and forgets which it was.
func (s *Session) NoLoop() {
	s.loop = loop{}
	s.touch()
}

// ToggleLoop plays again and again, the stretch last chosen or else the whole
// rally, or no longer.
func (s *Session) ToggleLoop() {
	s.loop.on = !s.loop.on
	s.touch()
}

// wrapped is the moment after now has moved on: in a loop it goes back to the
// start. A moment outside plays into the loop, or on to the end.
func (s *Session) wrapped(before, now units.Seconds) units.Seconds {
	from, to, on := s.Loop()
	if !on || before >= to || now < to {
		return now
	}
	over := now - to
	for over >= to-from {
		over -= to - from
	}
	return from + over
}
