package panel

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
)

// Choice is one drawing of a gallery with its words.
type Choice struct {
	Title, Text string
	Picture     image.Image // nil leaves its place empty
	Refused     bool        // it cannot be chosen; the text says why
}

// Gallery is a grid of small courts of which one is chosen, with the pointer or
// with the arrow keys.
type Gallery struct {
	Box    *fyne.Container
	cards  []*card
	chosen int // -1 while none is

	OnChosen func(i int) // nil means nobody asks
	OnTapped func(i int) // the pointer chose a card
	OnAccept func()      // Enter
}

// NewGallery is a gallery of cards of a size, in as many columns as the room has.
func NewGallery(count int, size CardSize) *Gallery {
	g := &Gallery{Box: container.New(&flow{even: true}), chosen: -1}
	for i := range count {
		c := newCard(size, func() { g.tap(i) }, func(k *fyne.KeyEvent) { g.key(i, k) })
		g.cards = append(g.cards, c)
		g.Box.Objects = append(g.Box.Objects, c)
	}
	return g
}

// Wide is the room of all its cards in one line, or in even lines of so many columns
// at most.
func (g *Gallery) Wide(columns int) float32 {
	n := float32(evenly(len(g.cards), max(evenly(len(g.cards), columns), 1)))
	return n*g.cards[0].MinSize().Width + (n-1)*theme.Padding()
}

// Show fills the cards; those left over are hidden. What was chosen stays so
// where it still can be.
func (g *Gallery) Show(all []Choice) {
	for i, c := range g.cards {
		show(c, i < len(all))
		if i < len(all) {
			c.set(all[i])
		}
	}
	if g.chosen >= len(all) || g.chosen >= 0 && all[g.chosen].Refused {
		g.chosen = -1
	}
	g.mark()
}

// Choose chooses a card; nothing happens where it is refused.
func (g *Gallery) Choose(i int) {
	if i < 0 || i >= len(g.cards) || !g.cards[i].Visible() || g.cards[i].choice.Refused {
		return
	}
	g.chosen = i
	g.mark()
	if g.OnChosen != nil {
		g.OnChosen(i)
	}
}

func (g *Gallery) tap(i int) {
	g.Choose(i)
	if g.OnTapped != nil && g.chosen == i {
		g.OnTapped(i)
	}
}

// Chosen is the card chosen; false if none is.
func (g *Gallery) Chosen() (int, bool) { return g.chosen, g.chosen >= 0 }

// FocusOn is what takes the keys: the card chosen or else the first.
func (g *Gallery) FocusOn() fyne.Focusable { return g.cards[max(g.chosen, 0)] }

// Card is card i, for tests of the window.
func (g *Gallery) Card(i int) fyne.CanvasObject { return g.cards[i] }

func (g *Gallery) mark() {
	for i, c := range g.cards {
		c.choose(i == g.chosen)
	}
}

// key moves to the next card that can be chosen, or accepts.
func (g *Gallery) key(from int, k *fyne.KeyEvent) {
	step := 0
	switch k.Name {
	case fyne.KeyRight, fyne.KeyDown:
		step = 1
	case fyne.KeyLeft, fyne.KeyUp:
		step = -1
	case fyne.KeySpace:
		g.Choose(from)
	case fyne.KeyReturn, fyne.KeyEnter:
		invoke(g.OnAccept)
	}
	for i := from + step; step != 0 && i >= 0 && i < len(g.cards); i += step {
		if g.cards[i].Visible() && !g.cards[i].choice.Refused {
			g.Choose(i)
			focus(g.cards[i])
			return
		}
	}
}

func invoke(f func()) {
	if f != nil {
		f()
	}
}

// focus gives a card the keys, where it is in a window.
func focus(c fyne.Focusable) {
	if w := fyne.CurrentApp().Driver().CanvasForObject(c.(fyne.CanvasObject)); w != nil {
		w.Focus(c)
	}
}
