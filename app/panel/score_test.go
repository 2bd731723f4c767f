package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/edit"
	"homeside/model/game"
	"homeside/model/lesson"
)

// start is a lesson at the first serve of a game between named pairs.
func start() lesson.Lesson {
	p := edit.OrdinaryPlay()
	p.Situation.Call = game.StartCall(game.SideOut)
	l := lesson.Lesson{Plays: []lesson.Play{p}}
	l.Teams[court.Near] = lesson.Team{Name: "Harbour Lane", Starter: 1, Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}}
	l.Teams[court.Far] = lesson.Team{Name: "Fernmoor", Starter: 1, Players: [2]lesson.Player{{Name: "Oskar"}, {Name: "Tilde"}}}
	return l
}

// strip is a score strip that follows its session, as in the window.
func strip(t *testing.T, l lesson.Lesson) (*Score, *session.Session) {
	t.Helper()
	test.NewTempApp(t)
	var p *Score
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = NewScore(s)
	p.Refresh()
	return p, s
}

// said is every text of the row that asks.
func said(o fyne.CanvasObject) string {
	var all []string
	switch o := o.(type) {
	case *widget.Label:
		all = append(all, o.Text)
	case *heard.Button:
		all = append(all, "["+o.Text+"]")
	case *fyne.Container:
		for _, part := range o.Objects {
			if part.Visible() {
				all = append(all, said(part))
			}
		}
	}
	return strings.Join(all, " ")
}

// tap taps the button with this text.
func tap(t *testing.T, o fyne.CanvasObject, text string) {
	t.Helper()
	if !tapped(o, text) {
		t.Fatalf("no button %q in %q", text, said(o))
	}
}

func tapped(o fyne.CanvasObject, text string) bool {
	switch o := o.(type) {
	case *heard.Button:
		if o.Text == text && o.Visible() {
			test.Tap(o)
			return true
		}
	case *fyne.Container:
		for _, part := range o.Objects {
			if tapped(part, text) {
				return true
			}
		}
	}
	return false
}

// Only what is missing is asked, and what is known is not.
func TestScoreAsksOnlyWhatIsMissing(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(l *lesson.Lesson)
		want  string
	}{
		{"all is said", func(*lesson.Lesson) {}, ""},
		{"who started", func(l *lesson.Lesson) { l.Teams[court.Far].Starter = 0 }, "Who served first for Fernmoor in this game? [Oskar] [Tilde]"},
		{"the call", func(l *lesson.Lesson) { l.Plays[0].Situation.Call = game.Call{} }, "Nobody has said the score.  called by  [Set]"},
		{"the call's team", func(l *lesson.Lesson) { l.Plays[0].Situation.Serving = court.Far }, "Ivo serves, but the score is called by the other team.  called by  [Set]"},
	} {
		l := start()
		c.spoil(&l)
		p, _ := strip(t, l)
		if got := said(p.ask); got != c.want {
			t.Errorf("%s: asks %q, want %q", c.name, got, c.want)
		}
	}
}

func TestScoreTakesAnswers(t *testing.T) {
	l := start()
	l.Teams[court.Far].Starter = 0
	p, s := strip(t, l)
	tap(t, p.Box, "Tilde")
	if got := s.Lesson().Teams[court.Far].Starter; got != 2 || said(p.ask) != "" {
		t.Errorf("after Tilde was tapped the starter is %d and %q is asked, want 2 and nothing", got, said(p.ask))
	}
	if got, want := p.sentence.Text, "0-0-2: Ivo serves from the right. Tilde must receive."; !strings.HasPrefix(got, want) {
		t.Errorf("the sentence is %q, want %q first", got, want)
	}
}

// A wrong score gives one line and changes nothing; a right one is taken.
func TestScoreTakesACall(t *testing.T) {
	p, s := strip(t, start())
	tap(t, p.Box, "Score")
	p.call.entry.SetText("12-3-1")
	tap(t, p.ask, "Set")
	if got, want := p.wrong.Text, "Call 12-3-1 is impossible in side-out to 11: 11-3 has ended the game."; got != want || s.Modified() {
		t.Errorf("a wrong call says %q (modified %v), want %q", got, s.Modified(), want)
	}
	p.call.entry.SetText("4-7-1")
	tap(t, p.ask, "Set")
	if play, _ := s.Play(); play.Situation.Call.String() != "4-7-1" || p.wrong.Text != "" || said(p.ask) != "" {
		t.Errorf("after 4-7-1 the play is at %v, said %q, asks %q", play.Situation.Call, p.wrong.Text, said(p.ask))
	}
}

// A game won rally by rally ends: the buttons go and the strip says who won.
func TestScoreCountsToTheEnd(t *testing.T) {
	p, s := strip(t, start())
	for range 11 {
		tap(t, p.Box, "Harbour Lane won the rally")
	}
	if got, want := p.sentence.Text, "The game is over: Harbour Lane won 11-0."; got != want || tapped(p.Box, "Fernmoor won the rally") {
		t.Errorf("after eleven points the strip says %q, want %q and no more buttons", got, want)
	}
	if got := len(s.Lesson().Match.Rallies); got != 11 {
		t.Errorf("the match has %d rallies, want 11", got)
	}
}

// A play at another score leads back to the match.
func TestScoreLeadsBackToTheMatch(t *testing.T) {
	l := start()
	other := l.Plays[0]
	other.Situation.Call = game.Call{Serving: 9, Receiving: 8, Server: 1}
	p, s := strip(t, edit.AddPlay(l, other))
	tap(t, p.Box, "Harbour Lane won the rally")
	s.SelectPlay(1)
	if got, want := said(p.ask), "This play is not at the score of the match. [Back to the match] [Start a match here]"; got != want {
		t.Errorf("at another score the strip says %q, want %q", got, want)
	}
	tap(t, p.ask, "Back to the match")
	if play, _ := s.Play(); play.Situation.Call.String() != "1-0-2" {
		t.Errorf("back at the match the play is at %v, want 1-0-2", play.Situation.Call)
	}
}

// The strip asks for a goal; the sides and their play are one step.
func TestSidesFromAGoal(t *testing.T) {
	p, s := strip(t, start())
	test.Tap(p.sides.button)
	if got := said(p.ask); !strings.Contains(got, "What do you want from your sides?") || len(p.sides.goals) != 14 {
		t.Fatalf("the strip asks %q with %d goals, want the sides with seven for each pair", got, len(p.sides.goals))
	}
	p.sides.goal.SetSelected("Harbour Lane: Ivo on the left")
	play, _ := s.Play()
	if got, want := play.Title, "0-0-2: stack, Ivo serves from the right"; got != want || s.Lesson().Player(game.Near1).Serving != lesson.WantLeft {
		t.Errorf("the goal opens %q and Ivo wants %v, want %q and the left", got, s.Lesson().Player(game.Near1).Serving, want)
	}
	if strings.Contains(said(p.ask), "What do you want") || !strings.Contains(p.sentence.Text, "Ivo left, Mara right") {
		t.Errorf("afterwards the strip asks %q and says %q, want nothing asked and the wanted sides", said(p.ask), p.sentence.Text)
	}
	test.Tap(p.sides.button)
	test.Tap(p.change) // the score instead
	if got := said(p.ask); strings.Contains(got, "What do you want") || !strings.Contains(got, "called by") {
		t.Errorf("with the score being changed the strip asks %q", got)
	}
}
