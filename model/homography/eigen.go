package homography

import "math"

// sweeps of Jacobi's method are always enough for nine columns: it converges
// quadratically, in practice in six (Golub and Van Loan, Matrix Computations,
// 8.5).
const sweeps = 30

// eigen are the eigenvalues of a symmetric matrix and the vectors as columns, by
// cyclic Jacobi rotations.
func eigen(a [9][9]float64) (values [9]float64, vectors [9][9]float64) {
	for i := range vectors {
		vectors[i][i] = 1
	}
	for range sweeps {
		turned := false
		for p := range 9 {
			for q := p + 1; q < 9; q++ {
				turned = rotate(&a, &vectors, p, q) || turned
			}
		}
		if !turned {
			break
		}
	}
	for i := range values {
		values[i] = a[i][i]
	}
	return values, vectors
}

// rotate makes a[p][q] zero; false if it is already nothing beside the diagonal.
func rotate(a, v *[9][9]float64, p, q int) bool {
	const nothing = 1e-18
	if math.Abs(a[p][q]) <= nothing*(math.Abs(a[p][p])+math.Abs(a[q][q])) {
		return false
	}
	theta := (a[q][q] - a[p][p]) / (2 * a[p][q])
	t := 1 / (math.Abs(theta) + math.Sqrt(theta*theta+1))
	if theta < 0 {
		t = -t
	}
	c := 1 / math.Sqrt(t*t+1)
	s := t * c
	for k := range 9 {
		a[k][p], a[k][q] = c*a[k][p]-s*a[k][q], s*a[k][p]+c*a[k][q]
	}
	for k := range 9 {
		a[p][k], a[q][k] = c*a[p][k]-s*a[q][k], s*a[p][k]+c*a[q][k]
		v[k][p], v[k][q] = c*v[k][p]-s*v[k][q], s*v[k][p]+c*v[k][q]
	}
	return true
}
