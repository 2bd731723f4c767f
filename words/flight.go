package words

import (
	"homeside/model/flight"
	"homeside/model/rally"
	"homeside/model/units"
)

// OverNet says how high a ball passes a net of height top: "4 ft 5 in over", or
// "6 in under" for one that does not pass.
func OverNet(ball, top units.Feet) string {
	if ball < top {
		return T("%s under", Length(top-ball))
	}
	return T("%s over", Length(ball-top))
}

// TimesNet says a height as a multiple of the net's: "2.6 × net".
func TimesNet(z, top units.Feet) string {
	return T("%.1f × net", float64(z/top))
}

// TimeBought says what a return buys its side.
func TimeBought(t rally.TimeBought) string {
	if t.Own.Reason != flight.Possible {
		return T("This return cannot be hit so: %s.", Name(t.Own.Reason))
	}
	return T("From this return (%s high, %s inside the baseline) it takes %s until the third is struck and %s until a third of 15 m/s is at the kitchen line. Height buys the first, depth the rest.",
		Length(t.Apex), Length(t.Depth), Seconds(t.Own.Third), Seconds(t.Own.Line))
}
