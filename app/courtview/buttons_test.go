package courtview

import (
	"reflect"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
)

// mouse presses and drags on a view of 738 x 513.
type mouse struct {
	v  *View
	at fyne.Position
}

func (m *mouse) down(b desktop.MouseButton) {
	m.v.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: m.at}, Button: b})
}

func (m *mouse) up(b desktop.MouseButton) {
	m.v.MouseUp(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: m.at}, Button: b})
}

func (m *mouse) drag(dx, dy float32) {
	m.at = m.at.AddXY(dx, dy)
	m.v.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: m.at}})
}

// onNear2 is a mouse over a player.
func onNear2(t *testing.T) *mouse {
	t.Helper()
	test.NewTempApp(t)
	v := New(session.New(exporttest.BuiltIn(t), "", nil), Events{})
	v.Resize(fyne.NewSize(738, 513))
	v.paint(738, 513)
	at := v.layout.Court.ToPx(v.session.Current().At(v.session.Now()).Players[game.Near2].Drawn.Place)
	return &mouse{v, fyne.NewPos(float32(at.X), float32(at.Y))}
}

const (
	left   = desktop.MouseButtonPrimary
	right  = desktop.MouseButtonSecondary
	middle = desktop.MouseButtonTertiary
)

// A second button, or Escape, in the middle of a drag puts everything back, in
// whatever order the buttons are let go; what follows is a drag like any other.
func TestSecondButtonCancelsADrag(t *testing.T) {
	for name, interrupt := range map[string]func(m *mouse){
		"right": func(m *mouse) { m.down(right); m.up(right); m.drag(5, 0); m.up(left) },
		"middle": func(m *mouse) {
			m.down(middle)
			m.drag(5, 0)
			m.up(middle)
			m.drag(5, 0)
			m.up(left)
			m.v.DragEnd()
		},
		"middle, left up":  func(m *mouse) { m.down(middle); m.up(left); m.v.DragEnd(); m.drag(5, 0); m.up(middle) },
		"left twice":       func(m *mouse) { m.down(left); m.drag(5, 0); m.up(left) },
		"Escape":           func(m *mouse) { m.v.Cancel(); m.drag(5, 0); m.up(left); m.v.DragEnd() },
		"Escape, then out": func(m *mouse) { m.v.Cancel(); m.v.MouseOut(); m.drag(2000, -900); m.v.DragEnd() },
	} {
		m := onNear2(t)
		before, zoom := m.v.session.Lesson(), m.v.zoom
		m.down(left)
		m.drag(20, 4)
		if !m.v.session.Previewing() {
			t.Fatal("the drag shows nothing")
		}
		interrupt(m)
		if s := m.v.session; s.Previewing() || s.Modified() || m.v.Dragging() || m.v.pan.down || m.v.zoom != zoom || !reflect.DeepEqual(s.Lesson(), before) {
			t.Errorf("%s in a drag: draft %v, modified %v, dragging %v, panning %v, want everything put back", name, s.Previewing(), s.Modified(), m.v.Dragging(), m.v.pan.down)
		}
	}
}

// Out of the window the drag goes on and ends where it is let go, within the
// lesson's bounds.
func TestDragOutOfTheWindow(t *testing.T) {
	m := onNear2(t)
	m.down(left)
	m.drag(20, 4)
	m.v.MouseOut()
	m.drag(-3000, 9000)
	m.v.DragEnd()
	m.up(left)
	if step, ok := m.v.session.CanUndo(); !ok || m.v.Dragging() || m.v.session.Previewing() {
		t.Errorf("let go out of the window: step %q, dragging %v, draft %v, want a step and no more", step, m.v.Dragging(), m.v.session.Previewing())
	}
}

// A button pressed while the court is moved with the middle one ends that and
// takes hold of nothing.
func TestSecondButtonEndsAPan(t *testing.T) {
	m := onNear2(t)
	m.v.Zoom(2)
	m.down(middle)
	m.drag(10, 10)
	m.down(left)
	m.drag(10, 10)
	if m.v.pan.down || m.v.Dragging() {
		t.Errorf("a second button leaves panning %v, dragging %v", m.v.pan.down, m.v.Dragging())
	}
}

// By keys a mark of every kind is put into the middle, as one step, and is picked so
// that the arrow keys move it; without one that waits Enter is free.
func TestMarksArePlacedByKeys(t *testing.T) {
	m := onNear2(t)
	s := m.v.session
	if m.v.PlaceMark() {
		t.Error("a mark is placed that nobody asked for")
	}
	for n, k := range lesson.MarkKinds {
		m.v.SetMarking(&k)
		if !m.v.PlaceMark() {
			t.Fatalf("%v: not placed", k)
		}
		p, _ := s.Play()
		last := p.Marks[len(p.Marks)-1]
		if len(p.Marks) != n+1 || last.Kind != k || last.Place != (court.Point{}) || k.HasTip() == (last.Tip == last.Place) || m.v.marking != nil || s.Previewing() {
			t.Errorf("%v: %d marks, the last %+v, waiting %v, draft %v", k, len(p.Marks), last, m.v.marking != nil, s.Previewing())
		}
		if got, want := s.Picked(), (edit.Part{Kind: edit.MarkPart, Index: n}); len(got) != 1 || got[0] != want {
			t.Errorf("%v: picked %+v, want the mark", k, got)
		}
	}
	for range lesson.MarkKinds {
		s.Undo()
	}
	if s.Modified() {
		t.Error("a mark placed by keys is more than one step")
	}
}
