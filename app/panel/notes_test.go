package panel

import (
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/app/session"
)

func TestNotesFollowThePlay(t *testing.T) {
	test.NewTempApp(t)
	s := session.New(lettered("ab"), "", nil)
	p := NewNotes(s, nil)
	s.DescribePlay(session.Described{Title: "a", Notes: "Walk it first.", Tags: []string{"stack", "serve"}})
	p.Refresh()
	if p.notes.Text != "Walk it first." || p.tags.Text != "stack, serve" {
		t.Errorf("the card says %q, %q", p.notes.Text, p.tags.Text)
	}
	s.DescribePlay(session.Described{Title: "a"})
	p.Refresh()
	if p.notes.Text != "No notes yet." || p.tags.Visible() {
		t.Errorf("without notes and tags the card says %q, tags shown %v", p.notes.Text, p.tags.Visible())
	}
}
