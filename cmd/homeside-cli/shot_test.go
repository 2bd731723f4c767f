package main

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/flight"
)

const acrossCourt = "shot --from-ft 5,-24 --height-m .6 --aim-ft -4,19 "

func solutionsOf(t *testing.T, line string) []map[string]any {
	t.Helper()
	list, ok := jsonOutput(t, line)["solutions"].([]any)
	if !ok {
		t.Fatalf("%s: no list of solutions", line)
	}
	var out []map[string]any
	for _, s := range list {
		out = append(out, s.(map[string]any))
	}
	return out
}

// Each figure comes back, the landing is the aim, and the launch flown by the
// flight command takes as long.
func TestShotFigures(t *testing.T) {
	// without sidespin the way is straight, so the net is passed at this x
	top := float64(court.NetHeight(5 - 9*24.0/43).Metres())
	for _, c := range []struct {
		flag, key string
		want      float64
		shots     int
	}{
		{"--apex-m 2.7432", "apex_z_m", 2.7432, 1},
		{"--speed-mps 17", "speed_mps", 17, 2},
		{"--time-s 1.4", "t_s", 1.4, 1},
		{"--net-clear-m .5", "net_z_m", top + .5, 1},
	} {
		line := acrossCourt + c.flag + " --spin-rpm -300"
		shots := solutionsOf(t, line)
		if len(shots) != c.shots {
			t.Fatalf("%s: %d solutions, want %d", line, len(shots), c.shots)
		}
		for _, s := range shots {
			checkKeys(t, line, s, "apex_z_m", "land_x_ft", "land_y_ft", "net_z_m", "side_deg", "speed_mps", "t_s", "up_deg")
			if got := number(t, line, s, c.key); math.Abs(got-c.want) > 2e-6 {
				t.Errorf("%s: %s = %v, want %v", line, c.key, got, c.want)
			}
			x, y := number(t, line, s, "land_x_ft"), number(t, line, s, "land_y_ft")
			if math.Hypot(x+4, y-19) > 1e-5 {
				t.Errorf("%s: lands at %v,%v, want -4,19", line, x, y)
			}
			again := fmt.Sprintf("flight --speed-mps %v --up-deg %v --height-m .6 --spin-rpm -300 --net-m 0", s["speed_mps"], s["up_deg"])
			if got := number(t, again, jsonOutput(t, again), "t_s"); math.Abs(got-number(t, line, s, "t_s")) > 1e-6 {
				t.Errorf("%s: %v s, but %s: %v s", line, s["t_s"], again, got)
			}
			if side := number(t, line, s, "side_deg"); math.Abs(side) > 1e-5 {
				t.Errorf("%s: side_deg = %v, want 0 without sidespin", line, side)
			}
		}
	}
}

func TestShotHeightOverTheNet(t *testing.T) {
	line := "shot --from-ft 0,22 --height-m .6 --aim-ft 0,-10 --net-clear-m .5"
	for _, s := range solutionsOf(t, line) {
		if got, want := number(t, line, s, "net_z_m"), .8636+.5; math.Abs(got-want) > 2e-6 {
			t.Errorf("%s: net_z_m = %v, want %v over 34 in", line, got, want)
		}
	}
}

// A ball that curves to the left is struck to the right of its aim.
func TestShotSidespin(t *testing.T) {
	line := acrossCourt + "--apex-m 2.5 --side-rpm 800"
	for _, s := range solutionsOf(t, line) {
		if side := number(t, line, s, "side_deg"); side >= 0 {
			t.Errorf("%s: side_deg = %v, want it negative", line, side)
		}
	}
}

func TestShotReasons(t *testing.T) {
	for flag, want := range map[string]flight.Reason{
		"--speed-mps 8":       flight.TooSlow,
		"--speed-mps 40":      flight.TooFast,
		"--time-s 0.2":        flight.TooFast,
		"--apex-m 0.8":        flight.IntoNet,
		"--apex-m 0.2":        flight.ApexTooLow,
		"--speed-mps 0":       flight.NotPositive,
		"--speed-mps NaN":     flight.NotFinite,
		"--apex-m 1e12":       flight.OutOfRange,
		"--net-clear-m -0.05": flight.IntoNet,
	} {
		got := jsonOutput(t, acrossCourt+flag)
		if list, ok := got["solutions"].([]any); !ok || len(list) > 0 || got["reason"] != want.String() {
			t.Errorf("%s: %v, want no solution: %v", flag, got, want)
		}
	}
	for line, want := range map[string]flight.Reason{
		"shot --from-ft 5,-24 --height-m .6 --aim-ft 5,-30 --apex-m 3":      flight.AimBehind,
		"shot --from-ft 5,-24 --height-m .6 --aim-ft 5,-24 --apex-m 3":      flight.AimAtContact,
		"shot --from-ft 5,-24 --height-m .6 --aim-ft 0,-9 --net-clear-m .2": flight.NoNetBetween,
	} {
		if got := jsonOutput(t, line); got["reason"] != want.String() {
			t.Errorf("%s: %v, want %v", line, got, want)
		}
	}
}

func TestShotText(t *testing.T) {
	if got := runOutput(t, acrossCourt+"--speed-mps 17"); strings.Count(got, "\n") != 2 || !strings.HasPrefix(got, "17.0 m/s (38 mph), ") {
		t.Errorf("two solutions in words: %q", got)
	}
	if got, want := runOutput(t, acrossCourt+"--speed-mps 8"), "no such shot: too slow to reach the aim\n"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestShotRefuses(t *testing.T) {
	for line, want := range map[string]string{
		"shot --from-ft 5,-24 --height-m .6 --aim-ft -4,19":                            "apex-m",
		"shot --from-ft 5,-24 --height-m .6 --aim-ft -4,19 --apex-m 2 --time-s 1":      "time-s",
		"shot --from-ft 5 --height-m .6 --aim-ft -4,19 --apex-m 2":                     "from-ft",
		"shot --from-ft 5,-24 --height-m .6 --aim-ft -4,north --apex-m 2":              "aim-ft",
		"shot --height-m .6 --aim-ft -4,19 --apex-m 2":                                 "from-ft",
		"shot --from-ft 5,-24 --height-m tall --aim-ft -4,19 --apex-m 2":               "height-m",
		"shot --from-ft 5,-24 --height-m .6 --aim-ft -4,19 --apex-m 2 and another one": "and",
	} {
		refused(t, line, want)
	}
}

// The flags follow flight's kinds one for one.
func TestShotFiguresCoverTheKinds(t *testing.T) {
	if len(shotFigures) != len(flight.Kinds) {
		t.Fatalf("%d flags for %d kinds", len(shotFigures), len(flight.Kinds))
	}
	for _, k := range flight.Kinds {
		if shotFigures[k].name == "" {
			t.Errorf("no flag for %v", k)
		}
	}
}
