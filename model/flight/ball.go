package flight

import (
	"math"

	"homeside/model/units"
)

// Ball is what the air and the court see of a ball.
type Ball struct {
	Mass     float64      // kg
	Diameter units.Metres // m
	Drag     float64      // Cd on the cross-section
	Lift     float64      // Cl / S, S = r |ω| / |u|
	LiftCap  float64      // greatest |Cl|
}

// The two balls. Mass and diameter are within the equipment standard's range;
// Cd is Lindsey 2025 (40 holes 0.33, 26 holes 0.45); lift is Steyn et al. 2024,
// whose fit ends at S = 0.3; the cap is our assumption.
var (
	Outdoor = Ball{Mass: 0.0243, Diameter: 0.0742, Drag: 0.33, Lift: 0.195, LiftCap: 0.2}
	Indoor  = Ball{Mass: 0.0243, Diameter: 0.0742, Drag: 0.45, Lift: 0.195, LiftCap: 0.2}
)

// Radius is half the diameter: the height of the centre when the ball touches the court.
func (b Ball) Radius() units.Metres { return b.Diameter / 2 }

// Terminal is the speed at which drag balances weight; infinite without drag.
func (b Ball) Terminal(a Air) units.MetresPerSecond {
	return units.MetresPerSecond(math.Sqrt(units.Gravity / (b.pressure(a) * b.Drag)))
}

// pressure is ρ A / 2m in 1/m: the acceleration for a coefficient of one at 1 m/s.
func (b Ball) pressure(a Air) float64 {
	r := float64(b.Radius())
	return a.Density * math.Pi * r * r / (2 * b.Mass)
}
