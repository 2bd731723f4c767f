package session

import (
	"homeside/model/game"
	"homeside/model/lesson"
)

// Selected is the player whose card is shown: near1 until another is chosen.
func (s *Session) Selected() game.Player { return s.selected }

// Select shows another player's card.
func (s *Session) Select(id game.Player) {
	if id != s.selected {
		s.selected = id
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
