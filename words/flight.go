package words

import (
	"fmt"

	"homeside/model/flight"
	"homeside/model/rally"
	"homeside/model/units"
)

// OverNet says how high a ball passes a net of height top: "4 ft 5 in over", or
// "6 in under" for one that does not pass.
func OverNet(ball, top units.Feet) string {
	if ball < top {
		return Length(top-ball) + " under"
	}
	return Length(ball-top) + " over"
}

// TimesNet says a height as a multiple of the net's: "2.6 x net".
func TimesNet(z, top units.Feet) string {
	return fmt.Sprintf("%.1f x net", float64(z/top))
}

// TimeBought says what a return buys its side.
func TimeBought(t rally.TimeBought) string {
	if t.Own.Reason != flight.Possible {
		return fmt.Sprintf("This return cannot be hit so: %s.", t.Own.Reason)
	}
	return fmt.Sprintf("From this return (%s high, %s inside the baseline) it takes %s to the third contact and %s until a third of 15 m/s is at the kitchen line. Height buys the first, depth the rest.",
		Length(t.Apex), Length(t.Depth), Seconds(t.Own.Third), Seconds(t.Own.Line))
}
