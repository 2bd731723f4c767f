package handout

import (
	"math"

	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// stageKind is one of the four steps from a walk to a rally.
type stageKind uint8

// The stages, in the order in which they are done.
const (
	walkIt stageKind = iota
	shadowIt
	fedBall
	liveBall
	stages
)

// stage is a step with its times.
type stage struct {
	kind  stageKind
	slow  float64       // the play's time is stretched by this
	once  units.Seconds // one repetition, with the way back
	round units.Seconds // repetitions and the change of roles
	total units.Seconds // all rounds
}

// A lesson for ten: five pairs take turns in five roles, so that after five
// rounds every pair has had every role once. Two repetitions fit into a round.
const (
	students = 10
	rounds   = students / 2
	reps     = 2
)

// The times that no play says: our choice, for a calm lesson.
const (
	change     units.Seconds = 20 // of roles, between rounds
	fetch      units.Seconds = 8  // a ball, after a fed or a live one
	playOn     units.Seconds = 8  // a live rally beyond the play
	settle     units.Seconds = 4  // back in place, ready
	roundUp    units.Seconds = 5
	shadowSlow               = 2.0 // half speed
)

// stagesOf are the four stages of a play. Its own length and runs set them.
func stagesOf(r *rally.Rally) [stages]stage {
	peak, longest := hardest(r)
	back := units.Seconds(float64(longest.Metres())/float64(movement.WalkingSpeed)) + settle
	all := [stages]stage{
		{kind: walkIt, slow: movement.WalkThrough(movement.WalkingSpeed, peak)},
		{kind: shadowIt, slow: shadowSlow},
		{kind: fedBall, slow: 1},
		{kind: liveBall, slow: 1},
	}
	for i := range all {
		s := &all[i]
		s.once = (r.To-r.From)*units.Seconds(s.slow) + back
		if s.kind == fedBall || s.kind == liveBall {
			s.once += fetch
		}
		if s.kind == liveBall {
			s.once += playOn
		}
		s.round = rounded(reps*s.once + change)
		s.total = rounds * s.round
	}
	return all
}

func rounded(t units.Seconds) units.Seconds {
	return roundUp * units.Seconds(math.Ceil(float64(t/roundUp)))
}

// hardest is the greatest speed of any player in a rally and the longest way
// back from the end to where somebody began.
func hardest(r *rally.Rally) (peak units.MetresPerSecond, longest units.Feet) {
	const apart units.Seconds = 0.02
	for _, id := range game.Players {
		t := r.Tracks[id]
		for at := r.From; at <= r.To; at += apart {
			peak = max(peak, t.RunAt(at).Speed)
		}
		longest = max(longest, t.RunAt(r.From).Place.Distance(t.RunAt(r.To).Place))
	}
	return peak, longest
}

// session is what fits into one hour.
type session struct {
	plays []drill
}

// drill is a play with its stages.
type drill struct {
	solved
	stages [stages]stage
}

// A session lasts an hour where its plays allow.
const (
	hour   units.Seconds = 60 * 60
	warmUp units.Seconds = 5 * 60
	wrapUp units.Seconds = 5 * 60
)

// total is a drill's time.
func (d drill) total() (t units.Seconds) {
	for _, s := range d.stages {
		t += s.total
	}
	return t
}

// total is a session's time.
func (s session) total() units.Seconds {
	t := warmUp + wrapUp
	for _, d := range s.plays {
		t += d.total()
	}
	return t
}

// sessionsOf deals plays out in their order, at least one to a session.
func sessionsOf(plays []solved) []session {
	var all []session
	for _, p := range plays {
		d := drill{p, stagesOf(p.rally)}
		if n := len(all); n > 0 && all[n-1].total()+d.total() <= hour {
			all[n-1].plays = append(all[n-1].plays, d)
		} else {
			all = append(all, session{[]drill{d}})
		}
	}
	return all
}

// roleOf is the role of a pair in a round, both from 0: it moves on by one.
func roleOf(pair, round int) int { return (pair + round) % rounds }

// balls is how many a feeder needs at hand: one for each shot of a round, and spare ones.
func balls(p lesson.Play) int {
	const spare = 6
	return reps*len(p.Shots) + spare
}
