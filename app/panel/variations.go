package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/lesson"
	"homeside/words"
)

// Variations is a chooser of what comes of a written play: what if, or its usual
// mistakes.
type Variations struct {
	Box     fyne.CanvasObject
	Gallery *Gallery
	step    string // the name of what is done
	all     []variation
	said    *widget.Label
}

// variation is a card, what is said of it and what it inserts.
type variation struct {
	choice Choice
	notes  string
	plays  []lesson.Play
}

// variationSize is the size of a variation's card: titles take two lines.
var variationSize = CardSize{Picture: fyne.NewSize(156, 165), Title: 45, Text: 26}

const (
	variationPoint = 0.46
)

// NewWhatIf is a chooser among the siblings of a written play.
func NewWhatIf(w formation.Written, surface court.Rect) (*Variations, error) {
	siblings, err := w.WhatIf()
	if err != nil {
		return nil, err
	}
	p := &Variations{step: words.T("what if")}
	for _, s := range siblings {
		title, takes := words.Changed(s)
		p.all = append(p.all, variation{
			choice: Choice{Title: title, Text: takes, Picture: smallCourt(s.Rally, surface, variationSize.Picture, variationPoint, 0)},
			notes:  words.FormationNotes(s.Written, nil), plays: []lesson.Play{words.EntitledSibling(w, s)},
		})
	}
	return p.shown(), nil
}

// NewMistakes is a chooser among the usual mistakes of a written play, each inserted
// as it was and as it should be.
func NewMistakes(w formation.Written, surface court.Rect) (*Variations, error) {
	pairs, err := w.Pairs()
	if err != nil {
		return nil, err
	}
	p := &Variations{step: words.T("as it was, as it should be")}
	for _, m := range pairs {
		p.all = append(p.all, variation{
			choice: Choice{Title: words.MistakeTitle(m.Mistake), Picture: smallCourt(m.WasRally, surface, variationSize.Picture, variationPoint, 0)},
			notes:  words.AsItWas(), plays: words.EntitledPair(w, m),
		})
	}
	return p.shown(), nil
}

// shown makes the cards and chooses the first.
func (p *Variations) shown() *Variations {
	p.said = wrapped()
	p.Gallery = NewGallery(len(p.all), variationSize)
	all := make([]Choice, len(p.all))
	for i, v := range p.all {
		all[i] = v.choice
	}
	p.Gallery.Show(all)
	p.Gallery.OnChosen = func(i int) { p.said.SetText(p.all[i].notes) }
	p.Gallery.Choose(0)
	p.Box = container.NewVBox(p.Gallery.Box, container.New(lines{3}, p.said))
	return p
}

// Chosen is what the card chosen inserts, with the name of the step; nothing
// where there is none.
func (p *Variations) Chosen() (step string, plays []lesson.Play) {
	if i, ok := p.Gallery.Chosen(); ok {
		return p.step, p.all[i].plays
	}
	return p.step, nil
}

// All is what all cards together insert.
func (p *Variations) All() (step string, plays []lesson.Play) {
	for _, v := range p.all {
		plays = append(plays, v.plays...)
	}
	return p.step, plays
}
