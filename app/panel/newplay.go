package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/looks"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/words"
)

// kindSize is the size of a kind's card: what it refuses takes five lines.
var kindSize = CardSize{Picture: fyne.NewSize(150, 250), Title: 26, Text: 90}

const (
	kindPoint = 0.62 // a point of its drawing
)

// NewPlay is the chooser of a play for the present score: whose formation, where
// the serve goes, and every kind as a small court of the very play it writes.
type NewPlay struct {
	Box     fyne.CanvasObject
	Gallery *Gallery

	session *session.Session
	who     *Dropdown
	serve   *Dropdown
	walk    *heard.Check
	said    *widget.Label
	drawn   map[session.Request]drawnKind // since the chooser was opened
	ready   func(hindered string)
}

// drawnKind is what a request writes: the play with its small court, or why none.
type drawnKind struct {
	written formation.Written
	err     error
	choice  Choice
	notes   string
}

// NewNewPlay is the chooser for a session's score. ready is told why there
// is no play to insert, "" where there is one. The error says why none can be written.
func NewNewPlay(s *session.Session, ready func(hindered string)) (*NewPlay, error) {
	p := &NewPlay{session: s, drawn: map[session.Request]drawnKind{}, ready: ready, said: wrapped()}
	var pairs []string
	for _, returns := range []bool{false, true} {
		situation, err := s.Situation(session.Request{Returns: returns})
		if err != nil {
			return nil, err
		}
		pairs = append(pairs, words.PairAt(situation))
	}
	p.who = NewDropdown(pairs, func(string) { p.refresh() })
	p.serve = NewDropdown(words.ServesTo(), func(string) { p.refresh() })
	p.walk = heard.NewCheck(words.T("Begin where the play shown ends"), func(bool) { p.refresh() })
	p.Gallery = NewGallery(len(formation.Kinds), kindSize)
	p.Gallery.OnChosen = func(int) { p.say() }
	p.Box = p.layOut()
	p.begin(pairs)
	return p, nil
}

func (p *NewPlay) layOut() fyne.CanvasObject {
	serve := container.NewHBox(widget.NewLabel(words.T("The serve goes")), Roomy(p.serve))
	return container.NewVBox(p.who, container.New(&flow{}, serve, p.walk), p.Gallery.Box, container.New(lines{3}, p.said))
}

// begin chooses the near pair and the first kind worth writing: a stack where
// somebody is to change sides, or else ordinary places.
func (p *NewPlay) begin(pairs []string) {
	p.serve.Selected = p.serve.Options[formation.ServeMiddle]
	p.who.Selected = pairs[0]
	if s, _ := p.session.Situation(session.Request{}); s.Team != court.Near {
		p.who.Selected = pairs[1]
	}
	_, ok := p.session.Play()
	show(p.walk, ok)
	p.refresh()
	for _, k := range []formation.Kind{lesson.Stacked, lesson.Ordinary} {
		if _, chosen := p.Gallery.Chosen(); !chosen {
			p.Gallery.Choose(numberOf(k))
		}
	}
}

// numberOf is a kind's number among formation.Kinds.
func numberOf(k formation.Kind) int {
	for i, other := range formation.Kinds {
		if other == k {
			return i
		}
	}
	return -1
}

// request is what the chooser asks for of a kind.
func (p *NewPlay) request(k formation.Kind) session.Request {
	return session.Request{
		Kind: k, Returns: p.who.Selected == p.who.Options[1],
		Serve: formation.ServeTo(max(p.serve.SelectedIndex(), 0)), WalkOn: p.walk.Checked,
	}
}

func (p *NewPlay) refresh() {
	all := make([]Choice, len(formation.Kinds))
	for i, k := range formation.Kinds {
		all[i] = p.draw(p.request(k)).choice
	}
	p.Gallery.Show(all)
	p.say()
}

// draw writes and draws a request once.
func (p *NewPlay) draw(r session.Request) drawnKind {
	if d, ok := p.drawn[r]; ok {
		return d
	}
	l := p.session.Lesson()
	d := drawnKind{choice: Choice{Title: words.KindTitle(r.Kind), Text: words.KindDoes(r.Kind, !r.Returns)}}
	d.written, d.err = p.session.WriteFormation(r)
	if d.err != nil {
		d.choice.Text, d.choice.Refused = words.FormationRefused(d.err, l), true
	} else {
		d.choice.Picture = smallCourt(d.written.Rally, l.Venue.Surface(), kindSize.Picture, kindPoint, 0)
		d.notes = notesOf(d.written)
	}
	p.drawn[r] = d
	return d
}

// notesOf is what a written play comes to, with its tell where it pretends something.
func notesOf(w formation.Written) string {
	tell, ok, err := w.Tell(formation.TellOptions{})
	if err != nil || !ok {
		return words.FormationNotes(w, nil)
	}
	return words.FormationNotes(w, &tell)
}

// chosen is the play that would be inserted.
func (p *NewPlay) chosen() (drawnKind, bool) {
	i, ok := p.Gallery.Chosen()
	if !ok {
		return drawnKind{}, false
	}
	return p.draw(p.request(formation.Kinds[i])), true
}

// say says of the kind chosen whether the pair is in time, and what it gives away.
func (p *NewPlay) say() {
	d, ok := p.chosen()
	hindered := ""
	if !ok {
		hindered = words.T("Choose what the pair does.")
	}
	p.said.SetText(hindered + d.notes)
	p.ready(hindered)
}

// Insert puts the chosen play behind the one shown, as one step.
func (p *NewPlay) Insert() error {
	d, ok := p.chosen()
	if !ok {
		return nil
	}
	return p.session.InsertWritten(d.written)
}

// Named are the chooser's controls by name, for tests of the window.
func (p *NewPlay) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{"serve-to": p.serve}
	for i, k := range formation.Kinds {
		named["kind-"+k.String()] = p.Gallery.Card(i)
	}
	return named
}

// lines gives a text the room of so many lines, or more where it says more.
type lines struct{ n int }

// MinSize implements fyne.Layout.
func (l lines) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, max(float32(l.n)*lineHeight*looks.Letters(), o[0].MinSize().Height))
}

// Layout implements fyne.Layout.
func (l lines) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[0].Resize(size)
	o[0].Move(fyne.Position{})
}

// lineHeight is the height of a line of the window's text with the air of a label.
const lineHeight = 22
