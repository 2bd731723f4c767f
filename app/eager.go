package app

import (
	"time"

	"fyne.io/fyne/v2"
)

// How often an eager hand is looked for, and how long after it has moved last.
const (
	eagerStep  = 3 * time.Millisecond
	eagerAfter = time.Second
)

// eager looks for moves of a hand that drags more often than the toolkit does, which
// looks just before it paints: what a move changes is worked out by then. It stops by
// itself some time after the last move.
type eager struct {
	look    func()       // at what the hand has done; nil where nothing can look
	later   func(func()) // does something a step later in the window
	until   time.Time
	looking bool
}

// inStep does something a step later on the window's own goroutine.
func inStep(f func()) { time.AfterFunc(eagerStep, func() { fyne.Do(f) }) }

// moved goes on looking from a move on.
func (g *eager) moved() {
	g.until = time.Now().Add(eagerAfter)
	if g.look != nil && !g.looking {
		g.looking = true
		g.later(g.next)
	}
}

// next looks once more, unless the hand rests.
func (g *eager) next() {
	if g.looking = time.Now().Before(g.until); g.looking {
		g.look()
		g.later(g.next)
	}
}
