package gesture

import (
	"homeside/model/lesson"
	"homeside/model/units"
)

// ShotEditor is what a change of a shot needs of a session.
type ShotEditor interface {
	PreviewShot(i int, change func(lesson.Shot) lesson.Shot)
	Commit(name string)
	Cancel()
	Pause()
	Revision() int
}

// Apex raises and lowers the top of a shot with the pointer. When something else
// changes the lesson, it ends: there may be another shot of that number. The zero
// value waits for Press.
type Apex struct {
	editor ShotEditor
	shot   int
	grab   units.Feet // from the pointer to the top
	least  units.Feet // the contact's height: no shot has its top below
	down   bool
	moved  bool
	shown  int // the revision that the drag knows
}

// Press starts to drag the top of a shot, at height top, with the pointer at
// height z. The top stays above least, the height of the contact. A drag that is
// still under way is cancelled.
func (a *Apex) Press(e ShotEditor, shot int, top, z, least units.Feet) {
	a.Cancel()
	*a = Apex{editor: e, shot: shot, grab: top - z, least: least, down: true}
	e.Pause()
	a.shown = e.Revision()
}

// Down says whether a drag was started and has not ended.
func (a *Apex) Down() bool { return a.down }

// Move follows the pointer at height z. The shot is then said by its apex.
func (a *Apex) Move(z units.Feet) {
	if a.end(); !a.down {
		return
	}
	a.moved = true
	top := min(max(z+a.grab, a.least+aboveContact), lesson.MaxHeight)
	a.editor.PreviewShot(a.shot, func(s lesson.Shot) lesson.Shot {
		s.Intent = lesson.Apex(top)
		return s
	})
	a.shown = a.editor.Revision()
}

// end ends a drag whose lesson something else has changed.
func (a *Apex) end() {
	if a.down && a.editor.Revision() != a.shown {
		*a = Apex{}
	}
}

// aboveContact is how far above the contact the top stays: a ball hit level.
const aboveContact units.Feet = 0.05

// Release ends the drag as one step called name.
func (a *Apex) Release(name string) {
	if a.end(); a.down && a.moved {
		a.editor.Commit(name)
	}
	*a = Apex{}
}

// Cancel ends the drag and puts everything back.
func (a *Apex) Cancel() {
	if a.end(); a.down {
		a.editor.Cancel()
	}
	*a = Apex{}
}
