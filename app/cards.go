package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/looks"
	"homeside/app/session"
	"homeside/words"
)

// Widths of the cards: the least they are given, and the room that the scroll
// bar takes beside them.
const (
	cardWidth = 280
	scrollbar = 10
)

// checksHeight is the room of the checks: always the same, so that what is found
// while a hand moves a slider below does not move the slider.
const checksHeight = 190

// narrow gives the cards the width there is, whatever they ask for, so that a
// long line never moves the court under the hand.
type narrow struct{}

// MinSize implements fyne.Layout.
func (narrow) MinSize(cards []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(cardWidth*looks.Letters(), cards[0].MinSize().Height)
}

// Layout implements fyne.Layout.
func (narrow) Layout(cards []fyne.CanvasObject, size fyne.Size) {
	cards[0].Resize(fyne.NewSize(size.Width-scrollbar, size.Height))
}

// cards are what shares the right of the court; each folds away.
type cards struct {
	fold   *widget.Accordion
	checks *widget.AccordionItem
	match  *widget.AccordionItem
	shot   *widget.AccordionItem
	player *widget.AccordionItem
	notes  *widget.AccordionItem
	found  *container.Scroll // what the checks and the comparison say
	scroll *container.Scroll
	wanted func() // brings the cards into the window
	begun  bool   // a match was kept when the cards were last refreshed
}

// side makes the cards.
func (e *Editor) side() fyne.CanvasObject {
	e.cards.shot = widget.NewAccordionItem(words.T("Shot"), container.NewVBox(e.shot.Box, e.bought.Box))
	e.cards.shot.Open = true
	e.cards.found = container.NewVScroll(container.New(layout.NewCustomPaddedLayout(0, 0, 0, scrollbar), container.NewVBox(e.tell.Box, e.checks.Box)))
	e.cards.found.SetMinSize(fyne.NewSize(0, checksHeight))
	e.cards.checks = widget.NewAccordionItem(e.checks.Title(), e.cards.found)
	e.cards.checks.Open = true
	e.cards.match = widget.NewAccordionItem(words.T("Match"), e.match.Box)
	e.cards.player = widget.NewAccordionItem(words.T("Player"), e.player.Box)
	e.cards.notes = widget.NewAccordionItem(words.T("Notes"), e.notes.Box)
	e.cards.fold = widget.NewAccordion(e.cards.checks, e.cards.match, e.cards.shot, e.cards.player, e.cards.notes)
	e.cards.fold.MultiOpen = true
	e.shot.Resized, e.bought.Resized = e.cards.fold.Refresh, e.cards.fold.Refresh
	e.cards.scroll = container.NewVScroll(container.New(narrow{}, e.cards.fold))
	e.cards.wanted = func() { e.besides.show(true) }
	return e.cards.scroll
}

// open unfolds a card, scrolls to it and gives its first control the keys.
func (c *cards) open(item *widget.AccordionItem) {
	c.wanted()
	if !item.Open {
		item.Open = true
		c.fold.Refresh()
		c.scroll.Refresh() // there is more to scroll now
	}
	c.scroll.ScrollToOffset(fyne.NewPos(0, max(item.Detail.Position().Y-headingHeight, 0)))
	window := fyne.CurrentApp().Driver().CanvasForObject(c.fold) // of a card not painted yet the toolkit does not know it
	if first := firstControl(item.Detail); first != nil && window != nil {
		window.Focus(first)
	}
}

// showFound scrolls to the beginning of what is said of the play.
func (c *cards) showFound() {
	if !c.checks.Open {
		c.checks.Open = true
		c.fold.Refresh()
	}
	c.found.ScrollToTop()
	c.scroll.ScrollToTop()
}

// headingHeight is the room of a card's heading.
const headingHeight = 36

// firstControl is the first thing in a part of the window that takes keys.
func firstControl(o fyne.CanvasObject) fyne.Focusable {
	if !o.Visible() {
		return nil
	}
	if f, ok := o.(fyne.Focusable); ok {
		if d, can := o.(fyne.Disableable); !can || !d.Disabled() {
			return f
		}
	}
	if box, ok := o.(*fyne.Container); ok {
		for _, inner := range box.Objects {
			if f := firstControl(inner); f != nil {
				return f
			}
		}
	}
	return nil
}

// refresh opens the match when one begins to be kept.
func (c *cards) refresh(s *session.Session) {
	begun := s.Lesson().Match.Begun()
	if begun && !c.begun {
		c.match.Open = true
		c.fold.Refresh()
	}
	c.begun = begun
}

// refreshChecks shows what is found and counts it in the heading, also while
// the hand drags somebody.
func (e *Editor) refreshChecks() {
	e.checks.Refresh()
	if title := e.checks.Title(); title != e.cards.checks.Title {
		e.cards.checks.Title = title
		e.cards.fold.Refresh()
		e.trace.say("%s", title)
	}
}
