package movement

import "math"

// lambertW0 is the principal branch of Lambert's W, the w >= -1 that solves
// w exp(w) = z for z >= -1/e, to a few units in the last place away from the
// branch point. It says false below the branch point and for what is not a
// number. Series and iteration: Corless, Gonnet, Hare, Jeffrey & Knuth, On the
// Lambert W Function, Adv. Comput. Math. 5 (1996) 329, (4.22) and (5.9).
func lambertW0(z float64) (float64, bool) {
	// p2 is 2 (e z + 1), with 1/e in two parts so that it keeps its digits near
	// the branch point.
	const inverseE, rest = 0.36787944117144233, -1.2428753672788363e-17
	p2 := 2 * math.E * (z + inverseE + rest)
	switch {
	case math.IsNaN(z) || z < -inverseE:
		return 0, false
	case math.IsInf(z, 1):
		return z, true
	case p2 < 1e-4: // the series alone is exact to double precision
		return nearBranch(math.Sqrt(max(p2, 0))), true
	}
	return halley(z, guessW0(z, p2)), true
}

// nearBranch is the series of W0 about its branch point in p = sqrt(2(e z + 1)).
func nearBranch(p float64) float64 {
	return -1 + p*(1+p*(-1./3+p*(11./72+p*(-43./540+p*(769./17280+p*(-221./8505+p*680863./43545600))))))
}

// guessW0 starts the iteration: the branch-point series, a rational fit near
// 0, or the first terms for large z.
func guessW0(z, p2 float64) float64 {
	switch {
	case z < -0.2:
		return nearBranch(math.Sqrt(p2))
	case z < 3:
		return z * (1 + 4./3*z) / (1 + z*(7./3+5./6*z)) // Padé of order [2/2]
	}
	l := math.Log(z)
	return l - math.Log(l)
}

// halley improves w until it stands still.
func halley(z, w float64) float64 {
	for range 20 { // three rounds are the rule
		e := math.Exp(w)
		f := w*e - z
		step := f / (e*(w+1) - (w+2)*f/(2*w+2))
		w -= step
		if math.Abs(step) <= 1e-15*math.Abs(w) {
			break
		}
	}
	return w
}
