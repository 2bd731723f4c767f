package court

import "homeside/model/units"

// Names of the lines that need no side.
const (
	BaselineName   = "baseline"
	KitchenName    = "kitchen line"
	CentrelineName = "centreline"
)

// Line is one painted line: a name, an end where it has one, and its area.
type Line struct {
	Name string // "baseline", "kitchen line", "centreline", "right sideline", "left sideline"
	End  End    // the half it is painted on
	Area Rect   // two inches wide, within the court's 20 x 44 ft
}

// Lines are the painted lines of both halves. Sidelines are split at the net,
// so that right and left are each team's own.
var Lines = append(linesOf(Near), linesOf(Far)...)

func linesOf(e End) []Line {
	own := func(name string, r1, b1, r2, b2 units.Feet) Line {
		return Line{name, e, RectOf(OwnPoint(e, r1, b1), OwnPoint(e, r2, b2))}
	}
	return []Line{
		own(BaselineName, -HalfWidth, Baseline-LineWidth, HalfWidth, Baseline),
		own(KitchenName, -HalfWidth, Kitchen-LineWidth, HalfWidth, Kitchen),
		own(CentrelineName, -LineWidth/2, Kitchen, LineWidth/2, Baseline),
		own("right sideline", HalfWidth-LineWidth, 0, HalfWidth, Baseline),
		own("left sideline", -HalfWidth, 0, -HalfWidth+LineWidth, Baseline),
	}
}

// Offset is how far a place is from the outer edge of a line, with its sign.
type Offset struct {
	Line     string     // the line's name
	Distance units.Feet // never negative
	Inside   bool       // toward the court's middle (baseline, sidelines) or the net (kitchen line)
}

// FromBaseline is p's distance from the baseline of its own half; Inside is toward the net.
func FromBaseline(e End, p Point) Offset { return across(BaselineName, Baseline-p.Y*e.Sign()) }

// FromKitchen is p's distance from the kitchen line of end e; Inside is in the kitchen.
func FromKitchen(e End, p Point) Offset { return across(KitchenName, Kitchen-p.Y*e.Sign()) }

// FromSideline is p's distance from the nearer sideline of end e, named right or left by that team's view.
func FromSideline(e End, p Point) Offset {
	s := SideOf(e, p)
	return across(s.String()+" sideline", HalfWidth-p.X*SideX(e, s))
}

// FromCentreline is p's distance from the centreline's middle; Inside means on the team's right.
func FromCentreline(e End, p Point) Offset { return across(CentrelineName, p.X*SideX(e, Right)) }

func across(name string, inside units.Feet) Offset {
	return Offset{name, max(inside, -inside), inside >= 0}
}

// NearestAcross is the nearer of baseline and kitchen line.
func NearestAcross(e End, p Point) Offset {
	return nearer(FromBaseline(e, p), FromKitchen(e, p))
}

// NearestAlong is the nearer of sideline and centreline.
func NearestAlong(e End, p Point) Offset {
	return nearer(FromSideline(e, p), FromCentreline(e, p))
}

func nearer(a, b Offset) Offset {
	if b.Distance < a.Distance {
		return b
	}
	return a
}
