package signal

import (
	"math"

	"homeside/model/lesson"
)

// Interval is a range of chances within [0, 1].
type Interval struct{ Low, High float64 }

// Contains says whether a chance lies in the interval.
func (i Interval) Contains(p float64) bool { return p >= i.Low && p <= i.High }

// z is the two-sided 95 % point of the normal distribution.
const z = 1.959963984540054

// IntervalOf is the 95 % score interval of a count (Wilson 1927, J. Am. Stat.
// Assoc. 22, 209): everything where nothing was counted.
func IntervalOf(c lesson.Count) Interval {
	if c.Rallies <= 0 {
		return Interval{0, 1}
	}
	n := float64(c.Rallies)
	p := float64(c.Won) / n
	centre, half := p+z*z/(2*n), z*math.Sqrt(p*(1-p)/n+z*z/(4*n*n))
	whole := 1 + z*z/n
	return Interval{math.Max(0, (centre-half)/whole), math.Min(1, (centre+half)/whole)}
}
