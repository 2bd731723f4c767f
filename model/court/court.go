package court

import (
	"math"

	"homeside/model/units"
)

// Sizes of the court: USA Pickleball Official Rulebook 2026, section 3.
const (
	Width     units.Feet = 20         // 3.A.1, to the outside of the lines (3.A.2)
	Length    units.Feet = 44         // 3.A.1
	HalfWidth            = Width / 2  // the sidelines' outer edges
	Baseline             = Length / 2 // the baselines' outer edges
	Kitchen   units.Feet = 7          // 3.A.4.c, the NVZ's depth with its line
	LineWidth units.Feet = 2.0 / 12   // 3.A.4.e

	NetAtPosts   units.Feet = 36.0 / 12 // 3.B.6, at the sidelines
	NetAtCentre  units.Feet = 34.0 / 12 // 3.B.7
	PostDistance units.Feet = 22        // 3.B.1, between the posts

	SurfaceWidth  units.Feet = 30 // 3.A.3, the least playing surface
	SurfaceLength units.Feet = 60 // 3.A.3
)

// End is one of the two ends, and so one of the two teams.
type End uint8

// The ends: the near team has y < 0.
const (
	Near End = iota
	Far
)

// Ends lists both ends.
var Ends = [2]End{Near, Far}

// Other is the opposite end.
func (e End) Other() End { return e ^ 1 }

// Sign is -1 for the near end and +1 for the far end: the sign of its y.
func (e End) Sign() units.Feet { return units.Feet(2*int(e) - 1) }

// Facing looks from this end to the net: 0 from the near end, 180 from the far end.
func (e End) Facing() units.Degrees { return units.Degrees(180 * int(e)) }

// String is "near" or "far".
func (e End) String() string { return [2]string{"near", "far"}[e&1] }

// Side is a half of a team's court, from its own view facing the net.
type Side uint8

// The sides. Right is the even court, left the odd court.
const (
	Right Side = iota
	Left
)

// Other is the opposite side.
func (s Side) Other() Side { return s ^ 1 }

// String is "right" or "left".
func (s Side) String() string { return [2]string{"right", "left"}[s&1] }

// SideX is the sign of x of a side of an end: +1 for the near right and the far left.
func SideX(e End, s Side) units.Feet {
	if (e == Near) == (s == Right) {
		return 1
	}
	return -1
}

// SideOf is the side of end e on which p stands; x = 0 counts as right.
func SideOf(e End, p Point) Side {
	if p.X*SideX(e, Right) >= 0 {
		return Right
	}
	return Left
}

// OwnPoint places a point in a team's own terms: right of its centreline and
// behind the net, both in feet; negative is left, or beyond the net.
func OwnPoint(e End, right, behind units.Feet) Point {
	return Point{right * SideX(e, Right), behind * e.Sign()}
}

// Surface is the least playing surface, 30 x 60 ft (3.A.3).
var Surface = Rect{Pt(-SurfaceWidth/2, -SurfaceLength/2), Pt(SurfaceWidth/2, SurfaceLength/2)}

// Bounds is the court with its lines.
var Bounds = Rect{Pt(-HalfWidth, -Baseline), Pt(HalfWidth, Baseline)}

// Half is one end's half of the court, net to baseline.
func Half(e End) Rect { return RectOf(Pt(-HalfWidth, 0), Pt(HalfWidth, Baseline*e.Sign())) }

// KitchenOf is one end's non-volley zone; its lines belong to it (3.A.4.c).
func KitchenOf(e End) Rect { return RectOf(Pt(-HalfWidth, 0), Pt(HalfWidth, Kitchen*e.Sign())) }

// InServiceCourt says whether a ball that lands at p is good for the service
// court of end e, side s: 10 x 15 ft with baseline, sideline and the whole
// centreline (it belongs to both courts, 3.A.4.f), without the NVZ line.
func InServiceCourt(e End, s Side, p Point) bool {
	right, behind := p.X*SideX(e, s), p.Y*e.Sign()
	return behind > Kitchen && behind <= Baseline && right >= -LineWidth/2 && right <= HalfWidth
}

// ServiceCourt is the area of that court for drawing: from the NVZ line's outer
// edge to the baseline and from the centreline's far edge to the sideline.
func ServiceCourt(e End, s Side) Rect {
	return RectOf(Pt(-LineWidth/2*SideX(e, s), Kitchen*e.Sign()), Pt(HalfWidth*SideX(e, s), Baseline*e.Sign()))
}

// InServingArea says whether a foot at p stands in the serving area of end e,
// side s: behind the baseline, between the imaginary extensions of sideline and
// centreline (3.A.4.g). A foot on the extension's own two inches counts as
// inside: the rulebook leaves it open, this is our reading.
func InServingArea(e End, s Side, p Point) bool {
	right, behind := p.X*SideX(e, s), p.Y*e.Sign()
	return behind > Baseline && right >= -LineWidth/2 && right <= HalfWidth
}

// NetHeight is the top of the net at x: 36 in at the sidelines and 34 in at the
// centre (3.B.6, 3.B.7). Between them the rulebook is silent; a straight line is
// our assumption (35 in at 5 ft). Outside the sidelines it stays at 36 in.
func NetHeight(x units.Feet) units.Feet {
	share := min(math.Abs(float64(x/HalfWidth)), 1)
	return NetAtCentre + (NetAtPosts-NetAtCentre)*units.Feet(share)
}
