package panel

import (
	"slices"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// here is the moment of the take picked that the preview shows; false, and said, if
// it shows another part of the reel.
func (p *Reels) here() (*rally.Rally, units.Seconds, bool) {
	if p.film == nil {
		return nil, 0, false
	}
	m := p.film.Reel.At(p.preview.at)
	if m.Card != nil || p.film.Reel.Takes[m.Take].Index != p.session.ReelPick() {
		p.Say(words.T("The preview shows another part of the reel: move it into this take first."))
		return nil, 0, false
	}
	return p.film.Reel.Takes[m.Take].Rally, m.T, true
}

// slowHere adds a stretch at another speed from the event before the moment that the
// preview shows to the one after it.
func (p *Reels) slowHere() {
	r, at, ok := p.here()
	switch take, _ := p.session.Take(); {
	case !ok:
	case len(take.Slows) >= lesson.MaxSlows:
		p.Say(words.T("A take has %d of these at most.", lesson.MaxSlows))
	default:
		p.take.set(words.T("slow down between two events"), func(t *lesson.Take) {
			t.Slows = append(slices.Clip(t.Slows), lesson.Slow{Span: stretchAbout(r, at), Speed: usualSlow})
		})
	}
}

// usualSlow is the speed of a new stretch.
const usualSlow = 0.25

// stretchAbout is the stretch between two events of a rally that holds a moment.
func stretchAbout(r *rally.Rally, at units.Seconds) lesson.Span {
	span := lesson.Span{From: lesson.At(lesson.ContactOf(0)), To: lesson.At(lesson.TheEnd)}
	for _, e := range r.Events {
		switch {
		case !e.Reached || e.Name.Moment == lesson.Net:
		case e.At <= at && e.Name != lesson.TheEnd:
			span.From = lesson.At(e.Name)
		case e.At > r.TimeAt(span.From) && e.At > at:
			span.To = lesson.At(e.Name)
			return span
		}
	}
	return span
}

// freezeHere adds a freeze to the take picked at the moment that the preview shows.
func (p *Reels) freezeHere() {
	r, at, ok := p.here()
	switch take, _ := p.session.Take(); {
	case !ok:
	case len(take.Freezes) >= lesson.MaxFreezes:
		p.Say(words.T("A take has %d of these at most.", lesson.MaxFreezes))
	default:
		p.take.set(words.T("add a freeze"), func(t *lesson.Take) {
			t.Freezes = append(slices.Clip(t.Freezes), lesson.Freeze{At: r.AnchorAt(at), Length: usualFreeze})
		})
	}
}

// usualFreeze is how long a new freeze holds.
const usualFreeze = 2
