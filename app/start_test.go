package app

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lessonfile"
	"homeside/model/roster"
	"homeside/words"
)

// Without a lesson the window begins with the start page; what is opened there
// takes its place, and closing the last lesson brings it back.
func TestTheStartPageComesAndGoes(t *testing.T) {
	b := newBench(t)
	if !b.start.Shown() || b.editing.Shown() {
		t.Fatal("without a lesson the start page is not shown")
	}
	b.press(onCourt, &fyne.KeyEvent{Name: fyne.KeyEscape})
	if !b.start.Shown() {
		t.Error("Escape leaves a start page that has nothing to go back to")
	}
	b.newLesson()
	if b.start.Shown() || !b.editing.Shown() || b.desk.Len() != 1 {
		t.Errorf("a new lesson leaves the start page shown: %v, %d open", b.start.Shown(), b.desk.Len())
	}
	b.openStart()
	b.press(onCourt, &fyne.KeyEvent{Name: fyne.KeyEscape})
	if b.start.Shown() {
		t.Error("Escape does not go back to the lesson")
	}
	b.closeLesson(0)
	if !b.start.Shown() {
		t.Error("without a lesson left the start page is not shown")
	}
	with := newBench(t, lessonFile(t, "a"))
	if with.start.Shown() {
		t.Error("a lesson was asked for and the start page is shown")
	}
}

// A pair that has described itself sees its play, unsaved, and the guide beside
// it: once.
func TestDrawingTheFirstPlay(t *testing.T) {
	b := newBench(t)
	b.start.Describe("Ana", "Luis")
	b.start.Take()
	l := b.session.Lesson()
	if b.start.Shown() || l.Title != "Ana and Luis" || l.Player(game.Near2).Initials != "Lu" || !b.session.Modified() {
		t.Errorf("drawn: %q with %+v, modified %v", l.Title, l.Player(game.Near2), b.session.Modified())
	}
	if b.guide.at != 0 {
		t.Errorf("the guide is at %d, want its first step", b.guide.at)
	}
	b.guide.end()
	b.openStart()
	b.start.Take()
	if b.guide.at >= 0 {
		t.Error("the guide is shown a second time")
	}
	b.showGuide()
	if b.guide.at != 0 {
		t.Error("asked for, the guide is not shown")
	}
}

// The guide goes on when the person does what a step asks for, and only then.
func TestTheGuideFollowsThePerson(t *testing.T) {
	b := newBench(t, lessonFile(t, "a"))
	b.showGuide()
	for _, c := range []struct {
		do   func()
		want int
	}{
		{b.session.NextEvent, 0},
		{b.session.TogglePlay, 1},
		{func() { b.trace.say(`step "" modified=true`) }, 1},
		{func() { b.rename("x") }, 2},
		{b.undo, 3},
		{func() { b.guide.next.OnTapped() }, 4},
		{func() { b.trace.say("exported clip.mp4") }, 5},
		{func() { b.guide.next.OnTapped() }, -1},
	} {
		c.do()
		if b.guide.at != c.want {
			t.Errorf("the guide is at %d, want %d", b.guide.at, c.want)
		}
	}
	if !strings.Contains(b.Editor.guide.text.Text, "That is all") || b.guide.layer.Visible() {
		t.Error("the guide has not ended with its last step")
	}
}

// Whoever opens the page of exports by himself is met there.
func TestTheGuideMeetsWhoIsAhead(t *testing.T) {
	b := newBench(t, lessonFile(t, "a"))
	b.showGuide()
	b.askExport()
	if b.guide.at != exportStep {
		t.Errorf("with the page of exports open the guide is at %d, want %d", b.guide.at, exportStep)
	}
	b.exports.Close()
	if b.guide.at != exportStep {
		t.Errorf("with the page closed again the guide is at %d, want %d", b.guide.at, exportStep)
	}
}

// The guide's box stands within the window, wherever its control is.
func TestBeside(t *testing.T) {
	box, window := fyne.NewSize(300, 150), fyne.NewSize(1000, 700)
	for _, c := range []struct {
		on     side
		corner fyne.Position
		of     fyne.Size
		want   fyne.Position
	}{
		{above, fyne.NewPos(40, 600), fyne.NewSize(60, 30), fyne.NewPos(40, 406)},
		{above, fyne.NewPos(900, 600), fyne.NewSize(60, 30), fyne.NewPos(700, 406)},
		{above, fyne.NewPos(300, 50), fyne.NewSize(600, 500), fyne.NewPos(590, 60)},
		{above, fyne.NewPos(0, 0), fyne.NewSize(60, 30), fyne.NewPos(0, 10)},
		{above, fyne.NewPos(0, 900), fyne.NewSize(60, 30), fyne.NewPos(0, 550)},
		{leftOf, fyne.NewPos(700, 50), fyne.NewSize(300, 200), fyne.NewPos(390, 50)},
		{leftOf, fyne.NewPos(200, 50), fyne.NewSize(300, 200), fyne.NewPos(190, 60)},
		{below, fyne.NewPos(690, 200), fyne.NewSize(300, 36), fyne.NewPos(690, 366)},
		{below, fyne.NewPos(0, 60), fyne.NewSize(240, 500), fyne.NewPos(0, 70)},
	} {
		if got := beside(c.on, c.corner, c.of, box, window); got != c.want {
			t.Errorf("beside(%v, %v, %v) = %v, want %v", c.on, c.corner, c.of, got, c.want)
		}
	}
}

