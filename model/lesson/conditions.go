package lesson

import "homeside/model/units"

// Conditions are the ball and the air a lesson is played with. The zero value
// is an outdoor ball in still air at sea level, 15 °C, on an ordinary court.
type Conditions struct {
	Indoor      bool                  // the 26-hole ball
	Altitude    units.Metres          // above sea level
	Temperature *float64              // °C; nil is the standard atmosphere's at that altitude
	WindX       units.MetresPerSecond // toward +x
	WindY       units.MetresPerSecond // toward +y, from the near end to the far one
	Restitution float64               // of the bounce; 0 is the default
	Friction    float64               // of the court; 0 is the default
	Lift        float64               // lift coefficient per spin parameter; 0 is the default
}

// AimError is how far a player's shots scatter: standard deviations.
type AimError struct {
	Speed units.MetresPerSecond // of the launch speed
	Angle units.Degrees         // of the launch direction, up and sideways
}
