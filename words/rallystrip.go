package words

import (
	"strconv"

	"homeside/model/lesson"
	"homeside/model/units"
)

// Tick is a figure on a ruler of seconds: "0 s", "-1 s", "0.5 s".
func Tick(t units.Seconds) string {
	s := strconv.FormatFloat(float64(t), 'f', 2, 64)
	for s[len(s)-1] == '0' {
		s = s[:len(s)-1]
	}
	if s[len(s)-1] == '.' {
		s = s[:len(s)-1]
	}
	if s == "-0" {
		s = "0"
	}
	return s + " s"
}

// Meaning is what a signal says.
func Meaning(m lesson.Meaning) string {
	switch m {
	case lesson.Switch:
		return T("switch")
	case lesson.Fake:
		return T("fake")
	default:
		return T("stay")
	}
}
