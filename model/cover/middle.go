package cover

import "homeside/model/game"

// Middle is who owns the middle of the court, see InMiddle. The shares are of
// its cells and add up to 1.
type Middle struct {
	Taken    [2]float64 // by number: covered, and this player is the taker
	Forehand [2]float64 // of those, with the forehand; at most Taken
	Open     float64
}

// Middle is the middle's share for each of the pair; all zero for the zero Map.
func (m Map) Middle() Middle {
	cells, open := 0, 0
	var taken, forehand [2]int
	for i := range m.cells {
		if !InMiddle(i) {
			continue
		}
		cells++
		switch c := &m.cells[i]; {
		case !c.covered():
			open++
		case c.forehand[c.best]:
			forehand[c.best]++
			taken[c.best]++
		default:
			taken[c.best]++
		}
	}
	out := Middle{Open: ratio(open, cells)}
	for n := range taken {
		out.Taken[n], out.Forehand[n] = ratio(taken[n], cells), ratio(forehand[n], cells)
	}
	return out
}

// MiddleOwner is who takes more of the middle than the partner; false if both
// take as much.
func (m Map) MiddleOwner() (game.Player, bool) {
	taken := m.Middle().Taken
	owner := game.PlayerOf(m.Team(), 1)
	if taken[1] > taken[0] {
		owner = owner.Partner()
	}
	return owner, taken[0] != taken[1]
}
