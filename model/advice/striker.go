package advice

import (
	"homeside/model/court"
	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// Stretch is how a striker gets to a ball from where he stands.
type Stretch uint8

// The stretches, by plan distance from the player's place to the ball.
const (
	AtArm     Stretch = iota // within arm and paddle
	WithLunge                // within a lunge more
	Beyond                   // out of reach
)

// Meeting is a striker at the ball as run.
type Meeting struct {
	Player   game.Player
	Shot     int
	Place    court.Point // of the player
	Ball     court.Point
	Distance units.Feet // between the two, along the ground
	Stretch  Stretch
	Forehand bool // the ball is on the paddle hand's side, or straight ahead
}

// beside is how far across the body's middle a ball must be to be on the backhand.
const beside units.Feet = 0.25

// Meet is how the striker of shot i meets the ball as run.
func Meet(r *rally.Rally, i int) Meeting {
	s := r.Strokes[i]
	who := r.Player(s.By)
	pose := r.Tracks[s.By].RunAt(s.At)
	m := Meeting{Player: s.By, Shot: i, Place: pose.Place, Ball: court.Pt(units.Metres(s.From.X).Feet(), units.Metres(s.From.Y).Feet())}
	way := m.Ball.Sub(m.Place)
	m.Distance = way.Length()
	side := who.Hand.Forehand(pose.Facing)
	m.Forehand = way.X*side.X+way.Y*side.Y >= -beside
	legs := who.Legs()
	switch d := m.Distance.Metres(); {
	case d > legs.Reach():
		m.Stretch = Beyond
	case d > legs.Arm+legs.Paddle:
		m.Stretch = WithLunge
	}
	return m
}

// strikers are those who cannot just stand and hit a forehand. The serve is
// struck from the hand.
func strikers(s *sheet) {
	for i := 1; i < len(s.Strokes); i++ {
		stroke, ok := s.struck(i)
		if !ok {
			return
		}
		m := Meet(s.Rally, i)
		reach := s.Player(m.Player).Legs().Reach().Feet()
		shot, at := finding.Is("shot", finding.Shot(i)), stroke.At
		switch {
		case m.Stretch == Beyond:
			s.about(m.Player, finding.OutOfReach, at, m.Ball, shot, finding.Is("beyond", m.Distance-reach), finding.Is("distance", m.Distance))
			continue
		case m.Stretch == WithLunge:
			s.about(m.Player, finding.Lunge, at, m.Ball, shot, finding.Is("distance", m.Distance))
		}
		if !m.Forehand {
			s.about(m.Player, finding.Backhand, at, m.Ball, shot, finding.Is("distance", m.Distance))
		}
	}
}
