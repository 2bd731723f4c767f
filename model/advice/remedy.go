package advice

import (
	"math"
	"slices"

	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// How is what a remedy does.
type How uint8

// The remedies, in the order in which they are offered.
const (
	HigherReturn How = iota // By is its apex
	DeeperReturn            // By is how far inside the baseline it then lands
	MoveLater               // By is how many seconds later
	MoveEarlier             // By is how many seconds earlier
	MoveNearer              // By is by how many feet the run gets shorter
	StateOrder              // the order as run becomes the play's order
)

// Remedies lists them all.
var Remedies = [...]How{HigherReturn, DeeperReturn, MoveLater, MoveEarlier, MoveNearer, StateOrder}

// Remedy is a changed play in which a finding is gone and nobody else is late.
type Remedy struct {
	How  How
	By   float64 // see How
	Play lesson.Play
}

// Fix is the play with the first remedy; false if there is none.
func Fix(f finding.Finding, l lesson.Lesson, play int) (lesson.Play, bool) {
	if all := Fixes(f, l, play, 0); len(all) > 0 {
		return all[0].Play, true
	}
	return lesson.Play{}, false
}

// Fixes are the remedies for a finding of Check in a play of a lesson, each
// tried out. A return above most (0 is MostApex) is not asked for: if none is
// offered, Stack may have the honest advice.
func Fixes(f finding.Finding, l lesson.Lesson, play int, most units.Feet) []Remedy {
	if most <= 0 {
		most = MostApex
	}
	r, err := rally.Solve(l, play)
	if err != nil {
		return nil
	}
	c := &clinic{f: f, l: l, i: play, r: r, late: lates(Check(r))}
	switch f.ID {
	case finding.LateArrival, finding.NotSet, finding.NotInPlace:
		c.returns(most)
		c.moves()
	case finding.OutOfReach:
		c.returns(most)
	case finding.CrossingOrder:
		if f.Someone {
			p := r.Play
			p.Front = &f.Player
			c.try(StateOrder, 0, p)
		}
	}
	return c.all
}

// clinic tries remedies out.
type clinic struct {
	f    finding.Finding
	l    lesson.Lesson
	i    int
	r    *rally.Rally
	late int // findings of lateness before any remedy
	all  []Remedy
}

func lates(all []finding.Finding) (n int) {
	for _, f := range all {
		if f.Severity == finding.Late {
			n++
		}
	}
	return n
}

// try keeps a remedy if the finding is gone by it and nothing else comes late.
func (c *clinic) try(how How, by float64, p lesson.Play) bool {
	l := c.l.WithPlay(c.i, p)
	if lesson.Validate(lesson.Lesson{Teams: l.Teams, Plays: []lesson.Play{p}}) != nil {
		return false
	}
	r, err := rally.Solve(l, c.i)
	if err != nil {
		return false
	}
	after := Check(r)
	if lates(after) > c.late || slices.ContainsFunc(after, c.same) {
		return false
	}
	c.all = append(c.all, Remedy{how, by, p})
	return true
}

// same says whether a finding is the one to mend.
func (c *clinic) same(f finding.Finding) bool {
	stop, _ := c.f.Args.Get("stop")
	other, _ := f.Args.Get("stop")
	return f.ID == c.f.ID && f.Someone == c.f.Someone && f.Player == c.f.Player && stop == other
}

// The steps in which returns are tried: half a foot, to within a foot of the baseline.
const (
	returnStep   units.Feet = 0.5
	leastDepth   units.Feet = 1
	timeStep                = 0.01 // s
	leastShorten            = 0.02 // of a run that is left
)

// returns asks for the lowest return up to a height, and for the shallowest, that helps.
func (c *clinic) returns(most units.Feet) {
	if len(c.r.Strokes) < 2 || c.f.When <= c.r.Strokes[1].At {
		return
	}
	shot := c.r.Play.Shots[1]
	now := c.r.Strokes[1].Planned.Apex.State.Height().Feet()
	for h := returnStep * units.Feet(math.Floor(float64(now/returnStep))+1); h <= most; h += returnStep {
		higher := shot
		higher.Intent, higher.Arc = lesson.Apex(h), lesson.Low
		if c.stays(higher) && c.try(HigherReturn, float64(h), c.r.Play.WithShot(1, higher)) {
			break
		}
	}
	sign := -shot.By.Team().Sign()
	for d := court.Baseline - shot.Aim.Y*sign - returnStep; d >= leastDepth; d -= returnStep {
		deeper := shot
		deeper.Aim.Y = (court.Baseline - d) * sign
		if c.try(DeeperReturn, float64(d), c.r.Play.WithShot(1, deeper)) {
			break
		}
	}
}

// stays says whether a return can be hit as asked.
func (c *clinic) stays(shot lesson.Shot) bool {
	r, err := rally.Solve(c.l.WithPlay(c.i, c.r.Play.WithShot(1, shot)), c.i)
	return err == nil && r.Strokes[1].Trouble == 0 && !r.Strokes[1].Stopped()
}

// moves moves the place that is not reached: later or earlier in time, or nearer.
func (c *clinic) moves() {
	n, ok := c.f.Args.Get("stop")
	track := c.r.Tracks[c.f.Player]
	i, isInt := n.(int)
	if !ok || !isInt || i < 1 || i >= len(track.Stops) || track.Stops[i].Index == rally.Implied {
		return
	}
	stop, leg := track.Stops[i], track.Legs[i-1]
	if c.f.ID == finding.LateArrival {
		if _, strikes := shotOf(&sheet{Rally: c.r}, c.f.Player, stop); !strikes {
			c.shift(MoveLater, stop.Index, math.Ceil(float64(stop.Late)/timeStep)*timeStep)
		}
		c.nearer(stop.Index, leg, stop.At)
		return
	}
	c.shift(MoveEarlier, stop.Index, -math.Ceil(float64(leg.To-c.f.When)/timeStep)*timeStep)
	c.nearer(stop.Index, leg, c.f.When)
}

// shift moves a keyframe in time.
func (c *clinic) shift(how How, index int, by float64) {
	c.change(how, math.Abs(by), index, func(k *lesson.Keyframe) { k.At.Offset += units.Seconds(by) })
}

// nearer ends a run where the player can be by the deadline.
func (c *clinic) nearer(index int, leg rally.Leg, deadline units.Seconds) {
	pace := leg.Gait.Of(c.r.Player(c.f.Player).Legs())
	share, ok := farthest(pace, leg, deadline)
	if !ok {
		return
	}
	shorter := leg.Way.Length() * units.Feet(1-share)
	c.change(MoveNearer, float64(shorter), index, func(k *lesson.Keyframe) {
		k.Place = leg.Way.At(share)
		if leg.Way.Bent() {
			k.Via = new(leg.Way.At(share / 2))
		}
		if k.At.Event != lesson.TheEnd && c.f.ID != finding.LateArrival {
			k.At.Offset -= max(c.r.TimeAt(k.At)-deadline, 0)
		}
	})
}

// farthest is the greatest share of a leg that can be done by a time; false if
// that is next to nothing.
func farthest(pace movement.Pace, leg rally.Leg, by units.Seconds) (float64, bool) {
	lo, hi := 0.0, 1.0
	for range rounds {
		mid := (lo + hi) / 2
		run := leg.Run
		run.Distance *= units.Metres(mid)
		if p, err := pace.Fastest(run); err == nil && leg.Push()+p.Duration() <= by {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo * 0.999, lo > leastShorten
}

// change tries the play with one keyframe changed.
func (c *clinic) change(how How, by float64, index int, f func(*lesson.Keyframe)) {
	track := slices.Clone(c.r.Play.Tracks[c.f.Player])
	f(&track[index])
	c.try(how, by, c.r.Play.WithTrack(c.f.Player, track))
}
