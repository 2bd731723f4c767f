package panel

import (
	"fmt"
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"

	"homeside/app/session"
	"homeside/canvas/film"
	"homeside/canvas/raster"
	"homeside/model/reel"
	"homeside/words"
)

// takeStrip is the running order of a reel: a small frame for the title card,
// every take and the end card.
type takeStrip struct {
	box     *container.Scroll
	row     *fyne.Container
	session *session.Session
	cards   []*takeCard
	keys    func(*fyne.KeyEvent)
	say     func(string)
	tell    func(tip string)
	order   reorder // of takes, by their numbers from 0
	seen    int     // the place picked that was last scrolled to
}

func newTakeStrip(s *session.Session, keys func(*fyne.KeyEvent), say, tell func(string)) *takeStrip {
	t := &takeStrip{session: s, row: container.NewHBox(), keys: keys, say: say, tell: tell, order: newReorder()}
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
		c := newTakeCard(t.picker(len(t.cards)), t.keys, t.tell)
		t.cards = append(t.cards, c)
		t.row.Add(c)
	}
	for i, c := range t.cards {
		show(c, i < n)
		if i < n {
			pick := t.pick(i, len(r.Takes))
			c.set(Choice{Title: t.title(pick), Text: t.play(r, pick) + "\n" + t.lasts(f, r, pick), Picture: smallFrameOf(f, pick, width, height)})
			c.SetToolTip(t.tip(r, pick))
			c.choose(pick == t.session.ReelPick())
			t.movable(c, pick)
		}
	}
	t.row.Refresh()
	t.seek(t.place(t.session.ReelPick(), len(r.Takes)))
}

// seek scrolls to the place that is picked when that is another.
func (t *takeStrip) seek(place int) {
	if place == t.seen || place >= len(t.cards) {
		return
	}
	t.seen = place
	t.reveal(t.step()*float32(place), t.step())
}

// movable lets a take be dragged; cards of words keep their places.
func (t *takeStrip) movable(c *takeCard, pick int) {
	if pick < 0 {
		c.drag(nil, nil)
		return
	}
	c.drag(func(at fyne.Position) { t.dragged(pick, at) }, t.dropped)
}

// dragged shows where a take would come in if it were let go at a place in the window.
func (t *takeStrip) dragged(take int, at fyne.Position) {
	r, _ := t.session.Reel()
	row := fyne.CurrentApp().Driver().AbsolutePositionForObject(t.row)
	step := t.step()
	to := placeAt(at.X-row.X-step, step, len(r.Takes)) // behind the title card
	if !t.order.over(take, to) {
		return
	}
	t.reveal(step*float32(to+1), step)
	t.mark()
	t.say(words.T("To place %d of %d", to+1, len(r.Takes)))
}

// dropped puts the take that is dragged in its new place.
func (t *takeStrip) dropped() {
	from, to, ok := t.order.drop()
	t.mark()
	t.say("")
	if r, _ := t.session.Reel(); ok && from < len(r.Takes) {
		t.session.PickTake(from)
		t.session.MoveTake(to - from)
	}
}

// cancel lets a take go where it was and says whether one was dragged.
func (t *takeStrip) cancel() bool {
	was := t.order.cancel()
	if was {
		t.mark()
		t.say("")
	}
	return was
}

// mark shows where what is dragged would come in.
func (t *takeStrip) mark() {
	for i, c := range t.cards {
		show(c.before, t.order.before(i-1))
		show(c.after, t.order.after(i-1))
	}
}

// step is the width of a card with what is between two.
func (t *takeStrip) step() float32 {
	return t.cards[0].MinSize().Width + theme.Padding()
}

// reveal scrolls so that a stretch of the strip can be seen.
func (t *takeStrip) reveal(from, width float32) {
	at := t.box.Offset
	at.X = max(min(at.X, from), from+width-t.box.Size().Width, 0)
	t.box.ScrollToOffset(at)
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

// place is where in the strip a pick stands.
func (t *takeStrip) place(pick, takes int) int {
	switch pick {
	case session.TitleCard:
		return 0
	case session.EndCard:
		return takes + 1
	}
	return pick + 1
}

func (t *takeStrip) picker(place int) func() {
	return func() {
		r, _ := t.session.Reel()
		t.session.PickTake(t.pick(place, len(r.Takes)))
	}
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
