package panel

import (
	"fmt"
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"homeside/app/session"
	"homeside/canvas/film"
	"homeside/canvas/raster"
	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/words"
)

// takeStrip is the running order of a reel: a small frame for the title card,
// every take and the end card.
type takeStrip struct {
	box     *container.Scroll
	row     *fyne.Container
	session *session.Session
	cards   []*card
	keys    func(*fyne.KeyEvent)
}

// Room of a small frame in the window's units.
const (
	smallFrame  = 92
	takeTitle   = 34
	takeText    = 24
	stripHeight = smallFrame + takeTitle + takeText + 22
)

func newTakeStrip(s *session.Session, keys func(*fyne.KeyEvent)) *takeStrip {
	t := &takeStrip{session: s, row: container.NewHBox(), keys: keys}
	t.box = container.NewHScroll(t.row)
	t.box.SetMinSize(fyne.NewSize(200, stripHeight))
	return t
}

// refresh shows the reel's takes as small frames of the shape of a size.
func (t *takeStrip) refresh(f *film.Film, width, height int) {
	r, ok := t.session.Reel()
	n := len(r.Takes) + 2
	if !ok {
		n = 0
	}
	for len(t.cards) < n {
		c := newCard(CardSize{Picture: fyne.NewSize(smallFrame+22, smallFrame), Title: takeTitle, Text: takeText}, t.picker(len(t.cards)), t.keys)
		t.cards = append(t.cards, c)
		t.row.Add(c)
	}
	for i, c := range t.cards {
		show(c, i < n)
		if i < n {
			pick := t.pick(i, len(r.Takes))
			c.set(Choice{Title: t.title(r, pick), Text: t.lasts(f, r, pick), Picture: smallFrameOf(f, pick, width, height)})
			c.choose(pick == t.session.ReelPick())
		}
	}
	t.row.Refresh()
}

// pick is what a place of the strip picks: the title card first, the end card last.
func (t *takeStrip) pick(place, takes int) int {
	switch {
	case place == 0:
		return session.TitleCard
	case place == takes+1:
		return session.EndCard
	}
	return place - 1
}

func (t *takeStrip) picker(place int) func() {
	return func() {
		r, _ := t.session.Reel()
		t.session.PickTake(t.pick(place, len(r.Takes)))
	}
}

func (t *takeStrip) title(r lesson.Reel, pick int) string {
	switch pick {
	case session.TitleCard:
		return words.T("Title card")
	case session.EndCard:
		return words.T("End card")
	}
	return words.T("Take %d", pick+1)
}

// lasts is how long a part of the reel is shown.
func (t *takeStrip) lasts(f *film.Film, r lesson.Reel, pick int) string {
	switch pick {
	case session.TitleCard:
		return cardLasts(r.Title)
	case session.EndCard:
		return cardLasts(r.End)
	}
	if k := shownTake(f.Reel, pick); k >= 0 {
		return words.ClipClock(f.Reel.Takes[k].End-f.Reel.Takes[k].Start) + " " + words.SpeedTag(r.Takes[pick].Rate())
	}
	return words.T("not shown")
}

func cardLasts(c lesson.Card) string {
	if !c.Shown() {
		return words.T("none")
	}
	return words.ClipClock(c.Lasts())
}

// shownTake is the number among the takes that are shown, -1 for one that is not.
func shownTake(r *reel.Reel, index int) int {
	for k, t := range r.Takes {
		if t.Index == index {
			return k
		}
	}
	return -1
}

// smallFrameOf is a frame from the middle of a part of a reel; nil if it is not shown.
func smallFrameOf(f *film.Film, pick, width, height int) image.Image {
	at := f.Reel.Length() // of the end card
	switch {
	case pick == session.TitleCard:
		at = 0
	case pick >= 0:
		k := shownTake(f.Reel, pick)
		if k < 0 {
			return nil
		}
		at = (f.Reel.Takes[k].Start + f.Reel.Takes[k].End) / 2
	}
	if m := f.Reel.At(at); (m.Card == nil) != (pick >= 0) {
		return nil // there is no such card
	}
	k := float64(smallFrame*sharply) / float64(max(width, height))
	w, h := int(float64(width)*k), int(float64(height)*k)
	return raster.NewFrames(f.Static(w, h)).Draw(f.Moving(w, h, at))
}

// takeControl names a place of the strip for tests: "take-0" is the title card.
func takeControl(place int) string { return fmt.Sprintf("take-%d", place) }
