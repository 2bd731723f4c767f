package rally

import (
	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Frame is the rally at one moment.
type Frame struct {
	T       units.Seconds
	Ball    flight.State
	Players [4]PlayerFrame // by game.Player
	Cues    []int          // of the play's cues, those that are live
	Marks   []int          // likewise its marks
}

// PlayerFrame is one player at one moment.
type PlayerFrame struct {
	Drawn Pose           // as the coach drew it
	Run   Pose           // as this player's legs can run it
	Feet  [2]court.Point // left and right, both on the ground
}

// FootAside is how far each foot stands from the player's place, square to the
// facing: our assumption.
const FootAside units.Feet = 0.6

// At is the frame at time t; times outside the rally show its first or last
// moment, and what is not a number the first.
func (r *Rally) At(t units.Seconds) Frame {
	t = r.within(t)
	f := Frame{T: t, Ball: r.ballAt(t)}
	for _, id := range game.Players {
		track := r.Tracks[id]
		run := track.RunAt(t)
		f.Players[id] = PlayerFrame{Drawn: track.At(t), Run: run, Feet: feet(run)}
	}
	for i, c := range r.Play.Cues {
		if r.live(c.Span, t) {
			f.Cues = append(f.Cues, i)
		}
	}
	for i, m := range r.Play.Marks {
		if r.live(m.Span, t) {
			f.Marks = append(f.Marks, i)
		}
	}
	return f
}

// BallAt is the ball of the frame at time t alone.
func (r *Rally) BallAt(t units.Seconds) flight.State { return r.ballAt(r.within(t)) }

// within is the moment of the rally that is shown at time t.
func (r *Rally) within(t units.Seconds) units.Seconds {
	if !(t > r.From) {
		t = r.From
	}
	return min(t, r.To)
}

// live says whether a span holds time t. It ends just before its end, where the
// next one may begin, unless that is the rally's.
func (r *Rally) live(s lesson.Span, t units.Seconds) bool {
	to := r.TimeAt(s.To)
	return r.TimeAt(s.From) <= t && (t < to || t == to && to >= r.To)
}

func feet(p Pose) [2]court.Point {
	aside := court.RightOf(p.Facing).Times(float64(FootAside))
	return [2]court.Point{p.Place.Sub(aside), p.Place.Add(aside)}
}

// ballAt is the ball at time t. Before the serve the server carries it; after a
// ball into the net it lies below the net.
func (r *Rally) ballAt(t units.Seconds) flight.State {
	i := r.strokeAt(t)
	if i < 0 {
		return r.carried(t)
	}
	if t > r.stopped {
		return r.dropped(t)
	}
	s := &r.Strokes[i]
	since := t - s.At
	if since <= s.Planned.Duration {
		return s.Planned.At(since)
	}
	since -= s.Planned.Duration
	if s.Second != nil && since > s.Rebound.Duration {
		return s.Second.At(since - s.Rebound.Duration)
	}
	return s.Rebound.At(since)
}

// carried is the ball in the server's hand: as far from the place it is struck
// as the server is from the place at the serve.
func (r *Rally) carried(t units.Seconds) flight.State {
	s := r.Strokes[0]
	track := r.Tracks[s.By]
	way := track.RunAt(t).Place.Sub(track.RunAt(0).Place)
	return flight.State{At: flight.Over(flightGround(s.From).Add(way), units.Metres(s.From.Z))}
}

// dropped is a ball that has hit the net: it falls straight down, our
// simplification, and stays on the ground.
func (r *Rally) dropped(t units.Seconds) flight.State {
	s := r.stroke(r.stopped)
	at := s.Flown.End.At
	fallen := float64(t - r.stopped)
	at.Z = max(at.Z-units.Gravity*fallen*fallen/2, float64(r.Model.Ball.Radius()))
	return flight.State{At: at}
}

// stroke is the stroke in play at time t, the serve for times before it.
func (r *Rally) stroke(t units.Seconds) *Stroke { return &r.Strokes[max(r.strokeAt(t), 0)] }

func flightGround(v flight.Vec) court.Point { return flight.State{At: v}.Ground() }
