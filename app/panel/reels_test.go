package panel

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
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

// A take that is picked is scrolled into sight, and what was said of one reel is not
// left standing over another.
func TestPickedTakeIsInSight(t *testing.T) {
	p, s := reelPage(t)
	p.tap("reel-new")
	for range 10 {
		p.tap("take-add")
	}
	strip := p.strip.box
	inSight := func() bool {
		c := p.strip.cards[p.strip.place(s.ReelPick(), 11)]
		return c.Position().X >= strip.Offset.X && c.Position().X+c.Size().Width <= strip.Offset.X+strip.Size().Width+1
	}
	if strip.Offset.X == 0 || !inSight() {
		t.Errorf("take %d added: the strip is scrolled to %v, and the take is out of sight", s.ReelPick()+1, strip.Offset.X)
	}
	s.PickTake(session.TitleCard)
	if strip.Offset.X != 0 {
		t.Errorf("the title card picked: the strip is scrolled to %v, want 0", strip.Offset.X)
	}
	s.PickTake(session.EndCard)
	if !inSight() {
		t.Error("the end card picked is out of sight")
	}
	p.Say("No time for: some freezes.")
	p.tap("reel-new")
	if p.line.Text != "" {
		t.Errorf("over another reel it still says %q", p.line.Text)
	}
}

