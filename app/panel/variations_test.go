package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"homeside/app/looks"
	"homeside/app/session"
	"homeside/app/settings"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/words"
)

// switched is a session that shows a written switch on the return.
func switched(t *testing.T) (*session.Session, formation.Written) {
	t.Helper()
	test.NewTempApp(t)
	s := session.New(start(), "", nil)
	w, err := s.WriteFormation(session.Request{Kind: lesson.Switched, Returns: true})
	if err != nil {
		t.Fatal(err)
	}
	if err := s.InsertWritten(w); err != nil {
		t.Fatal(err)
	}
	return s, w
}

// Each change is a card that says who takes the ball and inserts its play.
func TestWhatIf(t *testing.T) {
	s, w := switched(t)
	v, err := NewWhatIf(w, court.Surface)
	if err != nil {
		t.Fatal(err)
	}
	for i, change := range formation.Changes {
		c := v.Gallery.cards[i]
		if !strings.EqualFold(c.title.Text, change.String()) || !strings.HasSuffix(c.text.Text, " takes it.") || c.picture.Image == nil {
			t.Errorf("card %d says %q, %q with a picture %v; want %q and who takes it", i, c.title.Text, c.text.Text, c.picture.Image != nil, change)
		}
		v.Gallery.Choose(i)
		if !strings.Contains(v.said.Text, " to spare") && !strings.Contains(v.said.Text, " late") {
			t.Errorf("of %v it says %q, want whether the pair is in time", change, v.said.Text)
		}
		if _, plays := v.Chosen(); len(plays) != 1 || !strings.HasSuffix(plays[0].Title, change.String()) {
			t.Errorf("card %d inserts %d plays, want the one of %q", i, len(plays), change)
		}
	}
	step, plays := v.All()
	if err := s.InsertPlays(step, plays...); err != nil || len(s.Lesson().Plays) != 2+len(formation.Changes) {
		t.Errorf("all: %v with %d plays, want %d", err, len(s.Lesson().Plays), 2+len(formation.Changes))
	}
}

// A card's title is clear of what stands below it, in either language, in letters of
// either size.
func TestTitlesOfWhatIfAreClear(t *testing.T) {
	defer words.Speak(words.English)
	_, w := switched(t)
	for _, l := range []words.Language{words.English, words.Spanish} {
		for _, large := range []bool{false, true} {
			words.Speak(l)
			fyne.CurrentApp().Settings().SetTheme(looks.Of(settings.Settings{LargeText: large}))
			v, err := NewWhatIf(w, court.Surface)
			if err != nil {
				t.Fatal(err)
			}
			v.Gallery.Box.Resize(fyne.NewSize(1280, 720))
			for _, c := range v.Gallery.cards {
				test.WidgetRenderer(c).Layout(c.Size())
				if room := c.text.Position().Y - c.title.Position().Y + theme.InnerPadding(); c.title.MinSize().Height > room { // of air under its last line
					t.Errorf("%s, large %v: %q is %v high and has %v", l.Tag(), large, c.title.Text, c.title.MinSize().Height, room)
				}
			}
		}
	}
}

// A mistake comes in as a pair, the play as it should be second.
func TestMistakes(t *testing.T) {
	_, w := switched(t)
	v, err := NewMistakes(w, court.Surface)
	if err != nil {
		t.Fatal(err)
	}
	v.Gallery.Choose(0)
	_, plays := v.Chosen()
	if len(plays) != 2 || !strings.Contains(plays[0].Title, "as it was") || !strings.HasSuffix(plays[1].Title, "as it should be") {
		t.Fatalf("a mistake inserts %d plays, want as it was and as it should be", len(plays))
	}
	if got, want := v.Gallery.cards[0].title.Text, "Both end on one side"; got != want {
		t.Errorf("the first card says %q, want %q", got, want)
	}
	if _, all := v.All(); len(all) != 8 { // all but the servers' own mistake
		t.Errorf("all mistakes insert %d plays, want 8", len(all))
	}
}

// While two plays are compared the tell stands in a sentence; it goes with them.
func TestTellIsSaid(t *testing.T) {
	s, _ := switched(t)
	p := NewTell(s)
	if p.Text() != "" {
		t.Errorf("with no play compared it says %q", p.Text())
	}
	s.Compare(0)
	p.Refresh()
	if !strings.HasPrefix(p.Text(), "Beside play 1: ") || !strings.Contains(p.Text(), "'s place shows ") {
		t.Errorf("compared with the play drawn by hand it says %q, want who shows it", p.Text())
	}
	if got, want := p.needs.Selected, "0.40 s"; got != want {
		t.Errorf("opponents need %q, want %q", got, want)
	}
	before := s.Revision()
	p.needs.SetSelectedIndex(3)
	if s.Revision() == before {
		t.Error("choosing what opponents need changes nothing")
	}
	tap(t, p.Box, "Stop comparing")
	p.Refresh()
	if p.Text() != "" {
		t.Errorf("after stopping it says %q", p.Text())
	}
}

// The picker lists the other plays, those at the score of the play shown first.
func TestPlayPicker(t *testing.T) {
	l := start()
	other := l.Plays[0]
	other.Situation.Call.Serving = 3
	l.Plays = append(l.Plays, other, l.Plays[0])
	test.NewTempApp(t)
	s := session.New(l, "", nil)
	var picked []int
	p := NewPlayPicker(s, func(i int) { picked = append(picked, i) }, func() { picked = append(picked, -1) })
	p.List.Select(0)
	p.List.Select(1)
	if len(picked) != 2 || picked[0] != 2 || picked[1] != 1 {
		t.Errorf("the rows pick plays %v, want 2 and then 1", picked)
	}
}
