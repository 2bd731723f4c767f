package gesture

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Snapping says what a place that is dragged snaps to. The zero value snaps to
// nothing.
type Snapping struct {
	Lines    bool // the middle of a line of the court
	HalfFeet bool // whole and half feet from the centreline and the net
	Mirror   bool // the partner's image in the centreline, and the partner's depth
	Reach    units.Feet
}

// GuideKind is what a place has snapped to.
type GuideKind uint8

// The kinds of guide.
const (
	ToLine   GuideKind = iota
	ToMirror           // the partner's image
	ToDepth            // as deep as the partner
)

// Guide shows what a place has snapped to: a line from there to the place.
type Guide struct {
	Kind     GuideKind
	From, To court.Point
}

// halfFoot is the step of Snapping.HalfFeet.
const halfFoot units.Feet = 0.5

// Place is a place as it snaps, each axis for itself: to the nearest of lines
// and partner within reach or else to half feet. partner is nil for what has
// none. Half feet show no guide: the figures do.
func (s Snapping) Place(p court.Point, partner *court.Point) (court.Point, []Guide) {
	x, y := axis{p.X, s.Reach, p.X, false, 0}, axis{p.Y, s.Reach, p.Y, false, 0}
	if s.Lines {
		x.try(ToLine, -court.HalfWidth, 0, court.HalfWidth)
		y.try(ToLine, -court.Baseline, -court.Kitchen, court.Kitchen, court.Baseline)
	}
	if s.Mirror && partner != nil {
		x.try(ToMirror, -partner.X)
		y.try(ToDepth, partner.Y)
	}
	if s.HalfFeet {
		x.round()
		y.round()
	}
	to := court.Pt(x.to, y.to)
	return to, guides(x, y, to, partner)
}

// axis is one coordinate that looks for something near.
type axis struct {
	at    units.Feet
	reach units.Feet // of what is nearest so far
	to    units.Feet
	found bool
	kind  GuideKind
}

func (a *axis) try(kind GuideKind, places ...units.Feet) {
	for _, v := range places {
		if d := max(a.at-v, v-a.at); d < a.reach || d == a.reach && !a.found {
			*a = axis{a.at, d, v, true, kind}
		}
	}
}

func (a *axis) round() {
	if !a.found {
		a.to = units.Feet(math.Round(float64(a.at/halfFoot))) * halfFoot
	}
}

// guides are the lines that show what both axes have found.
func guides(x, y axis, to court.Point, partner *court.Point) []Guide {
	var out []Guide
	if x.found && x.kind == ToLine {
		out = append(out, Guide{ToLine, court.Pt(to.X, endOf(to.Y, 0)), court.Pt(to.X, endOf(to.Y, court.Baseline))})
	}
	if y.found && y.kind == ToLine {
		out = append(out, Guide{ToLine, court.Pt(-court.HalfWidth, to.Y), court.Pt(court.HalfWidth, to.Y)})
	}
	if x.found && x.kind == ToMirror {
		out = append(out, Guide{ToMirror, *partner, to})
	} else if y.found && y.kind == ToDepth {
		out = append(out, Guide{ToDepth, *partner, to})
	}
	return out
}

// endOf is a distance from the net on the side of the net that y is on.
func endOf(y, far units.Feet) units.Feet {
	if y < 0 {
		return -far
	}
	return far
}
