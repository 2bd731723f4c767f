package app

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"homeside/app/session"
)

// scrollbar is the room that the scroll bar takes beside the cards.
const scrollbar = 10

// cards are what shares the right of the court; each folds away.
type cards struct {
	fold  *widget.Accordion
	match *widget.AccordionItem
	begun bool // a match was kept when the cards were last refreshed
}

// side makes the cards.
func (e *Editor) side() fyne.CanvasObject {
	shot := widget.NewAccordionItem("Shot", container.NewVBox(e.shot.Box, e.bought.Box))
	shot.Open = true
	e.cards.match = widget.NewAccordionItem("Match", e.match.Box)
	player := widget.NewAccordionItem("Player", e.player.Box)
	e.cards.fold = widget.NewAccordion(e.cards.match, shot, player)
	e.cards.fold.MultiOpen = true
	return container.NewVScroll(container.New(layout.NewCustomPaddedLayout(0, 0, 0, scrollbar), e.cards.fold))
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
