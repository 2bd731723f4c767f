package rehearse

import (
	"math"
	"slices"
	"strconv"

	"homeside/app/rehearsal"
	"homeside/export/captions"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// telling is what is said beside the court at a moment, large enough to be read
// from the court.
type telling struct {
	head   string   // the round and the speed
	big    string   // a digit in the middle of the court
	event  string   // what has happened last
	lines  []string // who runs, and what the coach says
	warned string   // of paths that cross; emphatic
}

func (t telling) same(o telling) bool {
	return t.head == o.head && t.big == o.big && t.event == o.event && t.warned == o.warned && slices.Equal(t.lines, o.lines)
}

// tell is what is said of a rehearsal now.
func tell(h *rehearsal.Rehearsal, l lesson.Lesson, said captions.Play, pair court.End) telling {
	t := telling{head: head(h)}
	if a, ok := h.CrossingNow(); ok {
		t.warned = words.PathsCross(l, a)
	}
	switch h.Phase() {
	case rehearsal.Waiting:
		t.event = words.T("Everybody in place?")
		t.lines = []string{words.T("Space or Page Down: start"), said.Title}
	case rehearsal.Warning:
		t.event = words.T("Starts in %d s. Page Down: at once", whole(h.Left()))
	case rehearsal.Counting:
		t.big, t.event = strconv.Itoa(h.Beat()), words.BeforeServe()
	case rehearsal.Running:
		from, to := h.Stretch()
		t.event, t.lines = happened(said, from), doing(said, pair, from, to)
	case rehearsal.Resting:
		t.big, t.event = strconv.Itoa(whole(h.Left())), words.T("Rest")
		t.lines = []string{words.T("Page Down: on at once")}
	case rehearsal.Done:
		t.event = words.T("All rounds are done.")
		t.lines = []string{words.T("Space or Page Down: once more")}
	}
	return t
}

// whole is a time in begun seconds, as a countdown shows it.
func whole(s units.Seconds) int { return int(math.Ceil(float64(s))) }

// head says the round, the speed, and whether time stands still.
func head(h *rehearsal.Rehearsal) string {
	text := speedName(h.Plan().Speed)
	if now, all := h.Round(); now > 0 && all > 0 {
		text = words.T("Round %d of %d", now, all) + " · " + text
	} else if now > 0 {
		text = words.T("Round %d", now) + " · " + text
	}
	if h.Paused() {
		text += " · " + words.T("paused")
	}
	return text
}

func speedName(v float64) string {
	switch v {
	case rehearsal.Half:
		return words.T("Half speed")
	case rehearsal.Match:
		return words.T("Match speed")
	}
	return words.T("Walk (0.4)")
}

// sameMoment is how far before an event a moment still is that event's.
const sameMoment units.Seconds = 1e-6

// happened is the ball's last event.
func happened(p captions.Play, now units.Seconds) string {
	text := words.BeforeServe()
	for _, e := range p.Events {
		if !e.Runs && e.From <= now+sameMoment {
			text = e.Text
		}
	}
	return text
}

// leastRun is from where on a run is told: shorter ones are made without thinking,
// and would only push the others off the stage. Our choice, a step.
const leastRun units.Feet = 2

// worthTelling is a play in words without the runs that are not worth telling on court.
func worthTelling(p captions.Play, r *rally.Rally) captions.Play {
	short := func(e captions.Line) bool {
		return e.Runs && slices.ContainsFunc(r.Tracks[e.Runner].Legs, func(leg rally.Leg) bool {
			return leg.From == e.From && leg.Run.Distance.Feet() < leastRun
		})
	}
	p.Events = slices.DeleteFunc(slices.Clone(p.Events), short)
	return p
}

// doing is what the coach says in a stretch of the rally and who runs in it, the
// pair before the others.
func doing(p captions.Play, pair court.End, from, to units.Seconds) []string {
	var said, own, others []string
	for _, c := range p.Cues {
		if c.From <= to && c.To > from {
			said = append(said, c.Text)
		}
	}
	for _, e := range p.Events {
		switch {
		case !e.Runs || e.From > to || e.To <= from:
		case e.Runner.Team() == pair:
			own = append(own, e.Text)
		default:
			others = append(others, e.Text)
		}
	}
	return slices.Concat(said, own, others)
}
