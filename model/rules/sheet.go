package rules

import (
	"math"
	"slices"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// step is the time between two looks at the rally: within it a ball or a runner
// leaves the straight way by no more than 1.3 cm (g step²/8).
const step units.Seconds = 0.1

// sheet is a rally laid out for the checks: read once, never changed.
type sheet struct {
	*rally.Rally
	lesson lesson.Lesson

	server game.Player
	from   court.Side // the court the server stands in at the serve
	serve  rally.Frame
	frames []rally.Frame // every step, event and place, in order
	judged judged
}

func sheetOf(r *rally.Rally, l lesson.Lesson) *sheet {
	s := &sheet{Rally: r, lesson: l, server: r.Strokes[0].By, serve: r.At(0)}
	s.from = court.SideOf(s.server.Team(), s.serve.Players[s.server].Run.Place)
	s.judged = s.judge()
	s.frames = s.look()
	return s
}

// look is the rally at every step from the serve on, at every event and at
// every place of a player.
func (s *sheet) look() []rally.Frame {
	times := make([]units.Seconds, 0, 128)
	for t := units.Seconds(0); t < s.To; t += step {
		times = append(times, t)
	}
	for _, e := range s.Events {
		times = append(times, e.At)
	}
	for _, track := range s.Tracks {
		for _, stop := range track.Stops {
			times = append(times, min(max(stop.At, s.From), s.To))
		}
	}
	slices.Sort(times)
	times = slices.Compact(times)
	frames := make([]rally.Frame, len(times))
	for i, t := range times {
		frames[i] = s.At(t)
	}
	return frames
}

// live says whether stroke i is still played: no ball before it went into the net.
func (s *sheet) live(i int) bool { return s.Reached(s.Strokes[i].At) }

// bounce is when stroke i bounces or would.
func (s *sheet) bounce(i int) units.Seconds { return s.Strokes[i].At + s.Strokes[i].Planned.Duration }

// over is when the ball is dead: the last bounce, or the net.
func (s *sheet) over() units.Seconds { return min(s.bounce(len(s.Strokes)-1), s.Stopped()) }

// support is what a player stands on.
func (s *sheet) support(id game.Player) finding.Support {
	return finding.SupportOf(s.Player(id).Wheelchair)
}

// grain is the fineness of places in feet: below it they are the same. The
// flights are solved to 1e-7 m, and no line is drawn finer.
const grain = 1e-6

// settled is p without what is finer than grain, so that a ball aimed at a
// line's edge is judged there.
func settled(p court.Point) court.Point {
	return court.Pt(units.Feet(math.Round(float64(p.X)/grain)*grain), units.Feet(math.Round(float64(p.Y)/grain)*grain))
}

// one is a list of a single finding.
func one(f finding.Finding) []finding.Finding { return []finding.Finding{f} }
