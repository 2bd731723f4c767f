package captions

import (
	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/model/units"
	"homeside/words"
)

// OfReel is a reel of a lesson in words, on the clip's own clock. What a play says
// is there as often as the clip shows it; of two plays side by side only what the
// take says, as in the picture.
func OfReel(l lesson.Lesson, r *reel.Reel) Play {
	p := Play{Title: clean(r.Of.Name), To: r.Length()}
	for _, c := range r.Cards() {
		if text := cleanLines(c.Card.Heading + "\n" + c.Card.Text); text != "" {
			p.Cues = append(p.Cues, Line{From: c.From, To: c.To, Text: text})
		}
	}
	for _, c := range r.Captions() {
		p.Cues = appendLine(p.Cues, Line{From: c.From, To: c.To, Text: c.Text, Spoken: true})
	}
	for i := range r.Takes {
		p.add(r, i, Of(l, r.Takes[i].Rally))
	}
	p.Chapters = reelChapters(r)
	byStart(p.Cues)
	byStart(p.Events)
	byStart(p.Cross)
	return p
}

// add puts the words of take i's play on the clip's clock.
func (p *Play) add(r *reel.Reel, i int, play Play) {
	if r.Takes[i].Other == nil {
		for _, line := range play.Cues {
			for _, s := range r.Spans(i, line.From, line.To) {
				p.Cues = append(p.Cues, Line{From: s.From, To: s.To, Text: line.Text, Spoken: line.Spoken})
			}
		}
	}
	for _, line := range play.Events {
		if line.From == line.To {
			p.Events = append(p.Events, moments(r.Times(i, line.From), line.Text)...)
			continue
		}
		for _, s := range r.Spans(i, line.From, line.To) {
			p.Events = append(p.Events, Line{From: s.From, To: s.To, Text: line.Text})
		}
	}
	for _, line := range play.Cross {
		p.Cross = append(p.Cross, moments(r.Times(i, line.From), line.Text)...)
	}
}

// moments are lines of a text at some times.
func moments(times []units.Seconds, text string) (all []Line) {
	for _, at := range times {
		all = append(all, Line{From: at, To: at, Text: text})
	}
	return all
}

// reelChapters are the cards and the takes.
func reelChapters(r *reel.Reel) []Line {
	var all []Line
	for _, c := range r.Cards() {
		text := c.Card.Heading
		if text == "" {
			text = c.Card.Text
		}
		all = appendLine(all, Line{From: c.From, To: c.To, Text: text})
	}
	for _, t := range r.Takes {
		all = appendLine(all, Line{From: t.Start, To: t.End, Text: words.TakeName(t.Rally.Play.Title, t.Play, t.Rate())})
	}
	byStart(all)
	return all
}
