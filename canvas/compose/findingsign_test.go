package compose

import (
	"strings"
	"testing"

	"homeside/canvas/look"
	"homeside/canvas/record"
	"homeside/internal/wcag"
	"homeside/model/finding"
)

// signsDrawn is the sign of every severity as it is drawn: outline with colours,
// then the number.
func signsDrawn(lk *look.Look) (outline [len(finding.Severities)]string) {
	for _, s := range finding.Severities {
		drawn := record.Scene(FindingSign(lk, s, "3", 40, 40, 2))
		outline[s] = strings.SplitN(drawn, " M ", 2)[1]
	}
	return outline
}

// The signs of different severities have different outlines, whatever the
// colours, and carry the number.
func TestSignsDifferByOutline(t *testing.T) {
	for _, lk := range []*look.Look{nil, &look.Night} {
		drawn := signsDrawn(lk)
		for i, a := range drawn {
			if !strings.Contains(a, `"3"`) {
				t.Errorf("the sign of severity %d has no number: %s", i, a)
			}
			for j, b := range drawn[:i] {
				if a == b {
					t.Errorf("severities %d and %d have one outline: %s", i, j, a)
				}
			}
		}
	}
}

// On a greyscale print the fills differ too.
func TestSignsDifferInGrey(t *testing.T) {
	lk := look.Daylight
	signs := []look.SignLook{lk.Fault, lk.Late, lk.Caution, lk.Advice}
	for i, a := range signs {
		for _, b := range signs[:i] {
			if got := wcag.Contrast(a.Fill, b.Fill); got < 1.25 {
				t.Errorf("two signs differ by %.2f:1 in grey, want 1.25:1", got)
			}
		}
	}
}
