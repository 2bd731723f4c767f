package session_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"homeside/app/session"
	_ "homeside/internal/fixedseed"
	"homeside/model/edit"
	"homeside/model/lesson"
)

// deskModel is what a desk must come to: a history and a file for each lesson.
type deskModel struct {
	open  []edit.History
	paths []string
	shown int
}

func (m *deskModel) change(of func(edit.History) edit.History) { m.open[m.shown] = of(m.open[m.shown]) }

func (m *deskModel) put(h edit.History, path string) {
	m.shown++
	m.open = append(m.open[:m.shown], append([]edit.History{h}, m.open[m.shown:]...)...)
	m.paths = append(m.paths[:m.shown], append([]string{path}, m.paths[m.shown:]...)...)
}

func (m *deskModel) remove(i int) {
	if i == m.shown {
		m.shown = max(i-1, 1-i)
	}
	m.open = append(m.open[:i:i], m.open[i+1:]...)
	m.paths = append(m.paths[:i:i], m.paths[i+1:]...)
	if i < m.shown {
		m.shown--
	}
}

// Whatever is opened, shown, changed, undone, saved and closed in whatever order:
// every lesson has its own steps, its own file and an exact mark of what is unsaved.
func TestAnyUseOfTheDesk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := session.New(renamed("0"), "", nil)
		d := session.NewDesk(s)
		m := &deskModel{open: []edit.History{edit.Begin(renamed("0"))}, paths: []string{""}}
		next := 0
		fresh := func() lesson.Lesson { next++; return renamed(fmt.Sprint(next)) }
		t.Repeat(map[string]func(*rapid.T){
			"open": func(*rapid.T) { l := fresh(); d.Open(l, l.Title); m.put(edit.Begin(l), l.Title) },
			"new":  func(*rapid.T) { l := fresh(); d.OpenUnsaved(l, ""); m.put(edit.BeginUnsaved(l), "") },
			"do": func(*rapid.T) {
				l := fresh()
				s.Do(l.Title, l)
				m.change(func(h edit.History) edit.History { return h.Do(l.Title, l) })
			},
			"undo":  func(*rapid.T) { s.Undo(); m.change(edit.History.Undo) },
			"redo":  func(*rapid.T) { s.Redo(); m.change(edit.History.Redo) },
			"show":  func(t *rapid.T) { i := rapid.IntRange(0, d.Len()-1).Draw(t, "i"); d.Show(i); m.shown = i },
			"draft": func(*rapid.T) { s.Preview(fresh()) },
			"save": func(t *rapid.T) {
				i := rapid.IntRange(0, d.Len()-1).Draw(t, "i")
				d.Saved(d.Paper(i), fmt.Sprint("saved ", i))
				m.open[i], m.paths[i] = m.open[i].Save(), fmt.Sprint("saved ", i)
			},
			"close": func(t *rapid.T) {
				if d.Len() > 1 {
					i := rapid.IntRange(0, d.Len()-1).Draw(t, "i")
					d.Close(i)
					m.remove(i)
				}
			},
			"": func(t *rapid.T) { m.check(t, d, s) },
		})
	})
}

func (m *deskModel) check(t *rapid.T, d *session.Desk, s *session.Session) {
	if d.Len() != len(m.open) || d.Shown() != m.shown {
		t.Fatalf("%d lessons, %d shown, want %d and %d", d.Len(), d.Shown(), len(m.open), m.shown)
	}
	for i, h := range m.open {
		step, _ := h.CanUndo()
		p := d.Paper(i)
		if p.Lesson.Title != h.Lesson().Title || p.Step != step || p.Modified != h.Modified() || p.Path != m.paths[i] {
			t.Fatalf("lesson %d: %q of %q, step %q, modified %v; want %q of %q, %q, %v", i, p.Lesson.Title, p.Path, p.Step, p.Modified,
				h.Lesson().Title, m.paths[i], step, h.Modified())
		}
	}
	if !s.Previewing() && s.Lesson().Title != m.open[m.shown].Lesson().Title {
		t.Fatalf("the session shows %q, want %q", s.Lesson().Title, m.open[m.shown].Lesson().Title)
	}
}
