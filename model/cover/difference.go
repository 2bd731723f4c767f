package cover

import "homeside/model/units"

// Difference is what changes from one map to another: two plays, or two moments
// of one. Cells count as each team sees its own court, so that a near and a far
// team compare as well.
type Difference struct{ Before, After Map }

// Change is what becomes of one cell.
type Change uint8

// The changes.
const (
	StaysOpen Change = iota
	StaysCovered
	Gained // open before, covered after
	Lost   // covered before, open after
)

var changeNames = [...]string{"stays open", "stays covered", "gained", "lost"}

// String is the change in words.
func (c Change) String() string { return changeNames[c&3] }

// Len is the number of cells that both maps have.
func (d Difference) Len() int { return min(d.Before.Len(), d.After.Len()) }

// Change is what becomes of cell i.
func (d Difference) Change(i int) Change {
	switch before, after := d.Before.Covered(i), d.After.Covered(i); {
	case before && after:
		return StaysCovered
	case after:
		return Gained
	case before:
		return Lost
	default:
		return StaysOpen
	}
}

// Margin is how much earlier the pair is at cell i after than before, before the
// ball; negative is later.
func (d Difference) Margin(i int) units.Seconds { return d.After.Margin(i) - d.Before.Margin(i) }

// Share is the share of the cells that change so, 0 to 1.
func (d Difference) Share(c Change) float64 {
	count := 0
	for i := range d.Len() {
		if d.Change(i) == c {
			count++
		}
	}
	return ratio(count, d.Len())
}
