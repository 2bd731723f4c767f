package words

import (
	"homeside/model/drill"
	"homeside/model/lesson"
)

// SignName is what a hand shows, as partners say it.
func SignName(s drill.Sign) string {
	switch s {
	case drill.Fist:
		return T("Closed fist")
	case drill.OpenHand:
		return T("Open hand")
	case drill.TwoFingers:
		return T("Two fingers")
	default:
		return T("Hidden sign")
	}
}

// MeaningName is what a signal asks for.
func MeaningName(m lesson.Meaning) string {
	switch m {
	case lesson.Switch:
		return T("Switch")
	case lesson.Fake:
		return T("Fake")
	default:
		return T("Stay")
	}
}
