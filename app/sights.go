package app

import (
	"fyne.io/fyne/v2"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/court"
	"homeside/words"
)

// sight is a way of seeing the court with its name in the menu.
type sight struct {
	name string
	compose.Sight
}

// sights are those that need nobody chosen.
func sights() []sight {
	return []sight{
		{words.T("Upright court"), compose.Sight{}},
		{words.T("Lying court"), compose.Sight{Turn: canvas.Lying}},
		{words.T("Near half"), compose.Sight{Half: compose.NearHalf}},
		{words.T("Far half"), compose.Sight{Half: compose.FarHalf}},
		{words.T("From behind the receiver"), compose.Sight{Behind: compose.TheReceiver}},
		{words.T("From behind the servers"), compose.Sight{Behind: compose.TheServers}},
	}
}

// sightItems are the menu's items for them, one to see from behind of the player
// who is chosen, and a mark for the end that the court is seen from.
func (e *Editor) sightItems() []*fyne.MenuItem {
	for i, s := range sights() {
		e.sights = append(e.sights, e.item(s.name, func() { e.see(i, s.Sight) }, nil))
	}
	e.sights = append(e.sights, e.item(words.T("From behind the chosen player"), e.seeFromChosen, nil))
	e.sights[0].Checked = true
	items := append([]*fyne.MenuItem{}, e.sights...)
	return append(items, fyne.NewMenuItemSeparator(), e.toggle(words.T("Far team at the bottom"), false, e.seeFromEnd))
}

// see shows the court in a way and marks which.
func (e *Editor) see(item int, s compose.Sight) {
	s.End = e.court.Sight().End
	e.court.SetSight(s)
	e.court.Fit() // a zoom was of the view before
	mark(e.sights, item)
	e.win.MainMenu().Refresh()
	e.trace.say("seen %s", e.sights[item].Label)
}

func (e *Editor) seeFromChosen() {
	e.see(len(e.sights)-1, compose.Sight{Behind: compose.BehindPlayer(e.session.Selected())})
}

func (e *Editor) seeFromEnd(far bool) {
	s := e.court.Sight()
	s.End = court.Near
	if far {
		s.End = court.Far
	}
	e.court.SetSight(s)
	e.court.Fit() // a zoom was of the view before
}
