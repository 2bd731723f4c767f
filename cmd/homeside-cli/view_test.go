package main

import "testing"

// Flags of the view that do not go together, or mean nothing, are refused.
func TestViewRefuses(t *testing.T) {
	lesson := lessonFile(t, drill())
	for line, want := range map[string]string{
		"--end left":               `--end "left": want near or far`,
		"--behind near1":           "--behind is for --view behind",
		"--view behind --behind x": `--behind "x": want receiver, servers, near1, near2, far1 or far2`,
		"--view behind --end far":  "--end: --view behind has its end from whom it is behind of",
		"--view half":              `--view "half": want one of upright, lying, half-near, half-far, behind`,
	} {
		refused(t, "export "+lesson+" --out x.png "+line, want)
	}
}
