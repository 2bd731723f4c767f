package app

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"homeside/export/handout"
	"homeside/model/roster"
)

// The form asks for what its sheet is made of: plays, or pairs for cards.
func TestHandoutForm(t *testing.T) {
	test.NewTempApp(t)
	open := []roster.Pair{{Name: "a"}, {Name: "b"}, {Name: "c"}}
	f := newHandoutForm(open)
	for i, s := range handout.Sheets {
		f.sheet.SetSelectedIndex(i)
		if got := f.chosen().Name; got != s.Name || f.plays.Disabled() != s.Cards || f.pairs.Disabled() == s.Cards || !strings.HasPrefix(f.about.Text, s.About()) || strings.Contains(f.about.Text, "no plays") != s.Cards || strings.Contains(f.about.Text, "no pairs") == s.Cards {
			t.Errorf("sheet %d: chosen %q, plays off %v, pairs off %v, says %q", i, got, f.plays.Disabled(), f.pairs.Disabled(), f.about.Text)
		}
	}
	if o := f.options(2); o.Paper != handout.A4 || o.Plays != nil || o.Pairs != nil {
		t.Errorf("options at first: %+v, want all plays and the lesson's pairs on A4", o)
	}
	f.plays.SetSelectedIndex(1)
	f.paper.SetSelectedIndex(1)
	f.pairs.SetSelectedIndex(1)
	if o := f.options(2); o.Paper != handout.Letter || len(o.Plays) != 1 || o.Plays[0] != 2 || len(o.Pairs) != 3 {
		t.Errorf("options chosen: %+v, want the play shown and the roster on Letter", o)
	}
	if n := len(newHandoutForm(nil).pairs.Options); n != 1 {
		t.Errorf("%d choices of pairs without a roster, want 1", n)
	}
}
