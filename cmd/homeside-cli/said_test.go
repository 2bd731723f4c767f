package main

import (
	"strings"
	"testing"
)

// Every command refuses a language and measures that there are not.
func TestUnknownLanguage(t *testing.T) {
	file := lessonFile(t, drill())
	for _, args := range [][]string{
		{"check", file, "--lang", "xx"}, {"--lang", "", "check", file}, {"info", file, "--lang=francais"}, {"check", file, "--measures", "yd"},
	} {
		out, errs, code := cli(args...)
		if line := checkRefused(t, args, out, errs, code); !strings.Contains(line, "want") {
			t.Errorf("homeside-cli %v: %q does not say what there is", args, line)
		}
	}
}

// A run speaks what it is asked for, whatever the run before spoke.
func TestMeasuresOfARun(t *testing.T) {
	file := lessonFile(t, drill())
	for _, c := range []struct {
		measures, want, not string
	}{{"m", " cm ", " ft "}, {"ft", " ft ", " cm "}} {
		out, errs, code := cli("info", file, "--measures", c.measures)
		if code != exitOK || !strings.Contains(out, c.want) || strings.Contains(out, c.not) {
			t.Errorf("info --measures %s: exit %d, %q, %q, want lengths such as 3%q", c.measures, code, out, errs, c.want)
		}
	}
}
