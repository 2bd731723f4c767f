package present

import (
	"bytes"
	"fmt"
	"image"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/lessonfile"
	"homeside/model/units"
)

// opened is the presenter of the built-in lesson, painted at 1280 x 800, and what
// it says.
func opened(t *testing.T) (*Presenter, *[]string) {
	t.Helper()
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	var said []string
	var p *Presenter
	s := session.New(l, "", func() {
		if p != nil {
			p.Refresh()
		}
	})
	p = New(test.NewTempApp(t), s, func(format string, args ...any) { said = append(said, fmt.Sprintf(format, args...)) })
	p.Open()
	p.stage.Resize(fyne.NewSize(1280, 800))
	p.stage.paint(1280, 800)
	return p, &said
}

func (p *Presenter) event(t *testing.T, want string) {
	t.Helper()
	if got := p.stage.eventName(); got != want {
		t.Errorf("the event shown is %s, want %s", got, want)
	}
}

// Keys and a clicker's keys step through the events, from before the serve on.
func TestKeysStep(t *testing.T) {
	p, said := opened(t)
	p.event(t, "serve.before")
	p.key(fyne.KeyPageDown)
	p.event(t, "serve.contact")
	p.key(fyne.KeyRight)
	p.event(t, "serve.net")
	p.key(fyne.KeyPageUp)
	p.event(t, "serve.contact")
	p.key(fyne.KeyEnd)
	p.event(t, "end")
	p.key(fyne.KeyHome)
	p.event(t, "serve.before")
	p.key(fyne.KeyDown)
	if got := p.session.PlayIndex(); got != 1 {
		t.Errorf("after Down play %d is shown, want 1", got)
	}
	p.key(fyne.KeySpace)
	if !p.session.Playing() {
		t.Error("the space bar does not run the play")
	}
	p.key(fyne.KeyEscape)
	if p.Shown() || p.session.Playing() {
		t.Errorf("after Escape it is shown: %v, playing: %v", p.Shown(), p.session.Playing())
	}
	if all := strings.Join(*said, "\n"); !strings.Contains(all, "present open") || !strings.Contains(all, "present closed") {
		t.Errorf("it says %q", all)
	}
	p.key(fyne.KeyRight) // nobody is there any more
	p.rune('c')
	p.Refresh()
}

// Each level says more than the one before.
func TestLevels(t *testing.T) {
	p, _ := opened(t)
	p.key(fyne.KeyRight)
	r, les := p.session.Current(), p.session.Lesson()
	last := ""
	for l := Words; l < levelCount; l++ {
		p.rune(rune('1' + l))
		if p.stage.level != l {
			t.Errorf("key %c shows level %d", '1'+l, p.stage.level)
		}
		line := l.line(les, r, p.session.Now())
		if !strings.HasPrefix(line, last) || line == last {
			t.Errorf("level %d says %q, want more than %q", l, line, last)
		}
		last = line
	}
	if Words.show().NoTicks != true || Times.show().NoClock || Figures.show().NoFigures {
		t.Error("the levels show the wrong parts")
	}
	if got := Words.line(les, r, -1); got != "Before the serve" {
		t.Errorf("before the serve it says %q", got)
	}
}

// Two plays: overlaid, then side by side at the same moment, then alone again;
// the play beside that was chosen here is let go.
func TestTwoPlays(t *testing.T) {
	p, _ := opened(t)
	for _, want := range []struct {
		pair  Pair
		parts int
		twin  bool
	}{{Overlaid, 1, true}, {Beside, 2, false}, {Alone, 1, false}} {
		p.rune('c')
		p.stage.paint(1280, 800)
		g := p.stage
		if g.pair != want.pair || len(g.parts) != want.parts || (g.parts[0].picture.Twin != nil) != want.twin {
			t.Errorf("shown as %d in %d parts, over each other %v, want %+v", g.pair, len(g.parts), g.parts[0].picture.Twin != nil, want)
		}
	}
	if _, ok := p.session.Comparing(); ok {
		t.Error("alone, a play is still compared")
	}
	p.rune('c')
	p.Close()
	if _, ok := p.session.Comparing(); ok {
		t.Error("after leaving, a play is still compared")
	}
}

func (g *stage) press(b desktop.MouseButton, at fyne.Position) {
	g.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: b})
}

func (g *stage) pull(to ...fyne.Position) {
	for _, at := range to {
		g.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: at}})
	}
}

