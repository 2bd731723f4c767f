package app

import (
	"time"

	"fyne.io/fyne/v2"
)

// lazily refreshes a part of the window not more often than every pause, the last
// time always.
type lazily struct {
	refresh func()
	pause   time.Duration
	last    time.Time
	waiting bool
}

// ask refreshes now or, where that was done just before and there is no hurry,
// when the pause is over.
func (l *lazily) ask(hurry bool) {
	rest := l.pause - time.Since(l.last)
	switch {
	case hurry || rest <= 0:
		l.last = time.Now()
		l.refresh()
	case !l.waiting:
		l.waiting = true
		time.AfterFunc(rest, func() {
			fyne.Do(func() {
				l.waiting = false
				l.ask(true)
			})
		})
	}
}
