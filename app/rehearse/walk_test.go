package rehearse

import (
	"image"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"homeside/app/rehearsal"
	"homeside/model/units"
)

// Nobody walks before the cautions have been read; then it is said that paths
// cross, counted in, walked, rested and walked again, by a clicker's keys alone.
func TestByAClicker(t *testing.T) {
	b := opened(t)
	b.press(fyne.KeySpace, fyne.KeyRight)
	b.phase(rehearsal.Waiting)
	if !slices.Contains(b.said, "rehearsing cautions") || slices.Contains(b.said, "rehearsing read") {
		t.Fatalf("said %q, want cautions that are not read", b.said)
	}
	b.press(fyne.KeyPageDown)
	b.phase(rehearsal.Waiting)
	b.press(fyne.KeyPageDown)
	b.phase(rehearsal.Warning)
	if got := b.walk.stage.telling.warned; !strings.HasPrefix(got, "Paths cross here: ") {
		t.Errorf("before the first round it warns %q", got)
	}
	b.press(fyne.KeyPageDown)
	b.phase(rehearsal.Counting)
	b.pass(1)
	if got := b.walk.stage.telling.big; got != "2" {
		t.Errorf("a second after the first beat it counts %q, want 2", got)
	}
	b.pass(2)
	b.phase(rehearsal.Running)
	events := 0
	for b.walk.rehearsal.Phase() == rehearsal.Running {
		b.press(fyne.KeyPageDown)
		events++
	}
	if events < 8 {
		t.Errorf("Page Down goes through %d events, want every one of the play", events)
	}
	b.phase(rehearsal.Resting)
	if got := b.walk.stage.telling.big; got != "10" {
		t.Errorf("the rest begins with %q s, want 10", got)
	}
	b.press(fyne.KeyPageDown)
	b.phase(rehearsal.Counting)
	if now, all := b.walk.rehearsal.Round(); now != 2 || all != 3 {
		t.Errorf("it is round %d of %d, want 2 of 3", now, all)
	}
	b.press(fyne.KeyEscape)
	if b.win.Shown() || b.said[len(b.said)-1] != "rehearsing closed" {
		t.Errorf("after Escape it is shown: %v; said %q", b.win.Shown(), b.said)
	}
}

// What is chosen holds at once and the next time.
func TestChoicesAreKept(t *testing.T) {
	b := opened(t)
	b.press(fyne.KeyPageDown, fyne.KeyS, fyne.KeyM, fyne.KeyV)
	b.walk.choose(func(c *choices) { c.rounds, c.rest, c.count = -1, 30, 0 })
	want := choices{speed: rehearsal.Half, rounds: -1, rest: 30, count: 0, silent: true, view: behindReceiver}
	if got := b.walk.rehearsal.Plan(); got.Speed != rehearsal.Half || got.Rounds != -1 || got.Rest != 30 || got.Count != 0 {
		t.Errorf("it is rehearsed by %+v, want %+v", got, want)
	}
	if got := b.walk.stage.view; got != behindReceiver {
		t.Errorf("V shows view %d, want %d", got, behindReceiver)
	}
	b.win.Close()
	b.open()
	if b.walk.chosen != want || b.walk.controls.sound.Checked || b.walk.stage.view != behindReceiver {
		t.Errorf("the next time %+v is chosen, want %+v", b.walk.chosen, want)
	}
	b.app.Preferences().SetInt(keptRounds, 77)
	b.app.Preferences().SetFloat(keptSpeed, 9)
	if got := keptChoices(b.app.Preferences()); got.rounds != usualRounds || got.speed != rehearsal.Walk {
		t.Errorf("of what cannot be chosen it takes %+v", got)
	}
}

// Another play begins anew, its cautions read already; without a play there is a
// line and nothing else.
func TestFollowsTheLesson(t *testing.T) {
	b := opened(t)
	b.press(fyne.KeyPageDown, fyne.KeyPageDown, fyne.KeyPageDown)
	b.phase(rehearsal.Counting)
	b.session.SelectPlay(2)
	b.phase(rehearsal.Waiting)
	if b.walk.rally != b.session.Current() || !b.walk.rehearsal.HasRead() {
		t.Error("after another play was chosen it is not rehearsed")
	}
	for len(b.session.Lesson().Plays) > 0 {
		b.session.DeletePlay()
	}
	b.press(fyne.KeySpace, fyne.KeyPageDown, fyne.KeyS)
	b.win.Close()
	b.open()
	b.press(fyne.KeySpace, fyne.KeyPageDown, fyne.KeyS, fyne.KeyEscape)
	if b.win.Shown() {
		t.Error("without a play Escape does not close the window")
	}
}

// With reduced motion the court shows events only.
func TestReducedMotion(t *testing.T) {
	b := opened(t)
	b.win.Close()
	b.cuts = true
	b.open()
	b.press(fyne.KeyPageDown, fyne.KeyPageDown, fyne.KeyPageDown)
	b.pass(3)
	seen := map[units.Seconds]bool{}
	for b.walk.rehearsal.Phase() == rehearsal.Running {
		seen[b.walk.stage.moment] = true
		b.pass(0.05)
	}
	delete(seen, b.walk.rally.From)
	for _, e := range b.walk.rally.Events {
		delete(seen, e.At)
	}
	if len(seen) > 0 {
		t.Errorf("shown between events: %v", seen)
	}
}

// What runs and what has happened is said at its time, the pair's runs first.
func TestTelling(t *testing.T) {
	b := opened(t)
	b.press(fyne.KeyPageDown, fyne.KeyRight, fyne.KeyRight)
	got := b.walk.stage.telling
	if got.head != "Round 1 · Walk (0.4) · paused" && got.head != "Round 1 of 3 · Walk (0.4) · paused" {
		t.Errorf("the head is %q", got.head)
	}
	before := ""
	for b.walk.rehearsal.Step(true) {
		b.walk.follow()
		got := b.walk.stage.telling
		if got.event == "" {
			t.Error("at an event nothing is said")
		}
		before += got.event + "\n" + strings.Join(got.lines, "\n") + "\n"
	}
	for _, want := range []string{"Return by ", "Third by ", " bounces.", " goes "} {
		if !strings.Contains(before, want) {
			t.Errorf("step by step it never says %q:\n%s", want, before)
		}
	}
}

// Every view is painted at every size, the smallest too, with the longest texts
// inside: nothing is written beyond the stage.
func TestPaintedAtEverySize(t *testing.T) {
	b := opened(t)
	b.press(fyne.KeyPageDown, fyne.KeyPageDown)
	long := telling{head: "Round 1 of 3 · Walk (0.4)", big: "10", event: strings.Repeat("a long event ", 20), lines: []string{strings.Repeat("long line ", 60), "another"}, warned: strings.Repeat("paths cross ", 30)}
	for v := range viewCount {
		for _, size := range []image.Point{{1920, 1000}, {1280, 650}, {640, 300}, {300, 640}, {1, 1}} {
			b.walk.stage.view, b.walk.stage.telling = v, long
			b.walk.stage.paint(size.X, size.Y)
			scene := long.scene(roomsOf(size.X, size.Y, v), b.walk.stage.drawn.look)
			for _, p := range scene.Panels {
				for _, s := range p.Shapes {
					if s.Text == nil || size.X < 300 {
						continue
					}
					if y := p.View.Origin.Y + float64(s.Text.At.Down)*scene.PxPerPoint; y > float64(size.Y)+0.5 {
						t.Errorf("view %d at %v: %.20q is written at %.0f px", v, size, s.Text.Text, y)
					}
				}
			}
		}
	}
}
