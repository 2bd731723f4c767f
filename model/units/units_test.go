package units

import (
	"math"
	"testing"
)

// Court lengths in metres: USA Pickleball Official Rulebook 2026, section 3,
// converted exactly (1 ft = 0.3048 m).
func TestFeetToMetres(t *testing.T) {
	for _, c := range []struct {
		ft   Feet
		want Metres
	}{{20, 6.0960}, {44, 13.4112}, {10, 3.0480}, {15, 4.5720}, {7, 2.1336}, {14, 4.2672}, {Inches(36), 0.9144}, {Inches(34), 0.8636}} {
		if got := c.ft.Metres(); math.Abs(float64(got-c.want)) > 1e-12 {
			t.Errorf("(%v ft).Metres() = %v, want %v", c.ft, got, c.want)
		}
		if back := c.ft.Metres().Feet(); math.Abs(float64(back-c.ft)) > 1e-12 {
			t.Errorf("%v ft there and back = %v", c.ft, back)
		}
	}
}

func TestSpeeds(t *testing.T) {
	if got, want := float64(MilesPerHour(60)), 26.8224; math.Abs(got-want) > 1e-12 {
		t.Errorf("MilesPerHour(60) = %v m/s, want %v", got, want)
	}
	if got := MilesPerHour(37).MilesPerHour(); math.Abs(got-37) > 1e-12 {
		t.Errorf("37 mph there and back = %v", got)
	}
	if got := FeetPerSecond(10).FeetPerSecond(); math.Abs(got-10) > 1e-12 {
		t.Errorf("10 ft/s there and back = %v", got)
	}
}

func TestNormal(t *testing.T) {
	for _, c := range []struct{ in, want Degrees }{{0, 0}, {360, 0}, {-90, 270}, {725, 5}, {-1e-15, 0}} {
		if got := c.in.Normal(); math.Abs(float64(got-c.want)) > 1e-9 {
			t.Errorf("Degrees(%v).Normal() = %v, want %v", c.in, got, c.want)
		}
	}
}

func TestTurning(t *testing.T) {
	if got, want := RPM(60).RadiansPerSecond(), 2*math.Pi; math.Abs(got-want) > 1e-12 {
		t.Errorf("RPM(60) = %v rad/s, want %v", got, want)
	}
	if got := FromRadiansPerSecond(RPM(1200).RadiansPerSecond()); math.Abs(float64(got)-1200) > 1e-9 {
		t.Errorf("1200 rpm there and back = %v", got)
	}
	if got := FromRadians(Degrees(33).Radians()); math.Abs(float64(got)-33) > 1e-12 {
		t.Errorf("33 degrees there and back = %v", got)
	}
}