// A take's card names its play; the pointer and the keys are told the whole of it, and
// what was said before stands there again after.
func TestTakeTellsItsPlay(t *testing.T) {
	p, s := reelPage(t)
	p.tap("reel-new")
	s.ChangeTake("", func(t lesson.Take) lesson.Take { t.Play, t.Beside = 2, 1; return t })
	title := s.Lesson().Plays[1].Title
	card := p.strip.cards[1]
	if !strings.HasPrefix(card.text.Text, "2. "+title+"\n") {
		t.Errorf("the card says %q, want its play %q", card.text.Text, title)
	}
	whole := "Take 1: 2. " + title + "; beside it 1. " + s.Lesson().Plays[0].Title
	p.Say("before")
	for _, c := range []struct {
		name string
		do   func()
		want string
	}{
		{"the pointer on it", func() { card.MouseIn(&desktop.MouseEvent{}) }, whole},
		{"the pointer gone", card.MouseOut, "before"},
		{"the keys on it", card.FocusGained, whole},
		{"the keys gone", card.FocusLost, "before"},
		{"the pointer on the title card", func() { p.strip.cards[0].MouseIn(&desktop.MouseEvent{}) }, "before"},
	} {
		if c.do(); p.line.Text != c.want {
			t.Errorf("%s: the page says %q, want %q", c.name, p.line.Text, c.want)
		}
	}
	if card.ToolTip() != whole || p.strip.cards[0].ToolTip() != "" {
		t.Errorf("the tips are %q and %q, want %q and none", card.ToolTip(), p.strip.cards[0].ToolTip(), whole)
	}
	for i := range s.Lesson().Plays {
		s.SelectPlay(0)
		s.DeletePlay()
		if i == 0 && card.ToolTip() != "Take 1: 1. "+title {
			t.Errorf("with one play left the tip is %q", card.ToolTip())
		}
	}
	if card.Visible() && card.ToolTip() != "" {
		t.Errorf("with no play left the tip is %q, want none", card.ToolTip())
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
	p.preview.seek(s.SolvedReel().Takes[0].Start + 1)
	p.tap("reel-slow")
	p.tap("reel-slow")
	p.take.slowRows[0].speed.SetSelectedIndex(5)
	p.tap("reel-freeze")
	row := p.take.rows[0]
	row.seconds.SetText("3,5")
	row.seconds.commit()
	row.caption.SetText("Here")
	row.caption.commit()
	take, _ := s.Take()
	if len(take.Slows) != 2 || take.Slows[0].Speed != 0.1 || take.Slows[1].Speed != 0.25 || !strings.Contains(p.take.slowFault.Text, "Speed 1: a later one counts") {
		t.Errorf("slow stretches %+v, want one at 0.1 and one at 0.25 over it; the line says %q", take.Slows, p.take.slowFault.Text)
	}
	second := p.take.slowRows[1]
	second.to.SetSelectedIndex(len(second.to.Options) - 1)
	second.from.SetSelectedIndex(len(second.from.Options) - 1)
	if !strings.Contains(p.take.slowFault.Text, "Speed 2 ends before it begins") || !p.take.slowFault.Visible() {
		t.Errorf("a stretch from the end to the end: the line says %q", p.take.slowFault.Text)
	}
	test.Tap(second.remove)
	if p.take.slowFault.Visible() || second.box.Visible() {
		t.Error("a stretch that is deleted, or its fault, is still shown")
	}
	if len(take.Freezes) != 1 || take.Freezes[0].Length != 3.5 || take.Freezes[0].Caption != "Here" {
		t.Errorf("freezes %+v, want one of 3.5 s that says Here", take.Freezes)
	}
	p.preview.seek(0) // on the title card
	p.tap("reel-freeze")
	if again, _ := s.Take(); len(again.Freezes) != 1 {
		t.Errorf("a freeze was added at a moment of the title card: %+v", again.Freezes)
	}
	p.tap("reel-slow")
	if again, _ := s.Take(); len(again.Slows) != 1 {
		t.Errorf("a stretch was added at a moment of the title card: %+v", again.Slows)
	}
	test.Tap(p.take.slowRows[0].remove)
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

// A new stretch at another speed runs from the event before a moment to the one after
// it, however early or late the moment.
func TestStretchAboutAMoment(t *testing.T) {
	r, err := rally.Solve(lessontest.Long(1), 0)
	if err != nil {
		t.Fatal(err)
	}
	for at := r.From - 1; at < r.To+1; at += 0.05 {
		s := stretchAbout(r, at)
		from, to := r.TimeAt(s.From), r.TimeAt(s.To)
		inside := at >= r.TimeAt(lesson.At(lesson.ContactOf(0))) && at < r.To
		if from >= to || inside && (from > at || to <= at) {
			t.Errorf("about %.2f s there is the stretch %v to %v, %.2f to %.2f s", float64(at), s.From, s.To, float64(from), float64(to))
		}
		for _, e := range r.Events {
			if inside && e.Reached && e.Name.Moment != lesson.Net && e.At > from && e.At < to {
				t.Errorf("about %.2f s there is the stretch %v to %v, in which %v happens", float64(at), s.From, s.To, e.Name)
			}
		}
	}
}

// A take that is dragged comes in where it is let go, beyond the ends at the ends;
// Escape lets it go where it was, other keys wait. Cards of words cannot be dragged.
func TestDraggingATake(t *testing.T) {
	for _, c := range []struct {
		take   int
		places float32
		cancel bool
		want   []int
	}{{0, 2, false, []int{2, 1, 1}}, {2, -2, false, []int{1, 1, 2}}, {0, 9, false, []int{2, 1, 1}}, {2, -9, false, []int{1, 1, 2}}, {1, 0, false, []int{1, 2, 1}}, {0, 2, true, []int{1, 2, 1}}} {
		p, s := reelPage(t)
		p.tap("reel-new")
		p.tap("take-copy")
		s.SelectPlay(1)
		s.PickTake(0)
		p.tap("take-add")
		card := p.strip.cards[c.take+1]
		at := fyne.CurrentApp().Driver().AbsolutePositionForObject(card).Add(fyne.NewPos(40, 40))
		for step := range 3 {
			card.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{AbsolutePosition: at.AddXY(c.places*p.strip.step()*float32(step)/2, 0)}})
		}
		if c.places == 2 && !c.cancel && (!p.strip.cards[3].after.Visible() || !strings.Contains(p.line.Text, "To place 3 of 3")) {
			t.Errorf("while take %d is over the last, no line is behind that, or it says %q", c.take, p.line.Text)
		}
		for _, k := range []fyne.KeyName{fyne.KeyDelete, fyne.KeySpace} {
			p.Press(&fyne.KeyEvent{Name: k})
		}
		if r, _ := s.Reel(); len(r.Takes) != 3 || p.preview.playing {
			t.Fatalf("keys while take %d is dragged leave %d takes, playing %v", c.take, len(r.Takes), p.preview.playing)
		}
		if c.cancel {
			p.Press(&fyne.KeyEvent{Name: fyne.KeyEscape})
			card.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{AbsolutePosition: at.AddXY(400, 0)}})
		}
		card.DragEnd()
		r, _ := s.Reel()
		if got := []int{r.Takes[0].Play, r.Takes[1].Play, r.Takes[2].Play}; !slices.Equal(got, c.want) || !p.Shown() || p.line.Text != "" {
			t.Errorf("take %d dragged by %v places: plays %v, want %v; the line says %q", c.take, c.places, got, c.want, p.line.Text)
		}
		if p.strip.cards[0].handle.Visible() || p.strip.cards[0].OnDrag != nil || !card.handle.Visible() {
			t.Error("the title card can be dragged, or a take shows no handle")
		}
	}
}
