package compose

import "homeside/canvas"

// Shares of a picture's sides that words keep free. Broadcasters keep graphics
// 5 % from every edge of a wide picture (EBU R 95, safe areas for 16:9; from
// memory). Players of upright clips lay their own words over the top and the
// bottom: the shares there are common practice, of no one source.
const (
	SafeMargin      = 0.05
	tallTopShare    = 0.08
	tallBottomShare = 0.16
	uprightFrom     = 1.5 // height to width from which a picture counts as upright
)

// upright says whether a picture is one for a phone held upright.
func upright(width, height int) bool { return float64(height) > uprightFrom*float64(width) }

// Safe is the part of a picture that words and logo stay in.
func Safe(width, height int) Area {
	w, h := float64(width), float64(height)
	top, bottom := SafeMargin, SafeMargin
	if upright(width, height) {
		top, bottom = tallTopShare, tallBottomShare
	}
	return Area{
		Min: canvas.Px{X: w * SafeMargin, Y: h * top},
		Max: canvas.Px{X: w * (1 - SafeMargin), Y: h * (1 - bottom)},
	}
}
