package app

import (
	"time"

	"fyne.io/fyne/v2"
)

// lazily refreshes a part of the window that can wait: a pause after it was first
// asked to, so that what cannot wait is on the screen by then.
type lazily struct {
	refresh func()
	pause   time.Duration
	waiting bool
}

// ask refreshes at once where there is a hurry.
func (l *lazily) ask(hurry bool) {
	switch {
	case hurry:
		l.refresh()
	case !l.waiting:
		l.waiting = true
		time.AfterFunc(l.pause, func() {
			fyne.Do(func() {
				l.waiting = false
				l.refresh()
			})
		})
	}
}
