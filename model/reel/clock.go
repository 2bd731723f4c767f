package reel

import (
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Span is a stretch of the clip.
type Span struct{ From, To units.Seconds }

// Length is how long the stretch is.
func (s Span) Length() units.Seconds { return s.To - s.From }

// Spans are the stretches of the clip in which a stretch of take i's play is
// shown: one for every loop, longer where it is slow or holds. They are in their
// order and do not overlap.
func (r *Reel) Spans(i int, from, to units.Seconds) []Span {
	var all []Span
	t := &r.Takes[i]
	for _, p := range r.pieces[t.pieces.at:t.pieces.to] {
		s, ok := p.shown(from, to)
		if !ok {
			continue
		}
		if last := len(all) - 1; last >= 0 && all[last].To == s.From && p.loop != p.start {
			all[last].To = s.To
			continue
		}
		all = append(all, s)
	}
	return all
}

// shown is the part of a piece that shows something between two times of the play.
func (p piece) shown(from, to units.Seconds) (Span, bool) {
	if p.speed == 0 {
		return Span{p.start, p.end}, from <= p.from && p.from < to
	}
	s := Span{p.clip(from), p.clip(to)}
	return s, s.From < s.To
}

// Event is an event of a play as the clip shows it.
type Event struct {
	Name  lesson.Event
	At    units.Seconds // in the clip
	Take  int           // of Reel.Takes
	Other bool          // of the play beside
	Speed float64       // of the play's clock there
}

// Events are the events of the plays that come to pass in the clip, in the order
// of its takes and loops, each as often as it is shown. One at which the picture
// holds happens when it begins to hold.
func (r *Reel) Events() []Event {
	var all []Event
	for i := range r.Takes {
		t := &r.Takes[i]
		for n := t.pieces.at; n < t.pieces.to; n++ {
			all = r.eventsOf(all, i, n)
		}
	}
	return all
}

// eventsOf appends the events that happen in piece n, its beginning excluded
// unless the take's loop begins there.
func (r *Reel) eventsOf(all []Event, take, n int) []Event {
	p := r.pieces[n]
	for i, play := range r.Takes[take].plays() {
		for _, e := range play.Events {
			begins := e.At == p.from && p.start == p.loop
			if !e.Reached || !begins && !(e.At > p.from && e.At <= p.to) {
				continue
			}
			all = append(all, Event{e.Name, p.clip(e.At), take, i == 1, p.speed})
		}
	}
	return all
}

// clip is the time of the clip at a time of the play within the piece.
func (p piece) clip(t units.Seconds) units.Seconds {
	if t <= p.from {
		return p.start
	}
	if t >= p.to {
		return p.end
	}
	return p.start + (t-p.from)/units.Seconds(p.speed)
}

// plays are the take's play and, if there is one, the play beside it.
func (t *Take) plays() []*rally.Rally {
	if t.Other == nil {
		return []*rally.Rally{t.Rally}
	}
	return []*rally.Rally{t.Rally, t.Other}
}

// Times are when the clip shows a moment of take i's play: once for every loop,
// when it begins to hold if it does.
func (r *Reel) Times(i int, at units.Seconds) []units.Seconds {
	var all []units.Seconds
	t := &r.Takes[i]
	for _, p := range r.pieces[t.pieces.at:t.pieces.to] {
		if at == p.from && p.start == p.loop || at > p.from && at <= p.to {
			all = append(all, p.clip(at))
		}
	}
	return all
}

// Caption is what a take or one of its freezes says.
type Caption struct {
	Span
	Text string
	Take int // of Reel.Takes
}

// Captions are what takes and freezes say, in their order.
func (r *Reel) Captions() []Caption {
	var all []Caption
	for _, p := range r.pieces {
		if p.take < 0 {
			continue
		}
		text := r.captionOf(p)
		if last := len(all) - 1; last >= 0 && all[last].Text == text && all[last].Take == p.take && all[last].To == p.start {
			all[last].To = p.end
		} else if text != "" {
			all = append(all, Caption{Span{p.start, p.end}, text, p.take})
		}
	}
	return all
}

// captionOf is what is said in a piece of a take: by the freeze, else by the take.
func (r *Reel) captionOf(p piece) string {
	t := &r.Takes[p.take]
	if p.freeze >= 0 && t.Freezes[p.freeze].Caption != "" {
		return t.Freezes[p.freeze].Caption
	}
	return t.Caption
}

// Cards are the cards that are shown with their stretches of the clip.
func (r *Reel) Cards() []CardShown {
	var all []CardShown
	for _, p := range r.pieces {
		switch p.take {
		case titleCard:
			all = append(all, CardShown{Span{p.start, p.end}, r.Of.Title})
		case endCard:
			all = append(all, CardShown{Span{p.start, p.end}, r.Of.End})
		}
	}
	return all
}

// CardShown is a card in the clip.
type CardShown struct {
	Span
	Card lesson.Card
}
