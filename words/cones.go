package words

import (
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/units"
)

// ConesMeasured says how the measures of a cone sheet are taken.
func ConesMeasured() string {
	return T("Measured from the outer edges of the lines; right and left as that team sees them, facing the net. White cones: near team; dark cones: far team.")
}

// Cone says where to put a cone: "3 ft 6 in in from the right sideline, 2 ft
// behind the baseline". Measures are to the nearest inch.
func Cone(e court.End, p court.Point) string {
	return alongLine(e, p) + ", " + acrossLine(e, p)
}

// ConeMetres is the same two measures in metres: "1.07 m, 0.61 m".
func ConeMetres(e court.End, p court.Point) string {
	return InMetres(court.NearestAlong(e, p).Distance) + ", " + InMetres(court.NearestAcross(e, p).Distance)
}

// onTheLine is what a measure of less than half an inch comes to.
var onTheLine = units.Inches(0.5)

// alongLine is how far a place is from the nearest line along the court.
func alongLine(e court.End, p court.Point) string {
	o := court.NearestAlong(e, p)
	far, right := FeetInches(o.Distance), court.SideOf(e, p) == court.Right
	switch middle, on := o.Line == court.CentrelineName, o.Distance < onTheLine; {
	case middle && on:
		return T("on the centreline")
	case on && right:
		return T("on the right sideline")
	case on:
		return T("on the left sideline")
	case middle && right:
		return T("%s right of the centreline", far)
	case middle:
		return T("%s left of the centreline", far)
	case o.Inside && right:
		return T("%s in from the right sideline", far)
	case o.Inside:
		return T("%s in from the left sideline", far)
	case right:
		return T("%s outside the right sideline", far)
	default:
		return T("%s outside the left sideline", far)
	}
}

// acrossLine is how far a place is from the nearest line across the court, of
// the team's own half.
func acrossLine(e court.End, p court.Point) string {
	o := court.NearestAcross(e, p)
	far, own := FeetInches(o.Distance), p.Y*e.Sign() > 0
	switch kitchen, on := o.Line == court.KitchenName, o.Distance < onTheLine; {
	case kitchen && on:
		return T("on the kitchen line")
	case on:
		return T("on the baseline")
	case kitchen && !own:
		return T("%s from the kitchen line, over the net", far)
	case kitchen && o.Inside:
		return T("%s in front of the kitchen line", far)
	case kitchen:
		return T("%s behind the kitchen line", far)
	case o.Inside:
		return T("%s inside the baseline", far)
	default:
		return T("%s behind the baseline", far)
	}
}

// EventName is an event in short: "return", "return bounces", "end".
func EventName(e lesson.Event) string {
	switch shot := shotName(e.Shot); e.Moment {
	case lesson.Contact:
		return shot
	case lesson.Bounce:
		return T("%s bounces", shot)
	case lesson.Net:
		return T("%s at the net", shot)
	default:
		return T("end")
	}
}

// shotName is a shot in short, counted from 0.
func shotName(i int) string {
	switch i {
	case 0:
		return T("serve")
	case 1:
		return T("return")
	case 2:
		return T("third")
	case 3:
		return T("fourth")
	case 4:
		return T("fifth")
	}
	return T("ball %d", i+1)
}
