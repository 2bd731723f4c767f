package panel

import (
	"image"
	"reflect"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/looks"
	"homeside/app/session"
	"homeside/canvas/look"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/words"
)

// fewPlays are seen at a glance: with more of them the field to search in is shown.
const fewPlays = 6

// Plays is the list of plays: a sentence with a small court each. It can be
// searched and, by dragging, put in another order.
type Plays struct {
	Box     *fyne.Container
	List    *playList
	session *session.Session
	search  *searchEntry
	found   *widget.Label
	shown   []int         // the plays listed
	thumbs  map[int]thumb // by the play's number
	say     func(string)
	row     *draggedRow // to measure one by
	common  rows
	rows    map[int]*draggedRow
	drag    reorder // of rows
}

// thumb is a small court with what it is of.
type thumb struct {
	play  lesson.Play
	teams [2]lesson.Team
	look  *look.Look
	image image.Image
}

// NewPlays is the list of a session's plays; keys takes the keys pressed in it, say
// a line about what is being done.
func NewPlays(s *session.Session, keys func(*fyne.KeyEvent), say func(string)) *Plays {
	p := &Plays{session: s, say: say, thumbs: map[int]thumb{}, row: newDraggedRow(), rows: map[int]*draggedRow{}, drag: newReorder(), found: widget.NewLabel("")}
	p.List = newPlayList(keys, p.fitRows)
	p.List.Length = func() int { return len(p.shown) }
	p.List.CreateItem = func() fyne.CanvasObject { return newDraggedRow() }
	p.List.UpdateItem = p.fill
	p.List.ExtendBaseWidget(p.List)
	p.List.OnSelected = func(row widget.ListItemID) {
		if row < len(p.shown) {
			s.SelectPlay(p.shown[row])
		}
	}
	p.search = newSearchEntry(func(string) { p.Refresh() }, p.leaveSearch)
	p.found.Importance = widget.LowImportance
	p.Box = container.NewBorder(container.NewVBox(p.search, p.found), nil, nil, nil, p.List.ring.Over(p.List))
	return p
}

func (p *Plays) fill(row widget.ListItemID, o fyne.CanvasObject) {
	r := o.(*draggedRow)
	if row >= len(p.shown) {
		return
	}
	p.keepRow(row, r)
	i := p.shown[row]
	r.set(PlayName(p.session, i), p.session.Lesson().Plays[i], p.thumb(i))
	r.OnDrag = func(at fyne.Position) { p.dragged(row, at) }
	r.OnDragEnd = p.dropped
	show(r.above, p.drag.before(row))
	show(r.below, p.drag.after(row))
}

// keepRow notes which row a widget shows: the list uses them again for others.
func (p *Plays) keepRow(row int, r *draggedRow) {
	for other, o := range p.rows {
		if o == r {
			delete(p.rows, other)
		}
	}
	p.rows[row] = r
}

// thumb is the small court of play i, kept as long as it looks the same.
func (p *Plays) thumb(i int) image.Image {
	l := p.session.Lesson()
	now := thumb{play: l.Plays[i], teams: l.Teams, look: looks.Now()}
	if have, ok := p.thumbs[i]; ok && have.look == now.look && have.teams == now.teams && reflect.DeepEqual(have.play, now.play) {
		return have.image
	}
	now.image = Thumb(l, i)
	p.thumbs[i] = now
	return now.image
}

// Thumb is a small picture of a lesson's play i at its serve; nil if it cannot
// be solved.
func Thumb(l lesson.Lesson, i int) image.Image {
	r, err := rally.Solve(l, i)
	if err != nil {
		return nil
	}
	return smallCourt(r, l.Venue.Surface(), fyne.NewSize(thumbWidth, thumbHeight), thumbPoint, 0)
}

// Refresh shows the session's plays, or those that are searched for, and the one
// selected.
func (p *Plays) Refresh() {
	l := p.session.Lesson()
	p.shown = session.FindPlays(l, p.search.Text)
	show(p.search, p.search.wanted || p.search.Text != "" || len(l.Plays) > fewPlays)
	show(p.found, p.search.Text != "")
	p.found.SetText(words.T("%d of %d plays", len(p.shown), len(l.Plays)))
	p.fitRows()
	p.List.Refresh()
	if row := p.rowShown(); row >= 0 {
		p.List.Select(row)
		return
	}
	p.List.UnselectAll()
}

// rowShown is the row of the play shown, -1 if it is not among those listed.
func (p *Plays) rowShown() int { return slices.Index(p.shown, p.session.PlayIndex()) }

// Step shows the play so many rows further down, at the ends the last one there is.
func (p *Plays) Step(by int) {
	if len(p.shown) == 0 {
		return
	}
	row := p.rowShown()
	if row < 0 && by < 0 {
		row = len(p.shown)
	}
	p.session.SelectPlay(p.shown[min(max(row+by, 0), len(p.shown)-1)])
}

// Page shows the play so many pages of the list further down.
func (p *Plays) Page(by int) {
	p.Step(by * max(int(p.List.Size().Height/p.rowHeight())-1, 1))
}

// FocusSearch gives the keys to the field to search in. The list is asked for the
// window: of a field not painted yet the toolkit does not know it.
func (p *Plays) FocusSearch() {
	p.search.wanted = true
	p.Refresh()
	if c := fyne.CurrentApp().Driver().CanvasForObject(p.List); c != nil {
		c.Focus(p.search)
	}
}

// leaveSearch gives the keys to the list; with Escape all plays are listed again.
func (p *Plays) leaveSearch(all bool) {
	if all {
		p.search.wanted = false
		p.search.SetText("")
		p.Refresh()
	}
	if c := fyne.CurrentApp().Driver().CanvasForObject(p.List); c != nil {
		c.Focus(p.List)
	}
}

// Move puts the play shown one place up or down in the list.
func (p *Plays) Move(by int) {
	row := p.rowShown()
	if to := row + by; row >= 0 && to >= 0 && to < len(p.shown) {
		p.session.MovePlay(p.shown[row], p.shown[to])
	}
}

// dragged shows where a row would come in if it were let go at a place in the window.
func (p *Plays) dragged(row int, at fyne.Position) {
	list := fyne.CurrentApp().Driver().AbsolutePositionForObject(p.List)
	to := p.rowAt(at.Y - list.Y + p.List.GetScrollOffset())
	if !p.drag.over(row, to) {
		return
	}
	p.List.ScrollTo(to)
	p.List.Refresh()
	p.say(words.T("To place %d of %d", p.shown[to]+1, len(p.session.Lesson().Plays)))
}

// dropped puts the row that is dragged in its new place.
func (p *Plays) dropped() {
	from, to, ok := p.drag.drop()
	p.say("")
	if ok && from < len(p.shown) && to < len(p.shown) {
		p.session.MovePlay(p.shown[from], p.shown[to])
	}
	p.Refresh()
}

// CancelDrag lets a row go where it was and says whether one was dragged.
func (p *Plays) CancelDrag() bool {
	if !p.drag.cancel() {
		return false
	}
	p.say("")
	p.List.Refresh()
	return true
}

// Named are the list's parts by name, for tests of the window.
func (p *Plays) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{"plays": p.List, "search": p.search}
	for row, r := range p.rows {
		named["play-row-"+strconv.Itoa(row+1)] = r
	}
	return named
}
