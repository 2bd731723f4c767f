package words

import (
	"fmt"
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Length is a length in the measures chosen: "3 ft 6 in", or "1.07 m".
func Length(f units.Feet) string {
	if Measured() == Metric {
		return metres(f.Metres())
	}
	return FeetInches(f)
}

// metres is a length to the nearest centimetre: "1.07 m", "15 cm", "2 m".
func metres(m units.Metres) string {
	cm := math.Round(float64(m) * 100)
	switch {
	case math.Abs(cm) < 100:
		return fmt.Sprintf("%.0f cm", cm+0) // +0: no -0
	case math.Mod(cm, 100) == 0:
		return fmt.Sprintf("%.0f m", cm/100)
	default:
		return fmt.Sprintf("%.2f m", cm/100)
	}
}

// Whole is a length on an axis, which stands at whole feet or metres: "8 ft", "3 m".
func Whole(f units.Feet) string {
	if Measured() == Metric {
		return fmt.Sprintf("%.0f m", float64(f.Metres()))
	}
	return fmt.Sprintf("%.0f ft", float64(f))
}

// Distance is the length of a run, in whole feet or in metres with one decimal:
// "28 ft", "8.5 m".
func Distance(f units.Feet) string {
	if Measured() == Metric {
		return fmt.Sprintf("%.1f m", float64(f.Metres()))
	}
	return fmt.Sprintf("%.0f ft", float64(f))
}

// FeetInches is a length as a coach says it, to the nearest inch: "3 ft 6 in",
// "2 ft", "4 in", "-1 ft 2 in".
func FeetInches(f units.Feet) string {
	in := int(math.Round(f.Inches()))
	sign := ""
	if in < 0 {
		sign, in = "-", -in
	}
	switch feet, rest := in/units.InchesInFoot, in%units.InchesInFoot; {
	case feet == 0:
		return fmt.Sprintf("%s%d in", sign, rest)
	case rest == 0:
		return fmt.Sprintf("%s%d ft", sign, feet)
	default:
		return fmt.Sprintf("%s%d ft %d in", sign, feet, rest)
	}
}

// Seconds is a time on the rally's clock: "1.10 s", "-0.50 s".
func Seconds(t units.Seconds) string {
	if t > -0.005 && t <= 0 { // -0 as well
		t = 0
	}
	return fmt.Sprintf("%.2f s", float64(t))
}

// Place says where a point is by the nearest line across and the nearest along:
// "2 ft behind the baseline, 3 ft 6 in inside the right sideline".
func Place(e court.End, p court.Point) string {
	return Across(e, p) + ", " + Along(e, p)
}

// Across says where a point is by the nearest line across the court.
func Across(e court.End, p court.Point) string {
	return offset(court.NearestAcross(e, p), p.Y*e.Sign() > 0)
}

// Along says where a point is by the nearest line along the court.
func Along(e court.End, p court.Point) string { return offset(court.NearestAlong(e, p), true) }

func offset(o court.Offset, ownSide bool) string {
	return Said(relation(o, ownSide), Length(o.Distance), Said(lineWords[o.Line]))
}

// lineWords are the lines by the names that court gives them.
var lineWords = map[string]string{
	court.BaselineName: Text("the baseline"), court.KitchenName: Text("the kitchen line"), court.CentrelineName: Text("the centreline"),
	"right sideline": Text("the right sideline"), "left sideline": Text("the left sideline"),
}

// relation is how a place is said by its distance from a line.
func relation(o court.Offset, ownSide bool) string {
	switch {
	case o.Line == court.CentrelineName && o.Inside:
		return Text("%s right of %s")
	case o.Line == court.CentrelineName:
		return Text("%s left of %s")
	case !ownSide:
		return Text("%s over the net from %s")
	case o.Line == court.KitchenName && !o.Inside:
		return Text("%s behind %s")
	case o.Line == court.KitchenName:
		return Text("%s in front of %s")
	case o.Inside:
		return Text("%s inside %s")
	case o.Line == court.BaselineName:
		return Text("%s behind %s")
	default:
		return Text("%s outside %s")
	}
}
