package captions

import (
	"cmp"
	"slices"

	"homeside/model/advice"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Line is something said, shown or done from one moment of a play to another.
// It has one line of text that is not empty; what a card says has as many as the card.
type Line struct {
	From, To units.Seconds // on the rally's clock; the same for a moment
	Text     string
	Spoken   bool        // a caption; otherwise it only says what there is to see
	Runs     bool        // it tells the way of a player
	Runner   game.Player // who that is, if Runs
}

// Play is one play in words. Its lists are in the order of their starts.
type Play struct {
	Title    string
	From, To units.Seconds
	Cues     []Line // captions and signals, which may overlap
	Chapters []Line // before the serve, then each shot; one begins where the one before ends
	Events   []Line // contacts, bounces, who goes where
	Cross    []Line // warnings of paths that cross
}

// Of is a play of a lesson in words; r is the play solved. Cues without text or
// without length, which no frame shows, are left out.
func Of(l lesson.Lesson, r *rally.Rally) Play {
	p := Play{Title: clean(r.Play.Title), From: r.From, To: r.To}
	for _, c := range r.Play.Cues {
		p.Cues = appendLine(p.Cues, cueLine(l, r, c))
	}
	p.Cues = slices.DeleteFunc(p.Cues, func(c Line) bool { return !(c.From < c.To) })
	p.Chapters = chapters(l, r)
	p.Events = append(ballLines(l, r), runLines(l, r)...)
	for _, a := range advice.PathsCross(r) {
		p.Cross = append(p.Cross, Line{From: a.When, To: a.When, Text: words.PathsCross(l, a)})
	}
	byStart(p.Cues)
	byStart(p.Events)
	byStart(p.Cross)
	return p
}

// Span is the first and the last moment of the play.
func (p Play) Span() (from, to units.Seconds) { return p.From, p.To }

func byStart(lines []Line) {
	slices.SortStableFunc(lines, func(a, b Line) int { return cmp.Compare(a.From, b.From) })
}

// appendLine appends a line with its text cleaned, unless nothing is left of it.
func appendLine(lines []Line, x Line) []Line {
	x.Text = clean(x.Text)
	if x.Text == "" {
		return lines
	}
	return append(lines, x)
}

func cueLine(l lesson.Lesson, r *rally.Rally, c lesson.Cue) Line {
	line := Line{From: r.TimeAt(c.Span.From), To: r.TimeAt(c.Span.To), Text: c.Text, Spoken: true}
	if c.Kind == lesson.Signal {
		line.Text, line.Spoken = words.Signalled(l, c), false
	}
	return line
}

// chapters are the stretches of a play that a viewer jumps to.
func chapters(l lesson.Lesson, r *rally.Rally) []Line {
	all := []Line{{From: r.From, Text: words.BeforeServe()}}
	for i, s := range r.Strokes {
		if r.Reached(s.At) {
			all[len(all)-1].To = s.At
			all = appendLine(all, Line{From: s.At, Text: words.Struck(l, i, s.By)})
		}
	}
	all[len(all)-1].To = r.To
	return all
}

// ballLines are the contacts and bounces that come to pass, and the net.
func ballLines(l lesson.Lesson, r *rally.Rally) []Line {
	var all []Line
	for _, e := range r.Events {
		line := Line{From: e.At, To: e.At}
		switch {
		case !e.Reached:
			continue
		case e.Name.Moment == lesson.Contact:
			line.Text = words.Struck(l, e.Name.Shot, r.Strokes[e.Name.Shot].By) + "."
		case e.Name.Moment == lesson.Bounce:
			line.Text = words.Bounces(e.Name.Shot)
		}
		all = appendLine(all, line)
	}
	if slices.ContainsFunc(r.Strokes, rally.Stroke.Stopped) {
		all = append(all, Line{From: r.Stopped(), To: r.Stopped(), Text: words.IntoNet()})
	}
	return all
}

// leastRun is what a run is told from: less would be called 0 in.
var leastRun = units.Inches(0.5)

// runLines are the players' ways as their legs run them.
func runLines(l lesson.Lesson, r *rally.Rally) []Line {
	var all []Line
	for _, id := range game.Players {
		track := r.Tracks[id]
		for i, leg := range track.Legs {
			if leg.Run.Distance.Feet() < leastRun {
				continue
			}
			line := Line{From: leg.From, To: leg.To, Runs: true, Runner: id}
			cut := i+1 < len(track.Legs) && track.Legs[i+1].From < leg.To
			if cut {
				line.To = max(track.Legs[i+1].From, leg.From)
			}
			line.Text = words.Goes(l, id, leg, track.Stops[i+1].Keyframe.Place, cut)
			all = appendLine(all, line)
		}
	}
	return all
}
