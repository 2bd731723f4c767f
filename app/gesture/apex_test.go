package gesture

import (
	"testing"

	"homeside/model/lesson"
	"homeside/model/units"
)

// shotLog is a session that notes what a gesture does to a shot.
type shotLog struct {
	shot      lesson.Shot
	committed []string
	cancelled int
	revision  int
}

func (l *shotLog) PreviewShot(_ int, change func(lesson.Shot) lesson.Shot) { l.shot = change(l.shot) }
func (l *shotLog) Commit(name string)                                      { l.committed = append(l.committed, name) }
func (l *shotLog) Cancel()                                                 { l.cancelled++ }
func (l *shotLog) Pause()                                                  {}
func (l *shotLog) Revision() int                                           { return l.revision }

func TestApexFollowsThePointer(t *testing.T) {
	for _, c := range []struct{ top, press, move, want units.Feet }{
		{8, 8, 10, 10}, {8, 8.5, 10, 9.5}, {8, 8, -3, 2.5 + aboveContact}, {8, 8, 1000, lesson.MaxHeight},
	} {
		log := &shotLog{shot: lesson.Shot{Intent: lesson.Speed(20)}}
		var a Apex
		a.Press(log, 1, c.top, c.press, 2.5)
		a.Move(c.move)
		a.Release("raise the return")
		if want := lesson.Apex(c.want); log.shot.Intent != want {
			t.Errorf("top %v pressed at %v moved to %v: intent %v, want %v", c.top, c.press, c.move, log.shot.Intent, want)
		}
		if len(log.committed) != 1 || a.Down() {
			t.Errorf("a drag of the apex left %v, down %v, want one step and no drag", log.committed, a.Down())
		}
	}
}

func TestApexClickAndEscape(t *testing.T) {
	log := &shotLog{}
	var a Apex
	a.Press(log, 0, 8, 8, 2.5)
	a.Release("nothing")
	if len(log.committed) != 0 {
		t.Errorf("a click on the handle left the steps %v, want none", log.committed)
	}
	a.Press(log, 0, 8, 8, 2.5)
	a.Move(9)
	a.Cancel()
	a.Release("nothing")
	if log.cancelled != 1 || len(log.committed) != 0 {
		t.Errorf("after Escape: cancelled %d, committed %v, want 1 and none", log.cancelled, log.committed)
	}
}

// A press during a drag begins anew: what the first one showed is gone.
func TestApexPressDuringADrag(t *testing.T) {
	log := &shotLog{}
	var a Apex
	a.Press(log, 0, 8, 8, 2.5)
	a.Move(9)
	a.Press(log, 1, 6, 6, 2.5)
	if log.cancelled != 1 || len(log.committed) != 0 || !a.Down() {
		t.Errorf("a second press: cancelled %d, committed %v, down %v, want the first cancelled", log.cancelled, log.committed, a.Down())
	}
}

// A lesson that something else has changed is let be: the shot of that number may
// be another one.
func TestApexEndsWhenTheLessonChanges(t *testing.T) {
	log := &shotLog{}
	var a Apex
	a.Press(log, 0, 8, 8, 2.5)
	a.Move(9)
	log.revision++
	shown := log.shot
	a.Move(10)
	a.Release("raise the serve")
	if a.Down() || len(log.committed) != 0 || log.cancelled != 0 || log.shot != shown {
		t.Errorf("after a change: down %v, committed %v, cancelled %d, intent %v, want the drag ended and nothing touched", a.Down(), log.committed, log.cancelled, log.shot.Intent)
	}
}
