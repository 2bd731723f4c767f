package panel

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/heard"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/plan"
)

// heardStart is what a start page asked of its window.
type heardStart struct {
	drawn, opened []lesson.Lesson
	recent        []string
}

func newTestStart(t *testing.T) (*Start, *heardStart) {
	t.Helper()
	test.NewTempApp(t)
	h := &heardStart{}
	p := NewStart([]lesson.Lesson{lettered("a"), lettered("bc")}, StartEvents{
		Draw: func(l lesson.Lesson) { h.drawn = append(h.drawn, l) }, BuiltIn: func(l lesson.Lesson) { h.opened = append(h.opened, l) },
		Recent: func(path string) { h.recent = append(h.recent, path) }, Brief: func(path string) string { return path }, Painted: func() {},
	})
	p.Open([]string{"/a/one.json", "/a/two.json"}, false)
	return p, h
}

// What a pair says is what its first play is written from.
func TestThePairFormSaysThePair(t *testing.T) {
	p, h := newTestStart(t)
	f := p.form
	p.Describe("Ana María", "Luis")
	f.who[1].hand.SetSelectedIndex(int(lesson.LeftHanded))
	f.who[0].legs.SetSelectedIndex(3) // 65 and over
	f.who[1].timed.SetText("1,9")
	f.serving.SetSelectedIndex(1)
	f.call.SetText("4-7-2")
	f.lead.SetSelectedIndex(1)
	s, err := f.Start()
	if err != nil {
		t.Fatal(err)
	}
	if s.Call != "4-7-2" || !s.Returns || s.Lead != 2 || s.Goal != plan.ForehandsMiddle || s.About != 0 {
		t.Errorf("the form says %+v", s)
	}
	ana, luis := s.Players[0], s.Players[1]
	if ana.Name != "Ana María" || ana.Initials != "AM" || ana.Legs() != movement.Presets[3].Pace || ana.Hand != lesson.RightHanded {
		t.Errorf("the first player is %+v", ana)
	}
	timed, err := movement.DefaultPace().Calibrated(movement.Timing{Distance: stopwatchDistance.Metres(), Time: 1.9})
	if err != nil || luis.Hand != lesson.LeftHanded || luis.Legs() != timed {
		t.Errorf("the second player is %+v, want a left-hander with %+v (%v)", luis, timed, err)
	}
	if f.lead.Options[1] != "Luis" || f.does.Text != "receives." {
		t.Errorf("the sentence says %q %s, want Luis receives.", f.lead.Options[1], f.does.Text)
	}
	p.take()
	if len(h.drawn) != 1 || h.drawn[0].Plays[0].Situation.Call.String() != "4-7-2" || h.drawn[0].Player(game.Near2).Name != "Luis" {
		t.Errorf("drawn %d lessons, want one of Luis at 4-7-2", len(h.drawn))
	}
}

// What cannot be is said in a line, and nothing can be drawn from it.
func TestTheStartPageSaysWhatIsWrong(t *testing.T) {
	p, h := newTestStart(t)
	for _, c := range []struct {
		set  func()
		want string
	}{
		{func() { p.form.call.SetText("4-7") }, "server"},
		{func() { p.form.call.SetText("0-0-2"); p.form.who[0].timed.SetText("fast") }, "fast"},
	} {
		c.set()
		if !p.draw.Disabled() || !p.wrong.Visible() || !strings.Contains(p.wrong.Text, c.want) || p.small.Image != nil {
			t.Errorf("draw disabled %v, said %q, want a line with %q", p.draw.Disabled(), p.wrong.Text, c.want)
		}
		p.take()
	}
	p.form.who[0].timed.SetText("")
	if p.draw.Disabled() || p.wrong.Visible() || p.small.Image == nil || p.said.Text == "" {
		t.Errorf("put right: draw disabled %v, still said %q", p.draw.Disabled(), p.wrong.Text)
	}
	if len(h.drawn) != 0 {
		t.Error("something was drawn from what cannot be")
	}
}

// The goal chosen stays chosen when names and hands change around it.
func TestTheGoalStays(t *testing.T) {
	p, _ := newTestStart(t)
	hide := slices.IndexFunc(p.form.goals, func(g goalChoice) bool { return g.goal == plan.Hide && about(g) == 2 })
	p.form.goal.SetSelectedIndex(hide)
	p.Describe("Ana", "Luis")
	p.form.who[0].hand.SetSelectedIndex(int(lesson.LeftHanded))
	if s, err := p.form.Start(); err != nil || s.Goal != plan.Hide || s.About != 2 || !strings.Contains(p.form.goal.Selected, "Luis") {
		t.Errorf("the goal is %v about %d, shown as %q (%v), want hide about Luis", s.Goal, s.About, p.form.goal.Selected, err)
	}
}

// A tap on a picture opens that lesson; a recent one opens by its path.
func TestOpeningFromTheStartPage(t *testing.T) {
	p, h := newTestStart(t)
	test.Tap(p.gallery.cards[1])
	if len(h.opened) != 1 || len(h.opened[0].Plays) != 2 {
		t.Errorf("opened %d lessons, want the second", len(h.opened))
	}
	if got := len(p.recent.Objects); got != 2 {
		t.Errorf("%d recent lessons are listed, want 2", got)
	}
	test.Tap(p.recent.Objects[1].(*fyne.Container).Objects[0].(*heard.Button))
	if !slices.Equal(h.recent, []string{"/a/two.json"}) {
		t.Errorf("opened %v, want the second recent lesson", h.recent)
	}
	p.Open(nil, true)
	if len(p.recent.Objects) != 1 || !p.CanClose() {
		t.Errorf("without recent lessons %d lines, can close %v; want a line that says so, and a way back", len(p.recent.Objects), p.CanClose())
	}
}
