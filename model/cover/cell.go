package cover

import (
	"homeside/model/court"
	"homeside/model/units"
)

// The cells of one team's court. Cell i stands in column i % Columns, counted
// from the team's left, and row i / Columns, counted from the net.
const (
	CellSize units.Feet = 0.5
	Columns             = int(court.Width / CellSize)
	Rows                = int(court.Baseline / CellSize)
	Cells               = Columns * Rows // 1760
)

// Centre is the middle of cell i of a team's court. Cells below 0 or from Cells
// on lie beside the court.
func Centre(team court.End, i int) court.Point {
	return spot(team, float64(i%Columns)+0.5, float64(i/Columns)+0.5)
}

// spot is the point so many cells from the team's left sideline and from the net.
func spot(team court.End, column, row float64) court.Point {
	return court.OwnPoint(team, units.Feet(column)*CellSize-court.HalfWidth, units.Feet(row)*CellSize)
}

// MiddleHalf is how far to each side of the court's long axis the middle
// reaches: the strip where both partners may think the ball is theirs. The width
// is our assumption.
const MiddleHalf units.Feet = 2

// InMiddle says whether the centre of cell i is within MiddleHalf of the
// centreline or of its continuation through the kitchen to the net.
func InMiddle(i int) bool {
	x := spot(court.Near, float64(i%Columns)+0.5, 0).X
	return max(x, -x) <= MiddleHalf
}
