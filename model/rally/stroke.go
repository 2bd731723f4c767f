package rally

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// Where a ball is struck when the lesson does not say. Both are our assumption.
const (
	PaddleSide  units.Feet = 2   // from the player's place to the ball, on the forehand side
	ServeHeight units.Feet = 2.6 // of the ball's centre at the serve, below the waist
)

// VolleyReach is how far behind the kitchen line a volley is taken at the
// latest when the ball never falls through the asked height: our assumption.
const VolleyReach units.Feet = 1.5

// Stroke is one shot as it comes out.
type Stroke struct {
	By       game.Player
	At       units.Seconds // of the contact
	From     flight.Vec    // the ball's centre at the contact
	Planned  *flight.Path  // from contact to landing as if there were no net
	Flown    *flight.Path  // the same with the net; ends at the net if it is hit
	Rebound  *flight.Path  // from the bounce to the second one
	Second   *flight.Path  // from the second bounce to the third where the ball is met there; nil otherwise
	Volleyed bool          // met before it bounces
	Met      units.Seconds // after the contact: when the next player meets it, or the rally's end for the last shot
	Trouble  flight.Reason // why the shot cannot be done as asked; it is then flown as best it can
}

// Stopped says whether the ball went into the net or a post.
func (s Stroke) Stopped() bool {
	return s.Flown.Outcome == flight.HitNet || s.Flown.Outcome == flight.HitPost
}

// noNet is a net that nothing hits: later events keep the times they would
// have had without it.
var noNet = flight.Net{Flat: 1e-9}

// solveBall solves the shots one after another: event times come from them alone.
func (r *Rally) solveBall() error {
	from := r.serveFrom()
	t := units.Seconds(0)
	stopped := false
	for i := range r.Play.Shots {
		s, err := r.strike(i, t, from)
		if err != nil {
			return fmt.Errorf("%s: %w", lesson.ShotName(i), err)
		}
		from = r.meet(i, &s)
		t += s.Met
		if s.Stopped() && !stopped {
			stopped = true
			r.stopped = s.At + s.Flown.Duration
		}
		r.Strokes = append(r.Strokes, s)
	}
	last := r.Strokes[len(r.Strokes)-1]
	r.To = last.At + last.Planned.Duration + AfterLast
	if !stopped {
		r.stopped = r.To
	}
	return nil
}

// serveFrom is where the serve is struck.
func (r *Rally) serveFrom() flight.Vec {
	serve := r.Play.Shots[0]
	if serve.From != nil {
		return flight.Over(serve.From.Point, serve.From.Height.Metres())
	}
	return flight.Over(r.atPaddle(serve.By, r.Play.AtServe(serve.By)), ServeHeight.Metres())
}

// atPaddle is the point on the forehand side of a player at a keyframe.
func (r *Rally) atPaddle(id game.Player, k lesson.Keyframe) court.Point {
	return k.Place.Add(r.Player(id).Hand.Forehand(k.Facing).Times(float64(PaddleSide)))
}

// strike solves shot i, struck at time t from a place.
func (r *Rally) strike(i int, t units.Seconds, from flight.Vec) (Stroke, error) {
	shot := r.Play.Shots[i]
	from.Z = max(from.Z, float64(r.Model.Ball.Radius()))
	launch, trouble := solve(r.Model, from, shot)
	s := Stroke{By: shot.By, At: t, From: from, Trouble: trouble}
	open := r.Model
	open.Net = noNet
	var err error
	if s.Planned, err = open.Fly(launch); err != nil {
		return Stroke{}, err
	}
	if s.Flown, err = r.Model.Fly(launch); err != nil {
		return Stroke{}, err
	}
	if s.Rebound, err = open.Fly(r.Model.Bounce(s.Planned.End)); err != nil {
		return Stroke{}, err
	}
	if shot.Meet.How == lesson.SecondTop && i < len(r.Play.Shots)-1 {
		if s.Second, err = open.Fly(r.Model.Bounce(s.Rebound.End)); err != nil {
			return Stroke{}, err
		}
	}
	return s, nil
}

// meet decides when and where the next player meets the ball of shot i.
func (r *Rally) meet(i int, s *Stroke) flight.Vec {
	m := r.Play.Shots[i].Meet
	if i == len(r.Play.Shots)-1 {
		s.Met = s.Planned.Duration + AfterLast
		return s.Planned.End.At
	}
	if m.How == lesson.OnVolley {
		if t, ok := r.volley(s, r.Play.Shots[i+1].By.Team(), m.Height.Metres()); ok {
			s.Volleyed, s.Met = true, t
			return s.Planned.At(t).At
		}
	}
	if s.Second != nil {
		s.Met = s.Planned.Duration + s.Rebound.Duration + s.Second.Top()
		return s.Second.At(s.Second.Top()).At
	}
	after := s.rebound(m)
	s.Met = s.Planned.Duration + after
	return s.Rebound.At(after).At
}

// rebound is how long after the bounce the ball is met; a ball that never
// rises to the asked height is met at the top.
func (s *Stroke) rebound(m lesson.Meet) units.Seconds {
	if m.How == lesson.Rising || m.How == lesson.Falling {
		if t, ok := s.Rebound.Crossing(m.Height.Metres(), m.How == lesson.Rising); ok {
			return t
		}
	}
	return s.Rebound.Top()
}

// volley is when a ball is met in the air at end e: falling through a height on
// that side of the net or, where it comes lower or not so low, a little behind
// the kitchen line.
func (r *Rally) volley(s *Stroke, e court.End, height units.Metres) (units.Seconds, bool) {
	if !s.Planned.Net.Reached {
		return 0, false
	}
	if t, ok := s.Planned.Crossing(height, false); ok && t > s.Planned.Net.T {
		return t, true
	}
	line := (court.Kitchen + VolleyReach) * e.Sign()
	t, ok := s.Planned.Reaches(line.Metres())
	return t, ok && t > s.Planned.Net.T
}
