package gesture

import (
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Editor is what a gesture needs of a session.
type Editor interface {
	Preview(l lesson.Lesson)
	Commit(name string)
	Cancel()
	Pause()
	Revision() int
}

// Slack is how far the pointer moves before a press becomes a drag, so that a
// click moves nobody: about the width of a line.
const Slack units.Feet = 0.15

// Pull shows what becomes of a lesson while the pointer moves. When something else
// changes the lesson, it ends: what it took hold of is no longer there. The zero
// value waits for Press.
type Pull struct {
	editor Editor
	show   func(at court.Point) lesson.Lesson
	start  court.Point
	down   bool
	moving bool
	shown  int // the revision that the pull knows
}

// Press starts to pull with the pointer at a place; show is the lesson to
// preview for every later place. A pull still under way is cancelled.
func (g *Pull) Press(e Editor, at court.Point, show func(at court.Point) lesson.Lesson) {
	g.Cancel()
	e.Pause()
	*g = Pull{editor: e, show: show, start: at, down: true, shown: e.Revision()}
}

// Down says whether a pull was started and has not ended.
func (g *Pull) Down() bool { return g.down }

// Moving says whether the pointer has left its place since the press.
func (g *Pull) Moving() bool { return g.down && g.moving }

// Move follows the pointer.
func (g *Pull) Move(at court.Point) {
	if g.end(); !g.down || !at.Finite() {
		return
	}
	if !g.moving && g.start.Distance(at) < Slack {
		return
	}
	g.moving = true
	g.editor.Preview(g.show(at))
	g.shown = g.editor.Revision()
}

// end ends a pull whose lesson something else has changed.
func (g *Pull) end() {
	if g.down && g.editor.Revision() != g.shown {
		*g = Pull{}
	}
}

// Release ends the pull as one step called name; a press that never moved leaves
// none. It says whether there is a step.
func (g *Pull) Release(name string) bool {
	g.end()
	done := g.Moving()
	if done {
		g.editor.Commit(name)
	}
	*g = Pull{}
	return done
}

// Cancel ends the pull and puts everything back.
func (g *Pull) Cancel() {
	if g.end(); g.down {
		g.editor.Cancel()
	}
	*g = Pull{}
}
