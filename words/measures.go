package words

import "sync/atomic"

// Measures is how lengths and speeds are said.
type Measures uint8

// The measures.
const (
	FeetAndInches Measures = iota
	Metric
)

// measured is how all lengths are said; like the language it is one for the
// whole process, but may change while it runs: what is said after is in it.
var measured atomic.Uint32

// MeasureBy chooses how lengths and speeds are said from here on. What has been
// said or drawn before has to be asked for again.
func MeasureBy(m Measures) { measured.Store(uint32(m)) }

// Measured is how lengths are said, feet and inches unless MeasureBy said otherwise.
func Measured() Measures { return Measures(measured.Load()) }

// AllMeasures are all measures there are.
func AllMeasures() []Measures { return []Measures{FeetAndInches, Metric} }

// Tag is a short name that does not change with the language: "ft" or "m".
func (m Measures) Tag() string { return [...]string{"ft", "m"}[m%2] }

// MeasuresOf are the measures of a tag; false if there are none of that name.
func MeasuresOf(tag string) (Measures, bool) {
	for _, m := range AllMeasures() {
		if m.Tag() == tag {
			return m, true
		}
	}
	return FeetAndInches, false
}
