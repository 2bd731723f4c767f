package panel

import (
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"homeside/app/session"
	"homeside/words"
)

// At any width of the window the score strip's sentence is whole, its buttons are
// within, and nothing lies over either.
func TestScoreStripHasItsRoom(t *testing.T) {
	defer words.Speak(words.English)
	for _, l := range []words.Language{words.English, words.Spanish} {
		words.Speak(l)
		test.NewTempApp(t)
		p := NewScore(session.New(start(), "", nil))
		p.Refresh()
		body := fynecanvas.NewRectangle(nil)
		box := container.New(Headed{}, p.Box, body)
		buttons := p.Box.Objects[0].(*fyne.Container).Objects[1]
		for _, width := range []float32{640, 960, 1280, 1920, 700} {
			box.Resize(fyne.NewSize(width, 600))
			end := p.sentence.Position().Y + p.sentence.Size().Height
			if p.sentence.Size().Height < p.sentence.MinSize().Height || end > body.Position().Y {
				t.Errorf("%s, %v wide: the sentence wants %v, has %v and ends at %v, the body begins at %v",
					l.Tag(), width, p.sentence.MinSize().Height, p.sentence.Size().Height, end, body.Position().Y)
			}
			at, has := buttons.Position(), buttons.Size()
			if at.X+has.Width > width || at.Y+has.Height > body.Position().Y {
				t.Errorf("%s, %v wide: the buttons are at %v, %v large", l.Tag(), width, at, has)
			}
			if at.X < p.sentence.Size().Width && at.Y < end {
				t.Errorf("%s, %v wide: the buttons at %v are over the sentence, %v large", l.Tag(), width, at, p.sentence.Size())
			}
		}
	}
}
