package main

import (
	"bytes"
	"context"
	"encoding/json"
	"math"
	"strings"
	"testing"
)

// runOutput calls the program with a line of arguments.
func runOutput(t *testing.T, line string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := run(context.Background(), strings.Fields(line), &out, &errs); code != exitOK {
		t.Fatalf("%s: exit %d, %s, want 0", line, code, errs.String())
	}
	return out.String()
}

// 10 and 15 ft at 6 m/s and 1 s, and braking at 5 m/s2 (computed once with an
// independent program); the published sprint of 8.5911 m/s and 0.8113 s over 20 and
// 40 m (README of an open R package for short sprints).
func TestRunJSON(t *testing.T) {
	for _, c := range []struct {
		line      string
		want, off float64
	}{
		{"run --distance-ft 10 --vmax-mps 6 --tau-s 1 --json", 1.209719, 5e-7},
		{"run --distance-ft 15 --vmax-mps 6 --tau-s 1 --json", 1.549685, 5e-7},
		{"run --distance-ft 10 --vmax-mps 6 --tau-s 1 --stop --brake-mps2 5 --json", 1.595428, 5e-7},
		{"run --distance-ft 15 --vmax-mps 6 --tau-s 1 --stop --json", 1.992156, 5e-7},
		{"run --distance-ft 10 --vmax-mps 6 --tau-s 1 --reaction-s 0.231 --json", 1.440719, 5e-7},
		{"run --distance-ft 65.6167979002625 --vmax-mps 8.5911 --tau-s .8113 --json", 3.122, 5e-4},
		{"run --distance-ft 131.233595800525 --vmax-mps 8.5911 --tau-s .8113 --json", 5.466, 5e-4},
		{"run --distance-ft 0 --vmax-mps 6 --tau-s 1 --stop --json", 0, 0},
	} {
		var got map[string]float64
		if err := json.Unmarshal([]byte(runOutput(t, c.line)), &got); err != nil || len(got) != 2 {
			t.Fatalf("%s: %v, %v, want t_s and peak_mps", c.line, got, err)
		}
		if math.Abs(got["t_s"]-c.want) > c.off {
			t.Errorf("%s: t_s = %v, want %v", c.line, got["t_s"], c.want)
		}
	}
}

// Run through, the peak is the speed at the end: v = V (1 - exp(-t/tau)).
func TestRunPeak(t *testing.T) {
	var got runAnswer
	if err := json.Unmarshal([]byte(runOutput(t, "run --distance-ft 10 --vmax-mps 6 --tau-s 1 --json")), &got); err != nil {
		t.Fatal(err)
	}
	if want := 6 * (1 - math.Exp(-float64(got.Time))); math.Abs(float64(got.Peak)-want) > 1e-12 {
		t.Errorf("run 10 ft at 6/1: peak_mps = %v, want %v", got.Peak, want)
	}
}

// Stopped, 15 ft peak where 6 (1 - exp(-s)) meets the braking that lasts v/5 of the 1.992156 s.
func TestRunText(t *testing.T) {
	for line, want := range map[string]string{
		"run --distance-ft 15 --vmax-mps 6 --tau-s 1":        "run through, 15.0 ft: 1.55 s, at most 4.7 m/s (10.6 mph). An estimate, not an instruction to sprint.\n",
		"run --distance-ft 15 --vmax-mps 6 --tau-s 1 --stop": "run and stop, 15.0 ft: 1.99 s, at most 4.1 m/s (9.2 mph). An estimate, not an instruction to sprint.\n",
	} {
		if got := runOutput(t, line); got != want {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

func TestRunRefuses(t *testing.T) {
	for line, want := range map[string]string{
		"run --vmax-mps 6 --tau-s 1":                                             "distance-ft",
		"run --distance-ft -1 --vmax-mps 6 --tau-s 1":                            "distance",
		"run --distance-ft NaN --vmax-mps 6 --tau-s 1":                           "distance",
		"run --distance-ft 10 --vmax-mps 0 --tau-s 1":                            "top speed",
		"run --distance-ft 10 --vmax-mps 6 --tau-s -1":                           "time constant",
		"run --distance-ft 10 --vmax-mps 6 --tau-s 1 --stop --brake-mps2 0":      "braking",
		"run --distance-ft 10 --vmax-mps 6 --tau-s 1 --reaction-s -0.5":          "reaction",
		"run --distance-ft ten --vmax-mps 6 --tau-s 1":                           "distance-ft",
		"run --distance-ft 10 --vmax-mps 6 --tau-s 1 and then some more of that": "and",
	} {
		var out, errs bytes.Buffer
		code := run(context.Background(), strings.Fields(line), &out, &errs)
		if code != exitBad || out.Len() > 0 || strings.Count(errs.String(), "\n") != 1 || !strings.Contains(errs.String(), want) {
			t.Errorf("%s: exit %d, %q, %q, want 2 and one line that names %s", line, code, out.String(), errs.String(), want)
		}
	}
}
