package flight

import "math"

// falsePosition finds where f is 0 between a and b, at which its values fa and fb
// have different signs: false position with the Illinois rule, and halving every
// few steps in case that is slow. It stops at |f| < enough and gives the last
// place at which f was asked, with its value there.
func falsePosition(f func(float64) float64, a, b, fa, fb, enough float64) (x, fx float64) {
	for i := 0; i < 80 && math.Abs(b-a) > 1e-15; i++ {
		x = b - fb*(b-a)/(fb-fa)
		if !(x > min(a, b) && x < max(a, b)) || i%8 == 7 {
			x = (a + b) / 2
		}
		fx = f(x)
		if math.Abs(fx) < enough {
			return x, fx
		}
		if fx > 0 == (fb > 0) {
			fa /= 2
		} else {
			a, fa = b, fb
		}
		b, fb = x, fx
	}
	return b, fb
}
