package panel

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"homeside/model/lesson"
)

// fitted is what the height of a play's row follows from: how many lines its title has
// or, where that is not sure, the title.
type fitted struct {
	lines  int
	title  string
	tagged bool
}

// rows is what all rows of a width have in common.
type rows struct {
	width, text float32            // the size of the letters
	least       float32            // the height of a row of few words
	room        float32            // the width of a line of its title
	space       float32            // between two words
	words       map[string]float32 // their widths
	heights     map[fitted]float32 // of rows, as they were measured
}

// fitRows makes each row as high as its play's title and tags need.
func (p *Plays) fitRows() {
	if p.List.Size().Width <= 0 {
		return
	}
	least := p.rowsOf(p.List.Size().Width).least
	for row := range p.shown {
		p.List.setHeight(row, p.height(row), least)
	}
}

// height is the height of a row.
func (p *Plays) height(row int) float32 {
	i := p.shown[row]
	return p.fit(PlayName(p.session, i), p.session.Lesson().Plays[i], p.List.Size().Width)
}

// fit is the height of a play's row. Breaking a title into lines takes a millisecond,
// and there may be hundreds of plays: one is measured for each number of lines.
func (p *Plays) fit(name string, play lesson.Play, width float32) float32 {
	r := p.rowsOf(width)
	k := fitted{lines: r.lines(name), tagged: len(play.Tags) > 0}
	if k.lines == 0 {
		k.title = name
	}
	if _, ok := r.heights[k]; !ok {
		p.row.set(name, play, nil)
		p.row.Resize(fyne.NewSize(width, r.least))
		r.heights[k] = max(r.least, p.row.MinSize().Height-theme.InnerPadding()) // of air under its last line
	}
	return r.heights[k]
}

// rowsOf is what rows of a width have in common, measured when it changes.
func (p *Plays) rowsOf(width float32) rows {
	if text := p.List.Theme().Size(theme.SizeNameText); p.common.width != width || p.common.text != text {
		least := newDraggedRow().MinSize().Height
		p.row.Resize(fyne.NewSize(width, least))
		p.common = rows{width, text, least, p.row.title.Size().Width - 2*theme.InnerPadding(), wide(" ", text), map[string]float32{}, map[fitted]float32{}}
	}
	return p.common
}

func wide(text string, size float32) float32 {
	return fyne.MeasureText(text, size, fyne.TextStyle{}).Width
}

// nearly is by how much the width of words may differ from the sum of theirs.
const nearly = 2

// lines is how many lines a title has, 0 where that is not sure: with a word wider than
// a line, or one that just fits or just does not.
func (r rows) lines(title string) int {
	n, line := 1, float32(0)
	for _, word := range strings.Fields(title) {
		w, ok := r.words[word]
		if !ok {
			w = wide(word, r.text)
			r.words[word] = w
		}
		with := line + r.space + w
		switch {
		case line == 0:
			with = w
		case with > r.room:
			n, with = n+1, w
		}
		if w > r.room-nearly || with > r.room-nearly || line > 0 && with == w && line+r.space+w < r.room+nearly {
			return 0
		}
		line = with
	}
	return n
}

// rowHeight is the height of a row of few words, with what is between two.
func (p *Plays) rowHeight() float32 {
	return p.rowsOf(p.List.Size().Width).least + p.List.Theme().Size(theme.SizeNamePadding)
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
