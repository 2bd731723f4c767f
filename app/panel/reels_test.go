package panel

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
)

// reelPage is the page of reels of a lesson of two plays, in a window.
func reelPage(t *testing.T) (*Reels, *session.Session) {
	t.Helper()
	l := lessontest.Long(2)
	l.Reels = nil
	var p *Reels
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = NewReels(s, ReelEvents{})
	w := test.NewTempApp(t).NewWindow("")
	w.SetContent(p.Box)
	w.Resize(fyne.NewSize(1280, 800))
	p.Open()
	return p, s
}

func (p *Reels) tap(name string) { test.Tap(p.named[name].(fyne.Tappable)) }

func TestReelIsFitted(t *testing.T) {
	p, s := reelPage(t)
	if p.worked.Visible() || !p.none.Visible() {
		t.Error("a lesson without reels shows a reel")
	}
	p.seconds.SetText("40")
	p.tap("reel-fit")
	if got := float64(s.SolvedReel().Length()); got < 39.98 || got > 40.02 || !strings.Contains(p.line.Text, "0:40.0") {
		t.Errorf("fitted to 40 s the reel lasts %v, and the page says %q", got, p.line.Text)
	}
	before := s.Revision()
	for text, want := range map[string]string{"2": "Too short", "9999": "want 1 to 3600 seconds", "soup": "want 1 to 3600 seconds"} {
		p.seconds.SetText(text)
		p.tap("reel-fit")
		if !strings.Contains(p.line.Text, want) || s.Revision() != before {
			t.Errorf("fitted to %q the page says %q, want %q and no change", text, p.line.Text, want)
		}
	}
}

func TestTakeIsChanged(t *testing.T) {
	p, s := reelPage(t)
	p.tap("reel-new")
	p.take.camera.SetSelectedIndex(int(lesson.Follow))
	p.take.player.SetSelectedIndex(int(game.Far1))
	p.take.speed.SetSelectedIndex(2)
	p.take.loops.SetSelectedIndex(1)
	p.take.beside.SetSelectedIndex(2)
	p.take.across.SetText("15")
	p.take.across.commit()
	p.take.caption.SetText("Look")
	p.take.caption.commit()
	take, _ := s.Take()
	want := lesson.Take{Play: 1, Beside: 2, Speed: 0.5, Loops: 2, Camera: lesson.Camera{Kind: lesson.Follow, Player: game.Far1, Width: 15}, Caption: "Look"}
	if take.Camera != want.Camera || take.Beside != want.Beside || take.Speed != want.Speed || take.Loops != want.Loops || take.Caption != want.Caption {
		t.Errorf("the take is %+v, want %+v", take, want)
	}
	p.take.across.SetText("3")
	p.take.across.commit()
	if again, _ := s.Take(); again.Camera.Width != 15 || !strings.Contains(p.line.Text, "want 8 to 100 feet") {
		t.Errorf("3 ft across gives %v ft and %q, want it refused", again.Camera.Width, p.line.Text)
	}
	if problems := lesson.Validate(s.Lesson()); problems != nil {
		t.Errorf("Validate = %v", problems)
	}
}

func TestSlowsAndFreezesAreChanged(t *testing.T) {
	p, s := reelPage(t)
	p.tap("reel-new")
	test.Tap(p.take.slow)
	p.take.slowAt.SetSelectedIndex(5)
	p.preview.seek(s.SolvedReel().Takes[0].Start + 1)
	p.tap("reel-freeze")
	row := p.take.rows[0]
	row.seconds.SetText("3,5")
	row.seconds.commit()
	row.caption.SetText("Here")
	row.caption.commit()
	take, _ := s.Take()
	if len(take.Slows) != 1 || take.Slows[0].Speed != 0.1 {
		t.Errorf("slow stretches %+v, want one at 0.1", take.Slows)
	}
	if len(take.Freezes) != 1 || take.Freezes[0].Length != 3.5 || take.Freezes[0].Caption != "Here" {
		t.Errorf("freezes %+v, want one of 3.5 s that says Here", take.Freezes)
	}
	p.preview.seek(0) // on the title card
	p.tap("reel-freeze")
	if again, _ := s.Take(); len(again.Freezes) != 1 {
		t.Errorf("a freeze was added at a moment of the title card: %+v", again.Freezes)
	}
	test.Tap(p.take.slow)
	if again, _ := s.Take(); len(again.Slows) != 0 {
		t.Errorf("slow stretches %+v, want none", again.Slows)
	}
}

func TestRunningOrder(t *testing.T) {
	p, s := reelPage(t)
	p.tap("reel-new")
	p.tap("take-copy")
	s.SelectPlay(1)
	p.tap("take-add")
	p.tap("take-left")
	r, _ := s.Reel()
	if got := []int{r.Takes[0].Play, r.Takes[1].Play, r.Takes[2].Play}; got[0] != 1 || got[1] != 2 || got[2] != 1 {
		t.Errorf("the takes are of plays %v, want 1 2 1", got)
	}
	p.tap("take-delete")
	test.Tap(p.strip.cards[0])
	if s.ReelPick() != session.TitleCard || !p.card.box.Visible() || p.take.box.Visible() {
		t.Errorf("the first place picks %d, want the title card with its form", s.ReelPick())
	}
	p.card.heading.SetText("Hello")
	p.card.heading.commit()
	if r, _ := s.Reel(); r.Title.Heading != "Hello" || len(r.Takes) != 2 {
		t.Errorf("the reel has title %q and %d takes, want Hello and 2", r.Title.Heading, len(r.Takes))
	}
	p.corner.SetSelectedIndex(int(lesson.BottomRight))
	if r, _ := s.Reel(); r.Logo != lesson.BottomRight {
		t.Errorf("the logo stands %v, want bottom right", r.Logo)
	}
}
