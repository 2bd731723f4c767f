package compose

import (
	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/cover"
)

// hatchWidth is the width of a hatch's strokes.
const hatchWidth canvas.Points = 0.9

// lean is the way a hatch goes: its columns for every row away from the net.
type lean int

const (
	rising  lean = 1
	falling lean = -1
)

// hatch strokes every second diagonal of the cells for which is says true; no
// such cells draw nothing.
func (p Picture) hatch(g *canvas.Panel, id, label string, team court.End, is func(int) bool, leans ...lean) {
	var path canvas.Path
	for _, l := range leans {
		path = l.diagonals(path, team, is)
	}
	if path != nil {
		g.Add(canvas.Shape{ID: id, Label: label, Layer: canvas.Ground, Path: path,
			Style: canvas.Style{Stroke: p.look().Quiet, Width: canvas.Pts(hatchWidth)}})
	}
}

// diagonals adds a stroke for each run of cells along a diagonal, corner to corner.
func (l lean) diagonals(path canvas.Path, team court.End, is func(int) bool) canvas.Path {
	const base = cover.Columns / 2 // any cell not on the edge
	half := cover.Centre(team, base+l.step()).Sub(cover.Centre(team, base)).Times(0.5)
	for i := range cover.Cells {
		if !is(i) || !l.drawn(i) {
			continue
		}
		if before := i - l.step(); before >= 0 && l.follows(before, i) && is(before) {
			continue // part of a run
		}
		end := i
		for next := end + l.step(); next < cover.Cells && l.follows(end, next) && is(next); next = end + l.step() {
			end = next
		}
		path = path.Move(canvas.On(cover.Centre(team, i).Sub(half))).Line(canvas.On(cover.Centre(team, end).Add(half)))
	}
	return path
}

func (l lean) step() int { return cover.Columns + int(l) }

// drawn says whether the cell is on a diagonal that is stroked.
func (l lean) drawn(i int) bool { return (i%cover.Columns-int(l)*(i/cover.Columns))%2 == 0 }

// follows says whether cell b stands right behind cell a on its diagonal, in the
// next row and not round the end of one.
func (l lean) follows(a, b int) bool { return b%cover.Columns-a%cover.Columns == int(l) }

// midst is the cell nearest the mean place of those for which is says true; false
// if there is none.
func midst(team court.End, is func(int) bool) (court.Point, bool) {
	var sum court.Point
	var cells []court.Point
	for i := range cover.Cells {
		if is(i) {
			cells = append(cells, cover.Centre(team, i))
			sum = sum.Add(cells[len(cells)-1])
		}
	}
	if len(cells) == 0 {
		return sum, false
	}
	mean := sum.Times(1 / float64(len(cells)))
	best := cells[0]
	for _, c := range cells {
		if c.Distance(mean) < best.Distance(mean) {
			best = c
		}
	}
	return best, true
}
