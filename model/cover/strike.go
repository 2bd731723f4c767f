package cover

import (
	"errors"
	"fmt"
	"math"

	"homeside/model/court"
	"homeside/model/flight"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
	"homeside/model/units"
)

// ErrStrike says that a strike has a figure outside its range or is not one of
// an opponent's; the message says which.
var ErrStrike = errors.New("nothing to cover")

// Strike is an opponent's stroke and the pair that has to answer it.
type Strike struct {
	From    court.Point  // below the ball at the contact; each axis within 1000 ft
	Height  units.Metres // of the ball's centre there; a drive does not ask for it
	Shot    Shot
	Model   flight.Model // of which ball and air density count; wind does not
	Team    court.End    // the pair's
	Players [2]Player    // by number: the team's first and second
}

// Player is one of the pair at the moment of the strike.
type Player struct {
	Place  court.Point // as run; each axis within 1000 ft
	Facing units.Degrees
	Hand   lesson.Hand
	Pace   movement.Pace
}

// StrikeAt is an opponent's contact e of a rally as the team meets it: the ball
// and the players, as run, at that moment. The error, an ErrStrike, says that the play
// has no such event, that nobody or the team itself strikes then, or that the ball
// never gets so far.
func StrikeAt(r *rally.Rally, e lesson.Event, team court.End, shot Shot) (Strike, error) {
	t, ok := r.TimeOf(e)
	switch {
	case !ok:
		return Strike{}, fmt.Errorf("%w: the play has no %v", ErrStrike, e)
	case e.Moment != lesson.Contact:
		return Strike{}, fmt.Errorf("%w: nobody strikes at %v, want a contact", ErrStrike, e)
	case r.Strokes[e.Shot].By.Team() == team:
		return Strike{}, fmt.Errorf("%w: %v is the %v team's own, struck by %v; want an opponent's", ErrStrike, e, team, r.Strokes[e.Shot].By)
	case !r.Reached(t):
		return Strike{}, fmt.Errorf("%w: the ball goes into the net before %v", ErrStrike, e)
	}
	f := r.At(t)
	s := Strike{From: f.Ball.Ground(), Height: f.Ball.Height(), Shot: shot, Model: r.Model, Team: team}
	for i := range s.Players {
		id := game.PlayerOf(team, i+1)
		who, pose := r.Player(id), f.Players[id].Run
		s.Players[i] = Player{pose.Place, pose.Facing, who.Hand, who.Legs()}
	}
	return s, nil
}

// Strikes are the contacts of a rally that StrikeAt answers for a team, in order.
func Strikes(r *rally.Rally, team court.End) []lesson.Event {
	var out []lesson.Event
	for i, s := range r.Strokes {
		if s.By.Team() != team && r.Reached(s.At) {
			out = append(out, lesson.ContactOf(i))
		}
	}
	return out
}

// Bounds of a strike beyond those of its shot and paces: within them every time
// is finite.
const (
	farthest = units.Feet(1000)
	mostDrag = 1.0 // 1/m, some thirty times a ball's
)

// Validate says what is wrong with a strike, an ErrStrike or a movement.ErrPace,
// or nil.
func (s Strike) Validate() error {
	if !within(s.From) || !(s.Height >= 0 && s.Height <= farthest.Metres()) {
		return fmt.Errorf("%w: contact at (%v, %v) ft, %v m high", ErrStrike, s.From.X, s.From.Y, s.Height)
	}
	if kd, r := s.drag(), s.Model.Ball.Radius(); !(kd >= 0 && kd <= mostDrag && r >= 0 && r <= 1) {
		return fmt.Errorf("%w: a ball of radius %v m and drag %v per m", ErrStrike, r, kd)
	}
	if err := s.Shot.validate(max(s.Height, s.Model.Ball.Radius())); err != nil {
		return err
	}
	for i, p := range s.Players {
		if !within(p.Place) || math.IsNaN(float64(p.Facing)) || math.IsInf(float64(p.Facing), 0) {
			return fmt.Errorf("%w: %v at (%v, %v) ft, facing %v", ErrStrike, game.PlayerOf(s.Team, i+1), p.Place.X, p.Place.Y, p.Facing)
		}
		if err := p.Pace.Validate(); err != nil {
			return fmt.Errorf("%v: %w", game.PlayerOf(s.Team, i+1), err)
		}
	}
	return nil
}

func within(p court.Point) bool {
	return p.X >= -farthest && p.X <= farthest && p.Y >= -farthest && p.Y <= farthest
}

// drag is kd = ρ Cd A / 2m in 1/m.
func (s *Strike) drag() float64 {
	b := s.Model.Ball
	r := float64(b.Radius())
	return s.Model.Air.Density * b.Drag * math.Pi * r * r / (2 * b.Mass)
}

// ballTime is how long after the contact the ball is at a point of the court, as
// a function that is quick to call for many of them.
func (s *Strike) ballTime() func(court.Point) units.Seconds {
	kd := s.drag()
	if s.Shot.Lob != 0 {
		apex := s.Shot.Lob.Metres()
		t := units.Seconds(lobTime(float64(apex-s.Height), float64(apex-s.Model.Ball.Radius()), kd))
		return func(court.Point) units.Seconds { return t }
	}
	v := float64(s.Shot.speed())
	return func(p court.Point) units.Seconds {
		return units.Seconds(driveTime(float64(s.From.Distance(p).Metres()), v, kd))
	}
}

// margin is how long before the ball, there at time t after the contact, the
// player has the paddle at a point: exact where it decides between covered and open,
// elsewhere within closeTo.
func (p *Player) margin(at court.Point, t units.Seconds) units.Seconds {
	run := p.Place.Distance(at).Metres() - p.Pace.Reach()
	spare := t - p.Pace.Reaction
	if m := spare - runThrough(&p.Pace, run); m > closeTo || m < -closeTo {
		return m
	}
	return spare - p.Pace.Through(run)
}

// rounding (ft) is how far behind a player's side line a point still counts as
// on it, for the rounding of sines.
const rounding = 1e-9

// forehand says whether a point is on the side of the paddle hand, or straight
// ahead or behind.
func (p *Player) forehand(at court.Point) bool {
	way, side := at.Sub(p.Place), p.Hand.Forehand(p.Facing)
	return float64(way.X*side.X+way.Y*side.Y) >= -rounding
}
