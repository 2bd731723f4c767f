package cover

import (
	"math"
	"testing"

	"homeside/model/flight"
	"homeside/model/units"
)

// kd of the default ball at sea level.
const kd33 = 0.0359675993

// One-dimensional quadratic drag from 20 m/s: 6.7056 m in 0.379169 s (computed
// once with an independent program from the closed form).
func TestDriveTime(t *testing.T) {
	for _, c := range []struct{ d, v, kd, want, off float64 }{
		{6.7056, 20, kd33, 0.379169, 5e-7},
		{6.7056, 20, 0, 0.33528, 1e-12},
		{0, 15, kd33, 0, 0},
	} {
		if got := driveTime(c.d, c.v, c.kd); math.Abs(got-c.want) > c.off {
			t.Errorf("driveTime(%v, %v, %v) = %.9f, want %v", c.d, c.v, c.kd, got, c.want)
		}
	}
}

// Thrown up at 10 m/s the ball rises 4.343471 m in 0.916877 s and comes back at
// 8.553674 m/s; it falls 1.9812 m in 0.643227 s (standard closed forms, computed once
// with an independent program). In a vacuum, t = sqrt(2 h / g).
func TestLobTime(t *testing.T) {
	for _, c := range []struct{ up, down, kd, want, off float64 }{
		{4.343471, 0, kd33, 0.916877, 5e-7},
		{0, 1.9812, kd33, 0.643227, 5e-7},
		{0, 4.63958, kd33, 1, 5e-7},
		{4.343471, 1.9812, kd33, 0.916877 + 0.643227, 1e-6},
		{4.903325, 4.903325, 0, 2, 1e-12},
		{4.903325, 4.903325, 1e-12, 2, 1e-9},
		{0, 0, kd33, 0, 0},
	} {
		if got := lobTime(c.up, c.down, c.kd); math.Abs(got-c.want) > c.off {
			t.Errorf("lobTime(%v, %v, %v) = %.9f, want %v", c.up, c.down, c.kd, got, c.want)
		}
	}
}

// The lob's time against the whole flight, solved for the apex and the cell: what
// the speed over the ground adds to the drag is small.
func TestLobTimeAgainstFlight(t *testing.T) {
	const most = 0.006 // s
	m := flight.Default()
	m.Net = flight.Net{Flat: 1e-9} // cells close behind the net count too
	worst := 0.0
	for _, apexFt := range []units.Feet{12, 16, 20, 30} {
		s := setPair()
		s.Shot = Shot{Lob: apexFt}
		lob := s.ballTime()
		for _, i := range []int{0, 20, 39, 20*Columns + 5, 30*Columns + 35, Cells - Columns, Cells - 1} {
			at := Centre(s.Team, i)
			found := m.Solve(flight.Intent{
				From: flight.Over(s.From, s.Height), AimX: at.X.Metres(), AimY: at.Y.Metres(),
				Kind: flight.Apex, Value: float64(apexFt.Metres()),
			})
			if found.Low == nil {
				t.Fatalf("no lob %v ft high to %v: %v", apexFt, at, found.Reason)
			}
			worst = max(worst, math.Abs(float64(lob(at)-found.Low.Path.Duration)))
		}
	}
	if worst > most {
		t.Errorf("a lob's time is off by up to %v s, want at most %v", worst, most)
	}
}

func TestShotString(t *testing.T) {
	want := [...]string{"drive of 10 m/s", "drive of 15 m/s", "drive of 20 m/s", "lob 20 ft high"}
	for i, s := range Shots {
		if got := s.String(); got != want[i] {
			t.Errorf("Shots[%d] = %q, want %q", i, got, want[i])
		}
	}
	if got := (Shot{}).String(); got != want[1] {
		t.Errorf("the zero Shot = %q, want %q", got, want[1])
	}
}
