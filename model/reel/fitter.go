package reel

import (
	"slices"
	"unicode/utf8"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// How fast the slow pass is, and how long cards, close-ups and freezes are shown.
// Our choices, where no source is given.
const (
	slowest = 0.25
	fastest = 0.75

	leastTitle, mostTitle   units.Seconds = 1.5, 3
	leastSignal, mostSignal units.Seconds = 1.2, 3
	signalAcross            units.Feet    = 14

	leastFreeze, mostFreeze units.Seconds = 1, 5
	readQuickly, readCalmly               = 20, 10 // letters a second; subtitles have 12 to 20 (common practice)

	mostFreezes               = 5
	sameFreeze  units.Seconds = 0.3 // closer than this two freezes are one
)

// fitter knows what a play has to show.
type fitter struct {
	o       FitOptions
	lesson  lesson.Lesson
	play    int // from 0
	rally   *rally.Rally
	pass    units.Seconds   // one pass at match speed
	freezes []lesson.Freeze // their lengths are numbers of letters
	signal  *lesson.Cue
}

func newFitter(l lesson.Lesson, i int, o FitOptions) (*fitter, error) {
	r, err := rally.Solve(l, i)
	if err != nil {
		return nil, err
	}
	f := &fitter{o: o, lesson: l, play: i, rally: r}
	solved := Solve(l, lesson.Reel{Takes: []lesson.Take{f.take(1)}})
	if len(solved.Takes) == 0 { // the play beside it is not there
		_, err = rally.Solve(l, o.Beside-1)
		return nil, err
	}
	f.pass = solved.Length()
	f.findFreezes()
	f.findSignal()
	return f, nil
}

// take is a pass of the whole play.
func (f *fitter) take(speed float64) lesson.Take {
	t := lesson.Take{Play: f.play + 1, Beside: f.o.Beside, Camera: f.o.Camera}
	if speed != 1 {
		t.Speed = speed
	}
	return t
}

// findFreezes lists what the slow pass holds for, what matters most first: where a
// caption of the play begins, which then stands there, and the contacts after the serve.
func (f *fitter) findFreezes() {
	for _, c := range f.rally.Play.Cues {
		if c.Kind == lesson.Caption && f.rally.TimeAt(c.Span.From) < f.rally.TimeAt(c.Span.To) {
			f.freezeAtCaption(c)
		}
	}
	for shot := 1; shot < len(f.rally.Strokes); shot++ {
		if at := lesson.ContactOf(shot); f.rally.Reached(f.rally.Strokes[shot].At) {
			text := f.say(shot)
			f.freezeAt(lesson.At(at), text, utf8.RuneCountInString(text))
		}
	}
	f.freezes = f.freezes[:min(len(f.freezes), mostFreezes)]
}

// freezeAtCaption holds where a caption begins, which stays there when the play runs
// on. Beside another play it has to be said by the freeze.
func (f *fitter) freezeAtCaption(c lesson.Cue) {
	letters, text := utf8.RuneCountInString(c.Text), ""
	if f.o.Beside > 0 {
		text = c.Text
	} else {
		letters /= 2
	}
	f.freezeAt(c.Span.From, text, letters)
}

func (f *fitter) say(shot int) string {
	if f.o.Say == nil {
		return ""
	}
	return f.o.Say(f.rally, shot)
}

// freezeAt adds a freeze unless it lies outside the play or beside another; its
// length is the number of letters that are read meanwhile.
func (f *fitter) freezeAt(a lesson.Anchor, caption string, letters int) {
	at := f.rally.TimeAt(a)
	if at < f.rally.From || at > f.rally.To || slices.ContainsFunc(f.freezes, func(g lesson.Freeze) bool {
		d := at - f.rally.TimeAt(g.At)
		return max(d, -d) < sameFreeze
	}) {
		return
	}
	f.freezes = append(f.freezes, lesson.Freeze{At: a, Length: units.Seconds(letters), Caption: caption})
}

// findSignal is the first signal that lasts.
func (f *fitter) findSignal() {
	for i, c := range f.rally.Play.Cues {
		from, to := f.rally.TimeAt(c.Span.From), f.rally.TimeAt(c.Span.To)
		if c.Kind == lesson.Signal && max(from, f.rally.From) < min(to, f.rally.To) {
			f.signal = &f.rally.Play.Cues[i]
			return
		}
	}
}

// between is how long a freeze lasts: at least so that a hurried reader, at most
// so that a calm one is done.
func between(letters units.Seconds) (least, most units.Seconds) {
	least = min(max(letters/readQuickly, leastFreeze), mostFreeze)
	return least, min(max(letters/readCalmly, 2*leastFreeze), 2*mostFreeze)
}

// holding is how long the first n freezes last.
func (f *fitter) holding(n int) (least, most units.Seconds) {
	for _, z := range f.freezes[:n] {
		a, b := between(z.Length)
		least, most = least+a, most+b
	}
	return least, most
}

// heldFor are the first n freezes at a share of what they can last.
func (f *fitter) heldFor(n int, share units.Seconds) []lesson.Freeze {
	out := slices.Clone(f.freezes[:n])
	for i := range out {
		least, most := between(out[i].Length)
		out[i].Length = least + (most-least)*share
	}
	return out
}
