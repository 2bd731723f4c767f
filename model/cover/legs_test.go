package cover

import (
	"math"
	"testing"

	"homeside/model/movement"
	"homeside/model/units"
	"pgregory.net/rapid"
)

// The table is a hundred times closer to Through than closeTo for usual paces, and
// within it for any.
func TestRunThroughAgainstThrough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := movement.DefaultPace()
		p.TopSpeed, p.Tau = units.MetresPerSecond(drawFloat(t, 0.1, 15, "top")), units.Seconds(drawFloat(t, 0.05, 10, "tau"))
		most := float64(closeTo)
		if p.Tau <= 2 {
			most /= 100
		}
		for i := range 200 {
			d := units.Metres(drawFloat(t, 0, 20, "distance") * float64(i) / 200)
			if got, want := runThrough(&p, d), p.Through(d); math.Abs(float64(got-want)) > most {
				t.Fatalf("runThrough(%v m) at %v m/s, %v s = %v, want %v", d, p.TopSpeed, p.Tau, got, want)
			}
		}
	})
}

func TestCubic(t *testing.T) {
	f := func(x float64) float64 { return 3 - 2*x + 0.5*x*x - 4*x*x*x }
	for _, x := range []float64{0, 0.25, 0.5, 1} {
		if got, want := cubic(f(-1), f(0), f(1), f(2), x), f(x); math.Abs(got-want) > 1e-12 {
			t.Errorf("cubic at %v = %v, want %v", x, got, want)
		}
	}
}
