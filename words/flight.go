package words

import (
	"fmt"

	"homeside/model/units"
)

// OverNet says how high a ball passes a net of height top: "4 ft 5 in over", or
// "6 in under" for one that does not pass.
func OverNet(ball, top units.Feet) string {
	if ball < top {
		return FeetInches(top-ball) + " under"
	}
	return FeetInches(ball-top) + " over"
}

// TimesNet says a height as a multiple of the net's: "2.6 x net".
func TimesNet(z, top units.Feet) string {
	return fmt.Sprintf("%.1f x net", float64(z/top))
}
