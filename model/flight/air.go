package flight

import (
	"math"

	"homeside/model/units"
)

// SeaLevel is the density of air at sea level and 15 °C, kg/m³ (ISO 2533:1975).
const SeaLevel = 1.225

// Constants of the standard atmosphere, ISO 2533:1975.
const (
	isaTemperature = 288.15    // K at sea level
	isaLapse       = 0.0065    // K/m
	isaPressure    = 101325    // Pa at sea level
	isaExponent    = 5.25588   // g / (R lapse)
	isaGas         = 287.05287 // J/(kg K), dry air
	isaTop         = 11000     // m, where the lapse ends
	freezing       = 273.15    // K
)

// Air is what the ball flies through.
type Air struct {
	Density float64 // kg/m³; 0 is a vacuum
	Wind    Vec     // m/s, the same everywhere
}

// Altitude is still air of the standard atmosphere at a height above sea level,
// meant for -1000 to 11000 m and clamped there.
func Altitude(h units.Metres) Air { return atmosphere(h, standardKelvin(h)) }

// AltitudeAt is still air at a height above sea level on a day of the given
// temperature in °C, meant for -60 to 60 and clamped there: standard pressure,
// that day's density.
func AltitudeAt(h units.Metres, celsius float64) Air {
	return atmosphere(h, freezing+min(max(celsius, -60), 60))
}

func standardKelvin(h units.Metres) float64 { return isaTemperature - isaLapse*clampAltitude(h) }

func clampAltitude(h units.Metres) float64 { return min(max(float64(h), -1000), isaTop) }

func atmosphere(h units.Metres, kelvin float64) Air {
	p := isaPressure * math.Pow(standardKelvin(h)/isaTemperature, isaExponent)
	return Air{Density: p / (isaGas * kelvin)}
}
