package gesture

import (
	"homeside/app/session"
	"homeside/model/lesson"
	"homeside/model/units"
)

// TimeEditor is what a drag in time needs of a session.
type TimeEditor interface {
	Preview(l lesson.Lesson)
	Commit(name string)
	Cancel()
	Pause()
	Revision() int
}

// Timing moves a thing of a play in time with the pointer. When something else
// changes the lesson, it ends: the lesson it took hold of is no longer there. The
// zero value waits for Press.
type Timing struct {
	editor TimeEditor
	hold   session.Retime
	grab   units.Seconds // from the pointer to the thing's time
	start  units.Seconds
	down   bool
	moving bool
	now    session.Moved
	shown  int // the revision that the drag knows
}

// Press takes hold of a thing with the pointer at time t. A drag that is still
// under way is cancelled.
func (d *Timing) Press(e TimeEditor, hold session.Retime, t units.Seconds) {
	d.Cancel()
	*d = Timing{editor: e, hold: hold, grab: hold.At() - t, start: t, down: true}
	e.Pause()
	d.shown = e.Revision()
}

// Down says whether a drag was started and has not ended.
func (d *Timing) Down() bool { return d.down }

// Move follows the pointer to time t. Events within reach of the thing's time
// draw it to them; a reach of 0 suspends that. Before the pointer has moved by
// slack nothing moves, so that a click changes nothing.
func (d *Timing) Move(t, reach, slack units.Seconds) {
	if d.end(); !d.down || !d.moving && max(t-d.start, d.start-t) < slack {
		return
	}
	d.moving = true
	d.now = d.hold.To(t+d.grab, reach)
	d.editor.Preview(d.now.Lesson)
	d.shown = d.editor.Revision()
}

// end ends a drag whose lesson something else has changed.
func (d *Timing) end() {
	if d.down && d.editor.Revision() != d.shown {
		*d = Timing{}
	}
}

// Active is what is dragged and where it is now; false before the pointer has moved.
func (d *Timing) Active() (session.Retime, session.Moved, bool) {
	return d.hold, d.now, d.down && d.moving
}

// Release ends the drag as one step called name; a press that never moved leaves
// none. It says whether something was moved.
func (d *Timing) Release(name string) bool {
	d.end()
	moved := d.down && d.moving
	if moved {
		d.editor.Commit(name)
	}
	*d = Timing{}
	return moved
}

// Cancel ends the drag and puts everything back.
func (d *Timing) Cancel() {
	if d.end(); d.down {
		d.editor.Cancel()
	}
	*d = Timing{}
}
