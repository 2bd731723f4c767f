package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"

	"homeside/app/heard"
	"homeside/words"
)

// besides is what stands beside the court: the plays on the left and the cards on
// the right. Where the window is too narrow for both, one of them stands on the left
// and a button brings the other.
type besides struct {
	box          *fyne.Container
	court        fyne.CanvasObject
	plays, cards fyne.CanvasObject
	left, right  *fyne.Container // what holds them
	middle, all  *container.Split
	change       *heard.Button // shown where there is room for one of them
	turned       func()        // told when the room for both comes or goes
	narrow       bool
	showCards    bool // of the two, where there is room for one
}

// newBesides lays plays, court and cards out, what is below the court under plays
// and court. turned is called when there is room for both, or for one, from now on.
func newBesides(plays, court, cards fyne.CanvasObject, turned func()) *besides {
	b := &besides{turned: turned, plays: plays, court: court, cards: cards, left: container.NewStack(plays), right: container.NewStack(cards)}
	b.change = heard.NewButtonWithIcon(words.T("Cards"), theme.ViewRestoreIcon(), func() { b.show(!b.showCards) }).Says(b.says)
	b.change.Hide()
	b.middle = container.NewHSplit(b.left, court)
	b.middle.Offset = playsShare
	return b
}

// over puts what is worked on over the rest of the left side.
func (b *besides) over(left fyne.CanvasObject) {
	b.all = container.NewHSplit(left, b.right)
	b.all.Offset = leftShare
	b.box = container.New(b, b.all)
}

func (b *besides) says() string {
	if b.showCards {
		return words.T("Shows the plays beside the court instead of the cards")
	}
	return words.T("Shows the cards beside the court instead of the plays")
}

// show brings the cards or the plays, where there is room for one of them.
func (b *besides) show(cards bool) {
	if b.showCards == cards {
		return
	}
	b.showCards = cards
	b.fill()
}

// fill puts plays and cards where they stand now.
func (b *besides) fill() {
	b.left.Objects, b.right.Objects = []fyne.CanvasObject{b.plays}, []fyne.CanvasObject{b.cards}
	if b.narrow {
		b.right.Objects = nil
		if b.showCards {
			b.left.Objects = []fyne.CanvasObject{b.cards}
		}
	}
	b.change.SetText(words.T("Cards"))
	if b.showCards {
		b.change.SetText(words.T("Plays"))
	}
	b.change.Hidden, b.right.Hidden = !b.narrow, b.narrow
	b.change.Refresh()
	b.left.Refresh()
	b.right.Refresh()
	b.all.Refresh()
	b.middle.Refresh()
}

// wide is the room that plays, court and cards take beside each other.
func (b *besides) wide() float32 {
	dividers := 4 * theme.Padding()
	return b.plays.MinSize().Width + b.court.MinSize().Width + b.cards.MinSize().Width + dividers
}

// MinSize implements fyne.Layout: the room for one of the two.
func (b *besides) MinSize([]fyne.CanvasObject) fyne.Size {
	one := max(b.plays.MinSize().Width, b.cards.MinSize().Width) + 2*theme.Padding() + b.court.MinSize().Width
	if b.narrow {
		one = max(one, b.all.MinSize().Width)
	}
	return fyne.NewSize(one, b.all.MinSize().Height)
}

// Layout implements fyne.Layout.
func (b *besides) Layout(o []fyne.CanvasObject, size fyne.Size) {
	if narrow := size.Width < b.wide(); narrow != b.narrow {
		b.narrow = narrow
		b.fill()
		b.turned()
	}
	o[0].Resize(size)
}
