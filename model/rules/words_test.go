package rules_test

import (
	"strings"
	"testing"

	"homeside/model/rally"
	"homeside/model/rules"
	"homeside/words"
)

// Whatever is found says a whole sentence.
func TestCasesHaveWords(t *testing.T) {
	for _, l := range rules.CaseLessons() {
		r, err := rally.Solve(l, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range rules.Check(r, l) {
			if got := words.Finding(f, l); strings.ContainsAny(got, "{}") || strings.Contains(got, "  ") || !strings.HasSuffix(got, ".") {
				t.Errorf("Finding(%s) = %q, want a whole sentence", f.ID, got)
			}
		}
	}
}
