package cover

import (
	"fmt"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// Map is the cover of one team's court against one strike. It does not change.
// The zero Map has no cells.
type Map struct {
	Strike Strike

	cells []cell
}

// cell is what a map knows of one cell.
type cell struct {
	margin   [2]units.Seconds // by number; finite
	forehand [2]bool
	best     int // of the two
}

// Of is the cover against a strike. The error is one of Strike.Validate.
func Of(s Strike) (Map, error) {
	if err := s.Validate(); err != nil {
		return Map{}, fmt.Errorf("compute the cover: %w", err)
	}
	m := Map{Strike: s, cells: make([]cell, Cells)}
	ball := s.ballTime()
	for i := range m.cells {
		m.cells[i].fill(&m.Strike, Centre(s.Team, i), ball)
	}
	return m, nil
}

func (c *cell) fill(s *Strike, at court.Point, ball func(court.Point) units.Seconds) {
	t := ball(at)
	for n := range s.Players {
		p := &s.Players[n]
		c.margin[n], c.forehand[n] = p.margin(at, t), p.forehand(at)
	}
	c.best = c.first()
}

// first is who takes the ball: who is there earlier; of two who are equally early
// the one whose forehand it is; of two such the first-named.
func (c *cell) first() int {
	a, b := c.margin[0], c.margin[1]
	if b > a || b == a && c.forehand[1] && !c.forehand[0] {
		return 1
	}
	return 0
}

func (c *cell) covered() bool { return c.margin[c.best] >= 0 }

// Team is whose court it is.
func (m Map) Team() court.End { return m.Strike.Team }

// Len is the number of cells: Cells, or 0 for the zero Map.
func (m Map) Len() int { return len(m.cells) }

// Centre is the middle of cell i.
func (m Map) Centre(i int) court.Point { return Centre(m.Team(), i) }

// Covered says whether one of the pair is at cell i no later than the ball.
func (m Map) Covered(i int) bool { return m.cells[i].covered() }

// Margin is the best margin at cell i: how long before the ball, or if negative
// after it, the earlier of the two is there. Its sign is exact, the figure good to 1e-7 s.
func (m Map) Margin(i int) units.Seconds { return m.cells[i].margin[m.cells[i].best] }

// MarginOf is one player's margin at cell i; opponents are asked by the partner
// of the same number.
func (m Map) MarginOf(id game.Player, i int) units.Seconds { return m.cells[i].margin[id.Number()-1] }

// Taker is who takes a ball to cell i, and whether with the forehand: the player
// of the best margin. Of two equally early it is the one whose forehand it is, then
// the first-named.
func (m Map) Taker(i int) (id game.Player, forehand bool) {
	c := &m.cells[i]
	return game.PlayerOf(m.Team(), c.best+1), c.forehand[c.best]
}

// Share is the share of the cells that are covered, 0 to 1.
func (m Map) Share() float64 { return m.share((*cell).covered) }

// ShareForehand is the share of all cells that are covered with the taker's
// forehand: at most Share.
func (m Map) ShareForehand() float64 {
	return m.share(func(c *cell) bool { return c.covered() && c.forehand[c.best] })
}

// ShareOf is the share of all cells that this player would cover alone. Shares of
// partners overlap: their sum is at least Share.
func (m Map) ShareOf(id game.Player) float64 {
	n := id.Number() - 1
	return m.share(func(c *cell) bool { return c.margin[n] >= 0 })
}

// share is the share of the cells of which something is true; 0 of none.
func (m Map) share(is func(*cell) bool) float64 {
	count := 0
	for i := range m.cells {
		if is(&m.cells[i]) {
			count++
		}
	}
	return ratio(count, len(m.cells))
}

func ratio(part, whole int) float64 {
	if whole == 0 {
		return 0
	}
	return float64(part) / float64(whole)
}
