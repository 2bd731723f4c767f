package app

import (
	"maps"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"homeside/app/looks"
	"homeside/app/settings"
	"homeside/words"
)

// smallest is the room of a window on a screen of 1280x800 at twice the usual scale,
// without the window's frame and its menu bar.
var smallest = fyne.NewSize(636, 350)

// inLargeLetters calls a test with an editor in each language in a window of the
// smallest size, with large text: ordinary letters take less of it.
func inLargeLetters(t *testing.T, do func(t *testing.T, b *bench)) {
	t.Cleanup(func() { words.Speak(words.English) })
	for _, spoken := range words.Languages() {
		t.Run(spoken.Tag(), func(t *testing.T) {
			words.Speak(spoken)
			b := dialogBench(t)
			b.app.Settings().SetTheme(looks.Of(settings.Settings{LargeText: true}))
			b.resize(smallest)
			do(t, b)
		})
	}
}

// resize gives the window a size and lays everything out in it, again as long as
// broken lines want another height.
func (b *bench) resize(size fyne.Size) {
	for range 2 {
		b.win.Resize(size.Add(fyne.NewSize(0, 1)))
		b.win.Resize(size)
	}
}

// No page of the window wants more than the smallest one has: what is more is below,
// and scrolls.
func TestPagesFitTheSmallestWindow(t *testing.T) {
	inLargeLetters(t, func(t *testing.T, b *bench) {
		for _, page := range []struct {
			name string
			open func()
			box  fyne.CanvasObject
		}{
			{"court and plays", func() { b.besides.show(false) }, b.editing.Box}, {"court and cards", func() { b.besides.show(true) }, b.editing.Box},
			{"start", b.openStart, b.start.Box}, {"match plan", b.openMatchPlan, b.plan.Box}, {"reels", b.openReels, b.reels.Box},
			{"a reel", func() { b.openReels(); b.session.AddReel() }, b.reels.Box}, {"exports", b.askExport, b.exports.Box}, {"photo", b.openPhoto, b.photos.page.Box},
		} {
			page.open()
			b.resize(smallest)
			if got := page.box.MinSize(); got.Width > smallest.Width || got.Height > smallest.Height {
				t.Errorf("%s wants %v, want at most %v", page.name, got, smallest)
			}
			b.leavePages()
		}
	})
}

// No dialog wants more than the smallest window has.
func TestDialogsFitTheSmallestWindow(t *testing.T) {
	inLargeLetters(t, func(t *testing.T, b *bench) {
		for _, name := range slices.Sorted(maps.Keys(dialogs)) {
			b.openDialog(name)
			if got := b.question().dialog.MinSize(); got.Width > smallest.Width || got.Height > smallest.Height {
				t.Errorf("%s wants %v, want at most %v", name, got, smallest)
			}
			b.escapeAll(name)
		}
	})
}

// Nothing on a card is wider than the cards.
func TestNothingOnACardIsCut(t *testing.T) {
	inLargeLetters(t, func(t *testing.T, b *bench) {
		for _, item := range b.cards.fold.Items {
			b.cards.open(item)
			b.resize(smallest)
			if got, want := item.Detail.MinSize().Width, cardWidth*looks.Letters()-scrollbar; got > want {
				t.Errorf("%s wants %v, want at most %v", item.Title, got, want)
			}
		}
	})
}

// Where there is no room for plays and cards, one of them stands beside the court
// and a button, or whatever asks for it, brings the other.
func TestOneOfTwoBesideTheCourt(t *testing.T) {
	b := dialogBench(t)
	shown := func(o fyne.CanvasObject) bool {
		c := b.win.Canvas()
		return fyne.CurrentApp().Driver().CanvasForObject(o) == c && slices.Contains(append(b.besides.left.Objects, b.besides.right.Objects...), o)
	}
	for _, c := range []struct {
		name         string
		do           func()
		plays, cards bool
		button       bool
	}{
		{"a large window", func() { b.resize(fyne.NewSize(1280, 760)) }, true, true, false},
		{"a small window", func() { b.resize(smallest) }, true, false, true},
		{"the button", func() { test.Tap(b.besides.change) }, false, true, true},
		{"the button again", func() { test.Tap(b.besides.change) }, true, false, true},
		{"a card opened", func() { b.cards.open(b.cards.player) }, false, true, true},
		{"a large window again", func() { b.resize(fyne.NewSize(1280, 760)) }, true, true, false},
	} {
		c.do()
		if shown(b.besides.plays) != c.plays || shown(b.besides.cards) != c.cards || b.besides.change.Visible() != c.button {
			t.Errorf("%s: plays %v, cards %v, button %v, want %v, %v, %v", c.name, shown(b.besides.plays), shown(b.besides.cards), b.besides.change.Visible(), c.plays, c.cards, c.button)
		}
	}
}

// The Tab key scrolls to what it gives the keys.
func TestTabScrollsToTheControl(t *testing.T) {
	b := newBench(t)
	b.resize(smallest)
	c, driver := b.win.Canvas(), fyne.CurrentApp().Driver()
	page := driver.AbsolutePositionForObject(b.start.Box)
	bottom := page.Y + b.start.Box.Size().Height
	for range 30 {
		o := c.Focused().(fyne.CanvasObject)
		if at := driver.AbsolutePositionForObject(o); at.Y < page.Y || at.Y >= bottom {
			t.Errorf("%T has the keys at %v, the page goes from %v to %v", o, at.Y, page.Y, bottom)
		}
		c.FocusNext()
	}
}
