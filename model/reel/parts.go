package reel

import (
	"homeside/model/lesson"
	"homeside/model/units"
)

// variants are the ways to make the reel, the fullest first. The last one has no
// parts and takes any length from a pass at match speed on.
func (f *fitter) variants() []variant {
	switch f.o.Recipe {
	case SlowFast:
		return []variant{
			{parts: []part{f.slow(0)}, loops: true},
			{left: []Part{SlowPart}},
		}
	case Loop:
		return []variant{{loops: true}}
	}
	return f.teach()
}

// teach leaves out the signal first, then freezes, the title, the slow pass. What
// is not in the play cannot be left out.
func (f *fitter) teach() []variant {
	title, signal := f.title(), f.closeUp()
	all := []variant{{parts: []part{title, signal, f.slow(len(f.freezes))}, loops: true}}
	for n := len(f.freezes); n >= 0; n-- {
		all = append(all, variant{parts: []part{title, f.slow(n)}, loops: true, left: f.fewer(f.without(signal), n)})
	}
	short := f.without(title, signal)
	all = append(all, variant{parts: []part{f.slow(0)}, loops: true, left: f.fewer(short, 0)})
	short = append(short, SlowPart)
	for n := len(f.freezes); n > 0; n-- {
		all = append(all, f.held(n, f.fewer(short, n)))
	}
	return append(all, variant{left: f.fewer(short, 0)})
}

// without are the parts left out of those that there are.
func (f *fitter) without(parts ...part) (left []Part) {
	for _, p := range parts {
		if p.most > 0 {
			left = append(left, p.kind)
		}
	}
	return left
}

// fewer adds that only n freezes are kept.
func (f *fitter) fewer(left []Part, n int) []Part {
	left = append([]Part(nil), left...)
	if n < len(f.freezes) {
		left = append(left, FreezesPart)
	}
	return left
}

// title is the card with the play's title.
func (f *fitter) title() part {
	p := part{kind: TitlePart, add: func(*lesson.Reel, units.Seconds) {}}
	if heading := f.rally.Play.Title; heading != "" {
		p.least, p.most = leastTitle, mostTitle
		p.add = func(r *lesson.Reel, length units.Seconds) { r.Title = lesson.Card{Heading: heading, Length: length} }
	}
	return p
}

// closeUp shows the signal from near, slowly.
func (f *fitter) closeUp() part {
	p := part{kind: SignalPart, add: func(*lesson.Reel, units.Seconds) {}}
	if f.signal == nil {
		return p
	}
	c := *f.signal
	lasts := min(f.rally.TimeAt(c.Span.To), f.rally.To) - max(f.rally.TimeAt(c.Span.From), f.rally.From)
	p.least = min(max(leastSignal, lasts), lasts/lesson.MinRate)
	p.most = min(max(p.least, mostSignal), lasts/lesson.MinRate)
	p.add = func(r *lesson.Reel, length units.Seconds) {
		r.Takes = append(r.Takes, lesson.Take{
			Play: f.play + 1, From: &c.Span.From, To: &c.Span.To, Speed: min(max(float64(lasts/length), lesson.MinRate), 1),
			Camera: lesson.Camera{Kind: lesson.PushIn, Player: c.Giver, Width: signalAcross},
		})
	}
	return p
}

// slow is a slow pass that holds for the first n freezes.
func (f *fitter) slow(n int) part {
	quick, calm := f.holding(n)
	p := part{kind: SlowPart, least: f.pass/fastest + quick, most: f.pass/slowest + calm}
	p.add = func(r *lesson.Reel, length units.Seconds) {
		share := (length - p.least) / (p.most - p.least)
		t := f.take(float64(f.pass / (f.pass/fastest + (f.pass/slowest-f.pass/fastest)*share)))
		t.Freezes = f.heldFor(n, share)
		r.Takes = append(r.Takes, t)
	}
	return p
}

// held holds for the first n freezes in the pass at match speed.
func (f *fitter) held(n int, left []Part) variant {
	v := variant{holds: new([]lesson.Freeze), left: left}
	least, most := f.holding(n)
	v.parts = []part{{kind: FreezesPart, least: least, most: most, add: func(_ *lesson.Reel, length units.Seconds) {
		*v.holds = f.heldFor(n, (length-least)/(most-least))
	}}}
	return v
}
