package drilling

import (
	"strconv"

	"fyne.io/fyne/v2"

	"homeside/words"
)

// Key does what a key is for; false for one that the page has no use for. A
// clicker sends Page Up and Page Down.
func (s *sheet) Key(k *fyne.KeyEvent) bool {
	switch k.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace, fyne.KeyPageDown:
		s.step()
	case fyne.KeyPageUp:
		s.back()
	case fyne.KeyS:
		s.setUp()
	case fyne.KeyLeft, fyne.KeyRight:
		return s.stepFilm(k.Name == fyne.KeyRight)
	case fyne.KeyP:
		return s.pause()
	case fyne.KeyV:
		return s.turnFilm()
	default:
		n, err := strconv.Atoi(string(k.Name))
		return err == nil && s.course != nil && s.answers.press(n)
	}
	return true
}

// running is the film that can be worked by keys; nil for none.
func (s *sheet) running() *film {
	if f := s.stage.board.film; f != nil && !f.still {
		return f
	}
	return nil
}

// stepFilm goes an event on or back in the film.
func (s *sheet) stepFilm(forward bool) bool {
	f := s.running()
	if f == nil {
		return false
	}
	f.run.Step(forward)
	s.stage.clock.Follow()
	s.stage.Refresh()
	return true
}

// turnFilm shows the film from above or from behind.
func (s *sheet) turnFilm() bool {
	f := s.running()
	if f == nil {
		return false
	}
	f.turn()
	s.stage.Refresh()
	return true
}

// pause pauses the film, or lets it go on.
func (s *sheet) pause() bool {
	f := s.running()
	if f == nil || s.reduced() {
		return false
	}
	f.run.Toggle()
	s.stage.clock.Follow()
	return true
}

// keysLine says the keys that do something now.
func (s *sheet) keysLine() string {
	text := words.T("Enter, space or Page Down: on · Page Up: back · S: set up")
	if n := len(s.answers.shown); n > 0 {
		text = words.T("1 to %d: answer", n) + " · " + text
	}
	if s.running() != nil {
		text += " · " + words.T("arrows: event by event · V: view")
		if !s.reduced() {
			text += " · " + words.T("P: pause")
		}
	}
	return text
}

// noneBefore is why nobody can go back; "" where one can.
func noneBefore(c course) string {
	if c.first() {
		return words.T("This is the first question.")
	}
	return ""
}
