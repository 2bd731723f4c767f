package units

import "math"

// FootInMetres is the international foot, exact since 1959.
const FootInMetres = 0.3048

// InchesInFoot is the number of inches in a foot.
const InchesInFoot = 12

// MileInMetres is the statute mile: 5280 ft, exact.
const MileInMetres = 5280 * FootInMetres

// Gravity is standard gravity in m/s², exact (3rd CGPM, 1901).
const Gravity = 9.80665

// Feet is a length on the court.
type Feet float64

// Metres is a length in the physics of the ball and the legs.
type Metres float64

// Seconds is a time or a span of time; time 0 of a play is the serve's contact.
type Seconds float64

// MetresPerSecond is a speed.
type MetresPerSecond float64

// Degrees is an angle.
type Degrees float64

// RPM is a rate of turning in revolutions a minute.
type RPM float64

// Inches gives a length in feet from one in inches.
func Inches(in float64) Feet { return Feet(in / InchesInFoot) }

// Metres converts to metres.
func (f Feet) Metres() Metres { return Metres(float64(f) * FootInMetres) }

// Inches is the length in inches.
func (f Feet) Inches() float64 { return float64(f) * InchesInFoot }

// Feet converts to feet.
func (m Metres) Feet() Feet { return Feet(float64(m) / FootInMetres) }

// FeetPerSecond is the speed in ft/s.
func (v MetresPerSecond) FeetPerSecond() float64 { return float64(v) / FootInMetres }

// MilesPerHour is the speed in mph.
func (v MetresPerSecond) MilesPerHour() float64 { return float64(v) * 3600 / MileInMetres }

// FeetPerSecond gives a speed from one in ft/s.
func FeetPerSecond(v float64) MetresPerSecond { return MetresPerSecond(v * FootInMetres) }

// MilesPerHour gives a speed from one in mph.
func MilesPerHour(v float64) MetresPerSecond { return MetresPerSecond(v * MileInMetres / 3600) }

// Radians is the angle in radians.
func (d Degrees) Radians() float64 { return float64(d) * math.Pi / 180 }

// FromRadians gives degrees from radians.
func FromRadians(r float64) Degrees { return Degrees(r * 180 / math.Pi) }

// Normal is the same angle in [0, 360).
func (d Degrees) Normal() Degrees {
	n := math.Mod(float64(d), 360)
	if n < 0 {
		n += 360
	}
	if n == 360 { // a tiny negative angle rounds up to a full turn
		n = 0
	}
	return Degrees(n)
}

// RadiansPerSecond is the rate of turning in rad/s.
func (r RPM) RadiansPerSecond() float64 { return float64(r) * 2 * math.Pi / 60 }

// FromRadiansPerSecond gives a rate in revolutions a minute.
func FromRadiansPerSecond(w float64) RPM { return RPM(w * 60 / (2 * math.Pi)) }
