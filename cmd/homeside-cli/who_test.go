package main

import "testing"

// USA Pickleball Official Rulebook 2026, 5.B.2-5.B.5: a call leaves open which
// partner holds the serve; the receiver goes by the receiving team's own score.
func TestWhoJSON(t *testing.T) {
	for line, want := range map[string]string{
		"who --call 4-7-2 --serving near --json":                                    `[{"server":"near1","from":"right","receiver":"far2"},{"server":"near2","from":"left","receiver":"far1"}]`,
		"who --call 4-7-2 --serving near --server near2 --json":                     `[{"server":"near2","from":"left","receiver":"far1"}]`,
		"who --call 0-0-2 --serving near --to 15 --json":                            `[{"server":"near1","from":"right","receiver":"far1"},{"server":"near2","from":"left","receiver":"far2"}]`,
		"who --call 0-0-2 --serving near --began far --json":                        `[{"server":"near2","from":"left","receiver":"far2"}]`,
		"who --call 0-3-2 --serving near --server near1 --json":                     `[]`,
		"who --call 5-2-1 --serving far --starters near2,far2 --server far2 --json": `[{"server":"far2","from":"left","receiver":"near1"}]`,
		"who --call 3-2 --serving far --format rally-fixed --json":                  `[{"server":"far2","from":"left","receiver":"near2"}]`,
		"who --call 1-0 --serving far --format rally-parity --began near --json":    `[{"server":"far2","from":"right","receiver":"near1"}]`,
	} {
		checkScoreRun(t, line, want+"\n")
	}
}

func TestWhoText(t *testing.T) {
	checkScoreRun(t, "who --call 4-7-2 --serving near", `near1 serves from the right to far2
near2 serves from the left to far1
Ask the near team: which of you holds the serve?
`)
	checkScoreRun(t, "who --call 0-0-2 --serving near", `near1 serves from the right to far1
near2 serves from the left to far2
Ask: which team served first in this game?
Ask the near team: which of you holds the serve?
`)
	checkScoreRun(t, "who --call 0-3-2 --serving near --server near1", `near1 does not hold the serve at 0-3-2. From the right: right place, wrong server. From the left: wrong server.
near2 serves from the left to far1
`)
	checkScoreRun(t, "who --call 2-1 --serving near --format rally-fixed", `near1 serves from the right to far1
In rally-fixed nobody changes sides, so stacking has no purpose.
`)
}
