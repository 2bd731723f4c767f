package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/model/lesson"
)

// fitted is what the height of a play's row follows from.
type fitted struct {
	name        string
	tagged      bool
	width, text float32 // of the row; the size of its letters
}

// fitRows makes each row as high as its play's title and tags need.
func (p *Plays) fitRows() {
	if p.List.Size().Width <= 0 {
		return
	}
	for row := range p.shown {
		p.List.setHeight(row, p.height(row))
	}
}

// height is the height of a row.
func (p *Plays) height(row int) float32 {
	i := p.shown[row]
	return p.fit(PlayName(p.session, i), p.session.Lesson().Plays[i], p.List.Size().Width)
}

// fit is the height of a play's row; what was measured once is kept, for there may be
// hundreds of plays.
func (p *Plays) fit(name string, play lesson.Play, width float32) float32 {
	k := fitted{name, len(play.Tags) > 0, width, p.List.Theme().Size(theme.SizeNameText)}
	if h, ok := p.heights[k]; ok {
		return h
	}
	least := newDraggedRow().MinSize().Height
	p.row.set(name, play, nil)
	p.row.Resize(fyne.NewSize(width, least))
	h := max(least, p.row.MinSize().Height-theme.InnerPadding()) // of air under its last line
	p.heights[k] = h
	return h
}

// rowHeight is the height of a row of few words, with what is between two.
func (p *Plays) rowHeight() float32 {
	return newDraggedRow().MinSize().Height + p.List.Theme().Size(theme.SizeNamePadding)
}

// rowAt is the row so far below the first one's top, beyond the ends the nearest.
func (p *Plays) rowAt(y float32) int {
	between := p.List.Theme().Size(theme.SizeNamePadding)
	for row := range p.shown {
		if y -= p.height(row) + between; y < 0 {
			return row
		}
	}
	return max(len(p.shown)-1, 0)
}
