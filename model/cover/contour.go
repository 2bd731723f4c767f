package cover

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Contour is a line along which the best margin has one value.
type Contour struct {
	Points []court.Point // at least two; a closed line does not repeat the first
	Closed bool
}

// Contours are the lines of the margin at a level, in an order that depends on
// the map alone: first those that end on the court's edge, then closed ones.
// Between the cells' centres the margin is taken as linear, and carried on so to
// the court's edge (marching squares).
func (m Map) Contours(level units.Seconds) []Contour {
	if m.Len() == 0 || math.IsNaN(float64(level)) || math.IsInf(float64(level), 0) {
		return nil
	}
	t := newTracer(m, level)
	for row := range nodeRows - 1 {
		for column := range nodeColumns - 1 {
			t.square(column, row)
		}
	}
	return t.lines()
}

// Levels are the round levels worth a line, upward: the multiples, 0 among them,
// of 0.1, 0.2, 0.5, 1 ... s that lie between the map's least and greatest margin, at
// most seven; none for the zero Map.
func (m Map) Levels() []units.Seconds {
	if m.Len() == 0 {
		return nil
	}
	lo, hi := m.Margin(0), m.Margin(0)
	for i := range m.cells {
		lo, hi = min(lo, m.Margin(i)), max(hi, m.Margin(i))
	}
	tenths := levelStep(float64(hi-lo) * 10)
	first, last := math.Ceil(float64(lo)*10/tenths), math.Floor(float64(hi)*10/tenths)
	var out []units.Seconds
	for k := first; k <= last; k++ {
		out = append(out, units.Seconds((k*tenths+0)/10)) // + 0 turns -0 into 0
	}
	return out
}

// mostLevels keeps a picture readable.
const mostLevels = 7

// levelStep is the least of 1, 2, 5, 10 ... tenths of a second that gives a span no
// more than mostLevels levels.
func levelStep(span float64) float64 {
	for step := 1.0; ; step *= 10 {
		for _, k := range [...]float64{1, 2, 5} {
			if span/(k*step) < mostLevels-1 {
				return k * step
			}
		}
	}
}

// The nodes of the grid: the cells' centres and the court's edge around them.
const (
	nodeColumns = Columns + 2
	nodeRows    = Rows + 2
)

// tracer follows one level. A line crosses the sides between neighbouring nodes: side
// 2n goes from node n to the next in its row, side 2n+1 to the one behind it.
type tracer struct {
	team  court.End
	nodes []float64 // the margin above the level
	next  []int32   // the side a line goes on to from each, or -1
	in    []bool    // whether a line comes to it
}

func newTracer(m Map, level units.Seconds) *tracer {
	const sides = 2 * nodeColumns * nodeRows
	t := &tracer{
		team: m.Team(), nodes: make([]float64, nodeColumns*nodeRows),
		next: make([]int32, sides), in: make([]bool, sides),
	}
	for i := range t.next {
		t.next[i] = -1
	}
	for i := range m.cells {
		t.nodes[(i/Columns+1)*nodeColumns+i%Columns+1] = float64(m.Margin(i) - level)
	}
	for row := 1; row <= Rows; row++ {
		t.carryOn(row*nodeColumns, 1)
		t.carryOn(row*nodeColumns+nodeColumns-1, -1)
	}
	for column := range nodeColumns {
		t.carryOn(column, nodeColumns)
		t.carryOn(column+(nodeRows-1)*nodeColumns, -nodeColumns)
	}
	return t
}

// carryOn sets a node of the edge, half a cell outside the outer centres, from the two
// nodes inward of it.
func (t *tracer) carryOn(n, inward int) {
	a, b := t.nodes[n+inward], t.nodes[n+2*inward]
	t.nodes[n] = a + (a-b)/2
}

func (t *tracer) value(column, row int) float64 { return t.nodes[row*nodeColumns+column] }

// place is where a node is.
func (t *tracer) place(column, row int) court.Point {
	inset := func(i, n int) float64 { return min(max(float64(i)-0.5, 0), float64(n)) }
	return spot(t.team, inset(column, Columns), inset(row, Rows))
}

// The sides of a square of four nodes: along its two rows, along its two columns.
const (
	front = iota // nearer the net
	back
	left
	right
)

// paths are a square's pieces of line, from side to side, by which of its corners
// are at or above the level: 1 front left, 2 front right, 4 back right, 8 back left.
// All pieces have the corners above on the same hand, so that pieces of neighbouring
// squares join end to start. Of opposite corners (5 and 10) the middle is above too.
var paths = [16][][2]int{
	1: {{front, left}}, 2: {{right, front}}, 4: {{back, right}}, 8: {{left, back}},
	3: {{right, left}}, 6: {{back, front}}, 12: {{left, right}}, 9: {{front, back}},
	14: {{left, front}}, 13: {{front, right}}, 11: {{right, back}}, 7: {{back, left}},
	5: {{front, right}, {back, left}}, 10: {{left, front}, {right, back}},
}

// apart are the pieces where opposite corners are above and the middle is below.
var apart = [16][][2]int{
	5: {{front, left}, {back, right}}, 10: {{right, front}, {left, back}},
}

// square adds the pieces of line in the square behind a node and to its right.
func (t *tracer) square(column, row int) {
	corners := [4]float64{t.value(column, row), t.value(column+1, row), t.value(column+1, row+1), t.value(column, row+1)}
	which, sum := 0, 0.0
	for i, v := range corners {
		sum += v
		if v >= 0 {
			which |= 1 << i
		}
	}
	pieces := paths[which]
	if sum < 0 && apart[which] != nil {
		pieces = apart[which]
	}
	n := row*nodeColumns + column
	sides := [4]int{front: 2 * n, back: 2 * (n + nodeColumns), left: 2*n + 1, right: 2*(n+1) + 1}
	for _, p := range pieces {
		t.next[sides[p[0]]], t.in[sides[p[1]]] = int32(sides[p[1]]), true
	}
}

// lines joins the pieces.
func (t *tracer) lines() []Contour {
	var out []Contour
	for _, closed := range [...]bool{false, true} {
		for side, next := range t.next {
			if next >= 0 && t.in[side] == closed {
				out = append(out, Contour{t.follow(side), closed})
			}
		}
	}
	return out
}

// follow walks a line from a side to its end, or round, and forgets it.
func (t *tracer) follow(side int) []court.Point {
	points := []court.Point{t.crossing(side)}
	for start := side; ; {
		next := int(t.next[side])
		t.next[side] = -1
		if next < 0 || next == start {
			return points
		}
		points = append(points, t.crossing(next))
		side = next
	}
}

// crossing is where a side meets the level; one of its nodes is below it, the
// other not.
func (t *tracer) crossing(side int) court.Point {
	n := side / 2
	column, row := n%nodeColumns, n/nodeColumns
	c, r := column+1-side%2, row+side%2
	a, b := t.value(column, row), t.value(c, r)
	return t.place(column, row).Toward(t.place(c, r), a/(a-b))
}
