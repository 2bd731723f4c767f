package panel

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/looks"
	"homeside/app/session"
	"homeside/canvas/look"
	"homeside/model/rally"
)

// Size of the small court beside a play's sentence, in pixels.
const (
	thumbWidth  = 46
	thumbHeight = 88
	thumbPoint  = 0.45 // a point of its drawing
)

// Plays is the list of plays: a sentence with a small court each.
type Plays struct {
	List    *keyList
	session *session.Session
	thumbs  map[int]image.Image
	made    int // the revision thumbs belong to
	look    *look.Look
}

// keyList is a list that keeps the keys it moves with and hands on the others,
// so that they play and step also after a click on a play.
type keyList struct {
	widget.List
	keys func(*fyne.KeyEvent)
}

// TypedKey implements fyne.Focusable.
func (l *keyList) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyUp, fyne.KeyDown:
		l.List.TypedKey(k)
	default:
		l.keys(k)
	}
}

// NewPlays is the list of a session's plays; keys takes the keys that the list
// has no use for.
func NewPlays(s *session.Session, keys func(*fyne.KeyEvent)) *Plays {
	p := &Plays{session: s}
	p.List = &keyList{keys: keys}
	p.List.Length = func() int { return len(s.Lesson().Plays) }
	p.List.CreateItem = newRow
	p.List.UpdateItem = p.fill
	p.List.ExtendBaseWidget(p.List)
	p.List.OnSelected = s.SelectPlay
	return p
}

func newRow() fyne.CanvasObject {
	small := fynecanvas.NewImageFromImage(nil)
	small.FillMode = fynecanvas.ImageFillContain
	small.SetMinSize(fyne.NewSize(thumbWidth, thumbHeight))
	title := widget.NewLabel("")
	title.Wrapping = fyne.TextWrapWord
	return container.NewBorder(nil, nil, small, nil, title)
}

func (p *Plays) fill(i widget.ListItemID, o fyne.CanvasObject) {
	row := o.(*fyne.Container).Objects
	row[0].(*widget.Label).SetText(PlayName(p.session, i))
	small := row[1].(*fynecanvas.Image)
	small.Image = p.thumb(i)
	small.Refresh()
}

// thumb is the small court of play i, kept until the lesson changes.
func (p *Plays) thumb(i int) image.Image {
	if p.thumbs == nil || p.look != looks.Now() || p.made != p.session.Revision() && !p.session.Previewing() {
		p.thumbs, p.made, p.look = map[int]image.Image{}, p.session.Revision(), looks.Now()
	}
	if img, ok := p.thumbs[i]; ok {
		return img
	}
	img := Thumb(p.session, i)
	p.thumbs[i] = img
	return img
}

// Thumb is a small picture of play i at its serve; nil if it cannot be solved.
func Thumb(s *session.Session, i int) image.Image {
	r, err := rally.Solve(s.Lesson(), i)
	if err != nil {
		return nil
	}
	return smallCourt(r, s.Lesson().Venue.Surface(), fyne.NewSize(thumbWidth, thumbHeight), thumbPoint, 0)
}

// Refresh shows the session's plays and the one selected.
func (p *Plays) Refresh() {
	p.List.Refresh()
	p.List.Select(p.session.PlayIndex())
}