// Over the start page a new play is written for players who have names; without one
// the page is still there.
func TestNewPlayOverTheStartPage(t *testing.T) {
	b := newBench(t)
	b.askNewPlay()
	if s, err := b.session.Situation(session.Request{}); err != nil || words.PairAt(s) != "The near team: Player A serves" {
		t.Errorf("the chooser's pair is %q (%v), want one with a name", words.PairAt(s), err)
	}
	b.question().first()
	if !b.start.Shown() || b.editing.Shown() || b.desk.Len() != 1 {
		t.Errorf("cancelled, the start page is gone, or there are %d lessons", b.desk.Len())
	}
	b.start.Describe("Ana", "Luis")
	b.askNewPlay()
	b.question().enter()
	l := b.session.Lesson()
	if p, ok := b.session.Play(); !ok || b.start.Shown() || !b.editing.Shown() || l.Title != "Ana and Luis" || l.NameOf(game.Near1) != "Ana" || l.NameOf(game.Far2) != "Player D" {
		t.Errorf("inserted: play %q of %q, start page shown %v, near1 is %q, far2 %q", p.Title, l.Title, b.start.Shown(), l.NameOf(game.Near1), l.NameOf(game.Far2))
	}
}

// What is begun over the start page is played at the score that is said there, served
// by the team and led by the player named.
func TestTheFirstPlayIsAtTheScoreSaid(t *testing.T) {
	for name, begin := range map[string]func(b *bench){
		"new play":     func(b *bench) { b.askNewPlay(); b.question().enter() },
		"empty lesson": func(b *bench) { b.newLesson() },
	} {
		for _, returns := range []bool{false, true} {
			b := newBench(t)
			b.start.Describe("Ana", "Luis")
			said := b.start.Named()
			said["start-call"].(*heard.Entry).SetText("4-7-1")
			said["start-serving"].(*panel.Dropdown).SetSelectedIndex(map[bool]int{false: 0, true: 1}[returns])
			said["start-lead"].(*panel.Dropdown).SetSelectedIndex(1)
			begin(b)
			p, _ := b.session.Play()
			state, err := b.session.ScoreState()
			s := formation.Situation{State: state, Team: court.Near}
			if err != nil || p.Situation.Call.String() != "4-7-1" || s.Serves() == returns || s.Lead() != game.Near2 || b.session.Lesson().NameOf(game.Near2) != "Luis" || !b.session.Modified() {
				t.Errorf("%s, returns %v: %q at %v, the pair serves %v led by %v (%v)", name, returns, p.Title, p.Situation.Call, s.Serves(), s.Lead(), err)
			}
		}
	}
}

// While the form says nothing, a new lesson is of nobody, with nothing to save.
func TestANewLessonOfNobody(t *testing.T) {
	b := newBench(t)
	b.newLesson()
	if l := b.session.Lesson(); l.Title != "New lesson" || b.session.Modified() {
		t.Errorf("begun: %q, modified %v; want a new lesson, not modified", l.Title, b.session.Modified())
	}
}

// A roster that the window begins with is seen; closed, its page leads to the start
// page.
func TestBeginningWithARoster(t *testing.T) {
	path := filepath.Join(t.TempDir(), "pairs.json")
	var data bytes.Buffer
	if err := errors.Join(lessonfile.WriteRoster(&data, roster.Roster{Title: "Tuesday"}), os.WriteFile(path, data.Bytes(), 0o600)); err != nil {
		t.Fatal(err)
	}
	b := newBench(t, path)
	if !b.plan.Shown() || b.start.Shown() || b.pairs.path != path {
		t.Errorf("begun with a roster the pairs are shown %v, the start page %v, the roster is %q", b.plan.Shown(), b.start.Shown(), b.pairs.path)
	}
	if b.plan.Close(); !b.start.Shown() {
		t.Error("without a lesson the pairs do not lead to the start page")
	}
}

// A page opened over the start page leads back to it, a dialog leaves it alone.
func TestPagesLeadBackToTheStartPage(t *testing.T) {
	b := newBench(t)
	for name, visit := range map[string]func(){
		"match plan": func() { b.openMatchPlan(); b.plan.Close() },
		"reels":      func() { b.openReels(); b.reels.Close() },
		"finder":     func() { b.findCommand(); b.question().first() },
		"compare":    b.askCompare,
	} {
		if visit(); !b.start.Shown() || b.editing.Shown() {
			t.Errorf("%s: the start page is gone", name)
		}
	}
}

// What was said of the start page goes with it.
func TestALessonOpensWithoutTheStartPagesLine(t *testing.T) {
	b := newBench(t)
	b.wait()
	b.askExport()
	if got, want := b.status.Text, "There is no play to export."; got != want {
		t.Fatalf("over the start page the export says %q, want %q", got, want)
	}
	b.open(lessonFile(t, "a"))
	b.wait()
	if got := b.status.Text; got != b.idleLine() {
		t.Errorf("over the lesson stands %q, want %q", got, b.idleLine())
	}
}

// That lessons are still open is said only where some are.
func TestWhatIsStillOpen(t *testing.T) {
	b := newBench(t)
	b.wait()
	if got := b.stillOpen(); got != "" {
		t.Errorf("with no lesson open it says %q", got)
	}
	b.open(lessonFile(t, "a"))
	b.wait()
	if got := b.stillOpen(); got == "" {
		t.Error("with a lesson open nothing is said of it")
	}
}
