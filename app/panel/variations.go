package panel

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

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
	plays   [][]lesson.Play // by card: what it inserts
	step    string
}

// Size of a variation's small court in the window's units.
var variationSize = fyne.NewSize(160, 200)

const (
	variationPoint   = 0.55
	variationColumns = 4
)

// NewWhatIf is a chooser among the siblings of a written play.
func NewWhatIf(w formation.Written, surface court.Rect) (*Variations, error) {
	siblings, err := w.WhatIf()
	if err != nil {
		return nil, err
	}
	p := newVariations("what if", len(siblings))
	all := make([]Choice, len(siblings))
	for i, s := range siblings {
		title, takes := words.Changed(s)
		all[i] = Choice{Title: title, Text: takes, Picture: smallCourt(s.Rally, surface, variationSize, variationPoint, 0)}
		p.plays = append(p.plays, []lesson.Play{s.Play})
	}
	p.Gallery.Show(all)
	return p, nil
}

// NewMistakes is a chooser among the usual mistakes of a written play, each inserted
// as it was and as it should be.
func NewMistakes(w formation.Written, surface court.Rect) (*Variations, error) {
	pairs, err := w.Pairs()
	if err != nil {
		return nil, err
	}
	p := newVariations("as it was, as it should be", len(pairs))
	all := make([]Choice, len(pairs))
	for i, m := range pairs {
		all[i] = Choice{Title: "As it was", Text: words.MistakeTitle(m.Mistake) + ".", Picture: smallCourt(m.WasRally, surface, variationSize, variationPoint, 0)}
		p.plays = append(p.plays, []lesson.Play{m.Was, m.Should})
	}
	p.Gallery.Show(all)
	return p, nil
}

func newVariations(step string, count int) *Variations {
	p := &Variations{step: step, Gallery: NewGallery(min(count, variationColumns), count, variationSize)}
	p.Box = container.NewVBox(p.Gallery.Box)
	return p
}

// Chosen is what the card chosen inserts, with the name of the step; nothing
// where none is chosen.
func (p *Variations) Chosen() (step string, plays []lesson.Play) {
	if i, ok := p.Gallery.Chosen(); ok {
		return p.step, p.plays[i]
	}
	return p.step, nil
}

// All is what all cards together insert.
func (p *Variations) All() (step string, plays []lesson.Play) {
	for _, each := range p.plays {
		plays = append(plays, each...)
	}
	return p.step, plays
}
