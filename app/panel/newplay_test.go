package panel

import (
	"errors"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
)

// newPlay is the chooser of a lesson's first score, its session, and whether
// there is a play to insert.
func newPlay(t *testing.T, l lesson.Lesson) (*NewPlay, *session.Session, *bool) {
	t.Helper()
	test.NewTempApp(t)
	s := session.New(l, "", nil)
	var ready bool
	p, err := NewNewPlay(s, func(hindered string) { ready = hindered == "" })
	if err != nil {
		t.Fatal(err)
	}
	return p, s, &ready
}

// Every kind has its title, a line and a small court; the near pair's stack is
// chosen, and the verdict stands below.
func TestNewPlayShowsEveryKind(t *testing.T) {
	p, _, ready := newPlay(t, start())
	for i, want := range []string{"Ordinary places", "Stack", "Switch", "Stay", "Poach"} {
		c := p.Gallery.cards[i]
		if c.title.Text != want || c.text.Text == "" || c.picture.Image == nil || c.choice.Refused {
			t.Errorf("card %d: %q, %q, a picture %v, refused %v; want %q with a line and a picture", i, c.title.Text, c.text.Text, c.picture.Image != nil, c.choice.Refused, want)
		}
	}
	if i, ok := p.Gallery.Chosen(); !ok || formation.Kinds[i] != lesson.Stacked || !*ready {
		t.Errorf("card %d is chosen (%v), ready %v; want the stack", i, ok, *ready)
	}
	if got, want := strings.Join(p.who.Options, "; "), "Harbour Lane: Ivo serves; Fernmoor: Oskar receives"; got != want || p.who.Selected != p.who.Options[0] {
		t.Errorf("asks whose formation it is: %q, %q chosen; want %q, the first", got, p.who.Selected, want)
	}
	for _, want := range []string{"In time.", "Ivo in front", "shows before the serve"} {
		if !strings.Contains(p.said.Text, want) {
			t.Errorf("of the stack it says %q, want %q in it", p.said.Text, want)
		}
	}
}

// What is chosen is what comes in: pair, serve, walk and kind.
func TestNewPlayInserts(t *testing.T) {
	for _, c := range []struct {
		pair  int
		serve formation.ServeTo
		walk  bool
		kind  formation.Kind
	}{
		{0, formation.ServeMiddle, false, lesson.Switched},
		{1, formation.ServeWide, false, lesson.Stacked},
		{1, formation.ServeTee, true, lesson.Poached},
	} {
		p, s, _ := newPlay(t, start())
		p.who.SetSelected(p.who.Options[c.pair])
		p.serve.SetSelectedIndex(int(c.serve))
		p.walk.SetChecked(c.walk)
		p.Gallery.Choose(numberOf(c.kind))
		if err := p.Insert(); err != nil {
			t.Fatal(err)
		}
		w, ok := s.Written()
		if !ok || w.Kind != c.kind || w.Situation.Team != court.Ends[c.pair] || w.Situation.Serve != c.serve || (w.Situation.Places != nil) != c.walk {
			t.Errorf("%+v inserts %v of the %v team, serve %v, walk %v (%v)", c, w.Kind, w.Situation.Team, w.Situation.Serve, w.Situation.Places != nil, ok)
		}
		if s.PlayIndex() != 1 || len(s.Lesson().Plays) != 2 {
			t.Errorf("%+v: play %d of %d is shown, want 1 of 2", c, s.PlayIndex(), len(s.Lesson().Plays))
		}
	}
}

// A kind that makes no sense says why with the players' names, cannot be chosen
// and is not inserted; the chooser then begins with ordinary places.
func TestNewPlayRefuses(t *testing.T) {
	l := start()
	l.Teams[court.Near].Players[0].Serving = lesson.WantRight
	p, s, _ := newPlay(t, l)
	stack := p.Gallery.cards[numberOf(lesson.Stacked)]
	if got, want := stack.text.Text, "Ivo already stands on the right, where Ivo wants to be: no need to stack."; got != want || stack.picture.Image != nil {
		t.Errorf("the stack says %q with a picture %v, want %q without", got, stack.picture.Image != nil, want)
	}
	test.Tap(stack)
	if i, _ := p.Gallery.Chosen(); formation.Kinds[i] != lesson.Ordinary {
		t.Errorf("after a tap on the refused stack %v is chosen, want ordinary places", formation.Kinds[i])
	}
	if err := p.Insert(); err != nil || s.Lesson().Plays[1].Front != nil {
		t.Errorf("Insert = %v with %+v in front, want ordinary places", err, s.Lesson().Plays[1].Front)
	}
}

// When all kinds are refused there is nothing to insert.
func TestNewPlayWithNothingToInsert(t *testing.T) {
	l := start()
	for i := range l.Teams[court.Near].Players {
		l.Teams[court.Near].Players[i].Serving = lesson.WantLeft
	}
	p, s, ready := newPlay(t, l)
	if err := p.Insert(); err != nil || *ready || s.Modified() {
		t.Errorf("with both on one side: Insert = %v, ready %v, modified %v; want nil, false, false", err, *ready, s.Modified())
	}
	p.who.SetSelected(p.who.Options[1])
	p.Gallery.Choose(numberOf(lesson.Stacked))
	if !*ready {
		t.Error("the other pair's stack cannot be inserted")
	}
}

// Without a score there is no chooser.
func TestNewPlayNeedsAScore(t *testing.T) {
	l := start()
	l.Plays[0].Situation.Call = game.Call{}
	if _, err := NewNewPlay(session.New(l, "", nil), func(string) {}); !errors.Is(err, session.ErrNoScore) {
		t.Errorf("NewNewPlay without a score: %v, want %v", err, session.ErrNoScore)
	}
}

// The arrow keys go from card to card past those refused; Enter accepts.
func TestGalleryKeys(t *testing.T) {
	test.NewTempApp(t)
	g := NewGallery(4, CardSize{})
	g.Show([]Choice{{Title: "a"}, {Title: "b", Refused: true}, {Title: "c"}})
	var log []string
	g.OnChosen = func(i int) { log = append(log, g.cards[i].title.Text) }
	g.OnAccept = func() { log = append(log, "accept") }
	at := 0
	for _, k := range []fyne.KeyName{fyne.KeySpace, fyne.KeyRight, fyne.KeyDown, fyne.KeyReturn, fyne.KeyLeft, fyne.KeyUp} {
		g.cards[at].TypedKey(&fyne.KeyEvent{Name: k})
		at, _ = g.Chosen()
	}
	if got, want := strings.Join(log, " "), "a c accept a"; got != want {
		t.Errorf("the keys do %q, want %q", got, want)
	}
	g.Show([]Choice{{Title: "a", Refused: true}})
	if i, ok := g.Chosen(); ok {
		t.Errorf("card %d is still chosen though it is refused", i)
	}
}
