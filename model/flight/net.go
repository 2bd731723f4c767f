package flight

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Net is the net in the plane y = 0. The zero value is the court's own: 34 in at
// the centre, 36 in at the sidelines, ending at posts 22 ft apart.
type Net struct {
	Flat units.Metres // if more than 0, the height of a level net without end
}

// PostDiameter is the greatest diameter of a post, 3 in (rulebook 3.B, from memory).
var PostDiameter = units.Inches(3)

// Top is the height of the net's upper edge at x.
func (n Net) Top(x units.Metres) units.Metres {
	if n.Flat > 0 {
		return n.Flat
	}
	return court.NetHeight(x.Feet()).Metres()
}

// contact is what a ball of radius r does whose centre passes the plane at p:
// Landed means that it flies on, touching or not.
func (n Net) contact(p Vec, r float64) (o Outcome, touches bool) {
	top := float64(n.Top(units.Metres(p.X)))
	o = HitNet
	if n.Flat <= 0 {
		inner := float64((court.PostDistance / 2).Metres())
		switch beyond := math.Abs(p.X) - inner; {
		case beyond > float64(PostDiameter.Metres())+r:
			return Landed, false
		case beyond > -r:
			o = HitPost
		}
	}
	if p.Z < top {
		return o, true
	}
	return Landed, p.Z < top+r
}