// A click steps, a drag draws, a key erases, and another play begins clean.
func TestStrokes(t *testing.T) {
	p, _ := opened(t)
	g := p.stage
	g.press(desktop.MouseButtonPrimary, fyne.NewPos(900, 600))
	g.pull(fyne.NewPos(901, 600)) // a hand trembles
	g.MouseUp(nil)
	p.event(t, "serve.contact")
	g.press(desktop.MouseButtonSecondary, fyne.NewPos(900, 600))
	g.MouseUp(nil)
	p.event(t, "serve.before")

	before := bytes.Clone(g.paint(1280, 800).(*image.RGBA).Pix)
	g.press(desktop.MouseButtonPrimary, fyne.NewPos(900, 600))
	g.pull(fyne.NewPos(950, 620), fyne.NewPos(1000, 600))
	g.DragEnd()
	g.MouseUp(nil)
	img := g.paint(1280, 800).(*image.RGBA)
	if got := img.RGBAAt(950, 620); len(g.strokes) != 1 || got.R != look.Rust.R || got.G != look.Rust.G {
		t.Errorf("%d strokes, the pixel under one is %v", len(g.strokes), got)
	}
	p.event(t, "serve.before")
	p.rune('e')
	if after := g.paint(1280, 800).(*image.RGBA).Pix; !bytes.Equal(before, after) {
		t.Error("erased, the picture is not as it was")
	}
	g.strokes = []stroke{{{X: 0.1, Y: 0.1}, {X: 0.2, Y: 0.2}}}
	p.key(fyne.KeyDown)
	if len(g.strokes) != 0 {
		t.Error("another play shows the strokes of the one before")
	}
}

// The apex handle is dragged as one step; Escape drops it and stays.
func TestApex(t *testing.T) {
	p, _ := opened(t)
	g := p.stage
	p.key(fyne.KeyRight)
	g.paint(1280, 800)
	px, ok := p.OnScreen()
	if !ok {
		t.Fatal("there is no handle")
	}
	top := func() units.Feet { return p.session.Current().Strokes[0].Planned.Apex.State.Height().Feet() }
	was, at := top(), fyne.NewPos(float32(px.X), float32(px.Y))
	g.press(desktop.MouseButtonPrimary, at)
	g.pull(at.AddXY(30, 0))
	if top() <= was {
		t.Errorf("dragged up, the top is at %v ft, before %v", top(), was)
	}
	p.key(fyne.KeyEscape)
	if !p.Shown() || top() != was {
		t.Errorf("after Escape it is shown: %v, the top at %v, want %v", p.Shown(), top(), was)
	}
	g.press(desktop.MouseButtonPrimary, at)
	g.pull(at.AddXY(30, 0))
	g.MouseUp(nil)
	if step, _ := p.session.CanUndo(); step != "change the height of the serve" || top() <= was {
		t.Errorf("the step is %q, the top at %v", step, top())
	}
}

// Views follow one another, keys are shown until they are known, and a size of
// nothing is painted too.
func TestViewsAndHelp(t *testing.T) {
	p, _ := opened(t)
	for i := range sights {
		if p.stage.sight != i {
			t.Errorf("view %d is shown, want %d", p.stage.sight, i)
		}
		p.stage.paint(640, 400)
		p.rune('v')
	}
	if p.stage.sight != 0 || !p.stage.help {
		t.Errorf("view %d, keys shown %v, want the first and shown", p.stage.sight, p.stage.help)
	}
	p.key(fyne.KeyRight)
	if p.stage.help {
		t.Error("after a step the keys are still shown")
	}
	p.stage.paint(0, 0)
}

// A stroke is in shares of the stage, so its length depends on that.
func TestStrokeLong(t *testing.T) {
	s := stroke{{X: 0.5, Y: 0.5}, {X: 0.51, Y: 0.5}}
	if !s.long(1000, 500, 9) || s.long(1000, 500, 11) {
		t.Error("a stroke of 10 px is not between 9 and 11 px")
	}
	scene := &canvas.Scene{Width: 100, Height: 50, PxPerPoint: 2}
	drawn(scene, &look.Daylight, []stroke{s})
	if at := scene.Panels[0].Shapes[1].Path[1].P[0]; at.Right*2 < 50.9 || at.Right*2 > 51.1 || at.Down*2 != 25 {
		t.Errorf("the stroke ends at %+v, want 51, 25 px", at)
	}
}
