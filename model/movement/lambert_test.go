package movement

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Published values: W(1) is the omega constant (OEIS A030178); W(-1/e) = -1, W(e) = 1,
// W(-ln 2 / 2) = -ln 2 and W(2 e^2) = 2 by definition; W(-0.1) from Corless et
// al. 1996's definition to 15 digits [from memory].
func TestLambertPublished(t *testing.T) {
	for _, c := range []struct{ z, want float64 }{
		{0, 0}, {1, 0.567143290409783873}, {math.E, 1}, {-math.Ln2 / 2, -math.Ln2}, {2 * math.E * math.E, 2}, {-0.1, -0.111832559158963},
	} {
		if got, ok := lambertW0(c.z); !ok || math.Abs(got-c.want) > 1e-15*max(1, math.Abs(c.want))*4 {
			t.Errorf("lambertW0(%v) = %v, %v, want %v", c.z, got, ok, c.want)
		}
	}
	// The double nearest to -1/e lies just above it.
	if got, ok := lambertW0(-1 / math.E); !ok || math.Abs(got+1) > 2e-8 {
		t.Errorf("lambertW0(-1/e) = %v, %v, want -1", got, ok)
	}
}

// 60-digit arithmetic and scipy.special.lambertw, written by
// testdata/profiles.py; scipy itself is 4e-11 off close to the branch point.
func TestLambertAgainstOthers(t *testing.T) {
	for _, row := range readCSV(t, "lambert.csv") {
		got, ok := lambertW0(row["z"])
		if want := row["w0"]; !ok || math.Abs(got-want) > 1e-14*max(1, math.Abs(want)) {
			t.Errorf("lambertW0(%v) = %.17g, %v, want %.17g", row["z"], got, ok, want)
		}
		if want := row["scipy"]; math.Abs(got-want) > 1e-10*max(1, math.Abs(want)) {
			t.Errorf("lambertW0(%v) = %.17g, scipy says %.17g", row["z"], got, want)
		}
	}
}

func TestLambertOutside(t *testing.T) {
	for _, z := range []float64{-0.368, -1, math.Inf(-1), math.NaN()} {
		if got, ok := lambertW0(z); ok || got != 0 {
			t.Errorf("lambertW0(%v) = %v, %v, want 0, false", z, got, ok)
		}
	}
	if got, ok := lambertW0(math.Inf(1)); !ok || !math.IsInf(got, 1) {
		t.Errorf("lambertW0(+Inf) = %v, %v, want +Inf", got, ok)
	}
}

// W(w e^w) = w, where the digits lost by w e^w near the branch point are allowed for.
func TestLambertInverts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := rapid.Float64Range(-0.9999, 200).Draw(t, "w")
		allowed := 1e-14 * max(1, math.Abs(w)) / min(1, 1+w)
		if got, ok := lambertW0(w * math.Exp(w)); !ok || math.Abs(got-w) > allowed {
			t.Errorf("lambertW0(%v e^w) = %v, %v, want it back within %v", w, got, ok, allowed)
		}
	})
}
