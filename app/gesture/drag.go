package gesture

import (
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Editor is what a drag needs of a session.
type Editor interface {
	PlaceAt(id game.Player, to court.Point) (lesson.Lesson, bool)
	Preview(l lesson.Lesson)
	Commit(name string)
	Cancel()
	Pause()
}

// Slack is how far the pointer moves before a press becomes a drag, so that a
// click moves nobody: about the width of a line.
const Slack units.Feet = 0.15

// Drag moves a player with the pointer. The zero value waits for Press.
type Drag struct {
	editor Editor
	id     game.Player
	grab   court.Point // from the pointer to the player's place
	start  court.Point
	place  court.Point
	moving bool
	down   bool
}

// Press starts a drag of a player who stands at place, with the pointer at p. A
// drag that is still under way is cancelled.
func (d *Drag) Press(e Editor, id game.Player, place, p court.Point) {
	d.Cancel()
	*d = Drag{editor: e, id: id, grab: place.Sub(p), start: p, place: place, down: true}
	e.Pause()
}

// Active is the player being dragged, and where to; false before the pointer
// has moved.
func (d *Drag) Active() (game.Player, court.Point, bool) { return d.id, d.place, d.down && d.moving }

// Down says whether a drag was started and has not ended.
func (d *Drag) Down() bool { return d.down }

// Move follows the pointer.
func (d *Drag) Move(p court.Point) {
	if !d.down || !p.Finite() {
		return
	}
	if !d.moving && d.start.Distance(p) < Slack {
		return
	}
	d.moving = true
	d.place = within(p.Add(d.grab))
	if l, ok := d.editor.PlaceAt(d.id, d.place); ok {
		d.editor.Preview(l)
	}
}

// Release ends the drag as one step called name; a press that never moved leaves none.
func (d *Drag) Release(name string) {
	if d.down && d.moving {
		d.editor.Commit(name)
	}
	*d = Drag{}
}

// Cancel ends the drag and puts everything back.
func (d *Drag) Cancel() {
	if d.down {
		d.editor.Cancel()
	}
	*d = Drag{}
}

// within keeps a place inside the bounds of a lesson.
func within(p court.Point) court.Point {
	m := lesson.MaxCoordinate
	return court.Pt(min(max(p.X, -m), m), min(max(p.Y, -m), m))
}
