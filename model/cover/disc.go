package cover

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Disc is a round piece of open court.
type Disc struct {
	Centre court.Point
	Radius units.Feet
}

// Open is the largest open disc: round the centre of an open cell up to the
// centre of the nearest covered cell or to the edge of the team's court (net,
// sidelines, baseline), whichever is nearer. Of equal discs it is the one nearest
// the net, then the leftmost as the team sees it. False if no cell is open.
func (m Map) Open() (Disc, bool) {
	gaps := m.gaps()
	best, at := 0.0, -1 // squared, in cells
	for i := range m.cells {
		if gaps[i] == 0 {
			continue
		}
		if r := reach(gaps, i, best); r > best {
			best, at = r, i
		}
	}
	if at < 0 {
		return Disc{}, false
	}
	return Disc{m.Centre(at), units.Feet(math.Sqrt(best)) * CellSize}, true
}

// gaps is the number of rows from each cell to the nearest covered one of its
// column: 0 if it is covered itself, far more than Rows if none is.
func (m Map) gaps() []int {
	gaps := make([]int, len(m.cells))
	pass := func(i, from int) {
		switch {
		case m.cells[i].covered():
			gaps[i] = 0
		case from < 0 || from >= len(gaps):
			gaps[i] = min(gaps[i], 10*Rows)
		default:
			gaps[i] = min(gaps[i], gaps[from]+1)
		}
	}
	for i := range gaps {
		gaps[i] = 10 * Rows
		pass(i, i-Columns)
	}
	for i := len(gaps) - 1; i >= 0; i-- {
		pass(i, i+Columns)
	}
	return gaps
}

// reach is the square of the free radius round cell i, in cells, or something
// not above enough if it is no more than that.
func reach(gaps []int, i int, enough float64) float64 {
	column, row := i%Columns, i/Columns
	edge := float64(min(column, Columns-1-column, row, Rows-1-row)) + 0.5
	free := edge * edge
	for c := range Columns {
		if free <= enough {
			break
		}
		aside, gap := c-column, gaps[row*Columns+c]
		free = min(free, float64(aside*aside+gap*gap))
	}
	return free
}
