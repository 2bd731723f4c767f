package words

import (
	"testing"

	"homeside/model/finding"
)

func TestChecksTitle(t *testing.T) {
	found := func(severities ...finding.Severity) (all []finding.Finding) {
		for _, s := range severities {
			all = append(all, finding.Finding{Severity: s})
		}
		return all
	}
	for _, c := range []struct {
		all  []finding.Finding
		want string
	}{
		{nil, "Checks: nothing found"},
		{found(finding.Fault, finding.Caution, finding.Caution), "Checks: 1 fault, 2 cautions"},
		{found(finding.Fault, finding.Fault, finding.Late, finding.Advice), "Checks: 2 faults, 1 late arrival"},
		{found(finding.Advice), "Checks: 1 word of advice"},
	} {
		if got := ChecksTitle(c.all); got != c.want {
			t.Errorf("ChecksTitle of %d findings = %q, want %q", len(c.all), got, c.want)
		}
	}
}
