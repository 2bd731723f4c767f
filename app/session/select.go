package session

import (
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Selected is the player whose card is shown: near1 until another is chosen.
func (s *Session) Selected() game.Player { return s.selected }

// Select shows another player's card.
func (s *Session) Select(id game.Player) {
	if id != s.selected || s.pointed {
		s.selected, s.pointed = id, false
		s.touch()
	}
}

// ChangePlayer changes a person as one named step; nothing happens if the change
// makes no difference.
func (s *Session) ChangePlayer(name string, id game.Player, change func(lesson.Player) lesson.Player) {
	s.Cancel()
	l := s.history.Lesson()
	old := l.Player(id)
	if changed := change(old); changed != old {
		s.Do(name, l.WithPlayer(id, changed))
	}
}

// PointOut shows a moment and points at a player there, until another moment is shown.
func (s *Session) PointOut(id game.Player, t units.Seconds) {
	s.Seek(t)
	s.pointed, s.pointedAt, s.selected = true, s.now, id
	s.touch()
}

// Pointed is the player pointed at now; false if none is.
func (s *Session) Pointed() (game.Player, bool) {
	return s.selected, s.pointed && s.now == s.pointedAt && !s.playing
}
