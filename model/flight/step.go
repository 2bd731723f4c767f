package flight

import "math"

// Coefficients of Dormand & Prince 1980, order 5(4), seven stages, the last of
// which is the next step's first.
const (
	a21                             = 1.0 / 5
	a31, a32                        = 3.0 / 40, 9.0 / 40
	a41, a42, a43                   = 44.0 / 45, -56.0 / 15, 32.0 / 9
	a51, a52, a53, a54              = 19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729
	a61, a62, a63, a64, a65         = 9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656
	b1, b3, b4, b5, b6              = 35.0 / 384, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84
	e1, e3, e4, e5, e6, e7          = b1 - 5179.0/57600, b3 - 7571.0/16695, b4 - 393.0/640, b5 + 92097.0/339200, b6 - 187.0/2100, -1.0 / 40
	gravity                 float64 = 9.80665 // units.Gravity, without its conversions
)

// step goes h seconds on from k. The second value is the step's estimated error
// (m and m/s, the larger of place and velocity), squared.
func (f *forces) step(k *knot, h float64) (knot, float64) {
	v1, k1 := k.v, k.a
	v2 := combine1(v1, h, a21, k1)
	k2 := f.acceleration(v2)
	v3 := combine2(v1, h, a31, k1, a32, k2)
	k3 := f.acceleration(v3)
	v4 := combine3(v1, h, a41, k1, a42, k2, a43, k3)
	k4 := f.acceleration(v4)
	v5 := combine4(v1, h, a51, k1, a52, k2, a53, k3, a54, k4)
	k5 := f.acceleration(v5)
	v6 := combine4(combine1(v1, h, a65, k5), h, a61, k1, a62, k2, a63, k3, a64, k4)
	k6 := f.acceleration(v6)
	v7 := combine4(combine1(v1, h, b6, k6), h, b1, k1, b3, k3, b4, k4, b5, k5)
	k7 := f.acceleration(v7)
	p7 := combine4(combine1(k.p, h, b6, v6), h, b1, v1, b3, v3, b4, v4, b5, v5)
	ev := combine4(combine1(k7.Times(h*e7), h, e6, k6), h, e1, k1, e3, k3, e4, k4, e5, k5)
	ep := combine4(combine1(v7.Times(h*e7), h, e6, v6), h, e1, v1, e3, v3, e4, v4, e5, v5)
	return knot{k.t + h, p7, v7, k7}, max(ev.squared(), ep.squared())
}

// combineN is y + h (c1 k1 + ... + cN kN).
func combine1(y Vec, h, c1 float64, k1 Vec) Vec {
	return Vec{y.X + h*c1*k1.X, y.Y + h*c1*k1.Y, y.Z + h*c1*k1.Z}
}

func combine2(y Vec, h, c1 float64, k1 Vec, c2 float64, k2 Vec) Vec {
	return Vec{y.X + h*(c1*k1.X+c2*k2.X), y.Y + h*(c1*k1.Y+c2*k2.Y), y.Z + h*(c1*k1.Z+c2*k2.Z)}
}

func combine3(y Vec, h, c1 float64, k1 Vec, c2 float64, k2 Vec, c3 float64, k3 Vec) Vec {
	return Vec{
		y.X + h*(c1*k1.X+c2*k2.X+c3*k3.X),
		y.Y + h*(c1*k1.Y+c2*k2.Y+c3*k3.Y),
		y.Z + h*(c1*k1.Z+c2*k2.Z+c3*k3.Z),
	}
}

func combine4(y Vec, h, c1 float64, k1 Vec, c2 float64, k2 Vec, c3 float64, k3 Vec, c4 float64, k4 Vec) Vec {
	return Vec{
		y.X + h*(c1*k1.X+c2*k2.X+c3*k3.X+c4*k4.X),
		y.Y + h*(c1*k1.Y+c2*k2.Y+c3*k3.Y+c4*k4.Y),
		y.Z + h*(c1*k1.Z+c2*k2.Z+c3*k3.Z+c4*k4.Z),
	}
}

// Steps: the longest keeps events apart (no ball rises and falls unseen within
// it), the shortest ends the search for a tolerance that rounding cannot give.
const (
	longestStep  = 0.5  // s
	shortestStep = 1e-6 // s
)

// A step's length changes by whole powers of 2^(1/10): the error goes with its
// fifth power, so that is a binary digit of the squared error.
const (
	mostShrink = 22 // about 1/5 with the safety factor
	mostGrowth = 25 // about 5
	safety     = 0.9
)

var resizes = func() (out [mostShrink + mostGrowth + 1]float64) {
	for i := range out {
		out[i] = safety * math.Exp2(float64(i-mostShrink)/10)
	}
	return out
}()

// resize is the factor from a step whose error is the square root of e2 to the
// next one's length.
func resize(e2, tolerance float64) float64 {
	digits := math.Ilogb(tolerance * tolerance / e2)
	return resizes[min(max(digits, -mostShrink), mostGrowth)+mostShrink]
}

// advance takes one accepted step of at most *h from k and leaves in *h the next one's length.
func (f *forces) advance(k *knot, h *float64, tolerance float64) knot {
	for {
		taken := *h
		next, e2 := f.step(k, taken)
		*h = min(longestStep, taken*resize(e2, tolerance))
		if e2 <= tolerance*tolerance || taken <= shortestStep {
			return next
		}
	}
}
