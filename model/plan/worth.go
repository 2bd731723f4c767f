package plan

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// Cover is what a pair set behind its kitchen line reaches of an opponent's drive.
type Cover struct {
	Court    float64 // share of the pair's court reached in time, 0 to 1
	Forehand float64 // share of the middle reached in time and with a forehand
}

// Worth is the cover of an average rally of a game, with the plan's formations
// and from the sides the score gives.
type Worth struct{ With, Without Cover }

// Where the worth is measured, in a team's own terms (common practice of the
// trade): partners in the middle of their halves half a foot behind the kitchen
// line, a usual drive from the middle of the opponents' baseline, struck at waist height.
const (
	setAlong       units.Feet   = court.HalfWidth / 2
	setBehind                   = court.Kitchen + 0.5
	driveHeight    units.Metres = 0.8
	driveBehindNet              = court.Baseline
)

// Worth is what the plan buys; the error is one of cover.Strike.Validate.
func (p Plan) Worth() (Worth, error) {
	var by [2]Cover // by number of who is on the right
	for i := range by {
		var err error
		if by[i], err = p.Pair.coverWith(p.Pair.Player(i + 1)); err != nil {
			return Worth{}, fmt.Errorf("what stacking buys: %w", err)
		}
	}
	var w Worth
	for _, r := range p.Rows {
		share := r.Rallies / p.Rallies
		w.With.add(by[r.EndsRight().Number()-1], share)
		w.Without.add(by[r.Right().Number()-1], share)
	}
	return w, nil
}

func (c *Cover) add(o Cover, share float64) {
	c.Court += o.Court * share
	c.Forehand += o.Forehand * share
}

// coverWith is the pair's cover with a player on the right.
func (p Pair) coverWith(right game.Player) (Cover, error) {
	s := cover.Strike{
		From: court.OwnPoint(p.Team.Other(), 0, driveBehindNet), Height: driveHeight,
		Model: rally.ModelOf(p.Lesson), Team: p.Team,
	}
	for i := range s.Players {
		id, along := p.Player(i+1), setAlong
		if id != right {
			along = -along
		}
		who := p.Lesson.Player(id)
		s.Players[i] = cover.Player{Place: court.OwnPoint(p.Team, along, setBehind), Facing: p.Team.Facing(), Hand: who.Hand, Pace: who.Legs()}
	}
	m, err := cover.Of(s)
	if err != nil {
		return Cover{}, err
	}
	f := m.Middle().Forehand
	return Cover{Court: m.Share(), Forehand: f[0] + f[1]}, nil
}
