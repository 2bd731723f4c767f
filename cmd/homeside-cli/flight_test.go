package main

import (
	"bytes"
	"context"
	"encoding/json"
	"math"
	"strings"
	"testing"
)

// number walks an answer's keys, "after.vx_mps".
func number(t *testing.T, line string, answer map[string]any, key string) float64 {
	t.Helper()
	var at any = answer
	for _, part := range strings.Split(key, ".") {
		m, ok := at.(map[string]any)
		if !ok {
			t.Fatalf("%s: no %s in %v", line, key, answer)
		}
		at = m[part]
	}
	v, ok := at.(float64)
	if !ok {
		t.Fatalf("%s: %s = %v, want a number", line, key, at)
	}
	return v
}

func jsonOutput(t *testing.T, line string) map[string]any {
	t.Helper()
	var got map[string]any
	if err := json.Unmarshal([]byte(runOutput(t, line+" --json")), &got); err != nil {
		t.Fatalf("%s: %v", line, err)
	}
	return got
}

// refused checks that a line exits 2 with one line on standard error that says want.
func refused(t *testing.T, line, want string) {
	t.Helper()
	var out, errs bytes.Buffer
	code := run(context.Background(), strings.Fields(line), &out, &errs)
	if code != exitBad || out.Len() > 0 || strings.Count(errs.String(), "\n") != 1 || !strings.Contains(errs.String(), want) {
		t.Errorf("%s: exit %d, %q, %q, want 2 and one line that says %s", line, code, out.String(), errs.String(), want)
	}
}

// Vectors computed once with an independent program (fourth order, steps of 0.1 ms).
func TestFlightVectors(t *testing.T) {
	const drive = "flight --speed-mps 18 --up-deg 10 --height-m .8"
	for _, c := range []struct {
		line, key string
		want      float64
	}{
		{drive, "t_s", .807531}, {drive, "x_m", 11.531120}, {drive, "speed_mps", 12.474441}, {drive, "net_z_m", 1.151750}, {drive, "y_m", 0},
		{drive, "after.vx_mps", 8.318448}, {drive, "after.vz_mps", 2.877186},
		{drive + " --cd .30", "x_m", 11.746262},
		{drive + " --cd .45", "x_m", 10.759735},
		{drive + " --spin-rpm 1200", "x_m", 10.524502},
		{drive + " --spin-rpm -1200", "x_m", 12.761995},
		{drive + " --side-rpm 1200", "y_m", .429008},
		{drive + " --wind-mps 3", "x_m", 12.345821},
		{drive + " --wind-mps -3", "x_m", 10.634904},
		{drive + " --altitude-m 1609.344", "x_m", 11.880646},
		{drive + " --air-density 1.225", "x_m", 11.531120},
		{"flight --speed-mps 13 --up-deg 45 --height-m .5", "t_s", 1.741155},
		{"flight --speed-mps 12 --up-deg 19 --height-m .7 --cd .30 --air-density 1.29", "x_m", 6.7056 + 2.139},
	} {
		off := 5.01e-7
		if strings.Contains(c.line, "1.29") {
			off = 1e-3 // given to the millimetre
		}
		if got := number(t, c.line, jsonOutput(t, c.line), c.key); math.Abs(got-c.want) > off {
			t.Errorf("%s: %s = %v, want %v", c.line, c.key, got, c.want)
		}
	}
}

func TestFlightFields(t *testing.T) {
	got := jsonOutput(t, "flight --speed-mps 18 --up-deg 10 --height-m .8")
	checkKeys(t, "flight", got, "after", "apex_z_m", "net_z_m", "outcome", "speed_mps", "t_s", "touches_net", "x_m", "y_m")
	checkKeys(t, "after", got["after"], "spin_rpm", "vx_mps", "vz_mps")
	if got["outcome"] != "landed" || got["touches_net"] != false {
		t.Errorf("18@10: %v, want it landed without touching", got)
	}
}

func TestFlightIntoTheNet(t *testing.T) {
	line := "flight --speed-mps 20 --up-deg 5 --height-m .7"
	got := jsonOutput(t, line)
	if got["outcome"] != "net" || got["after"] != nil || got["touches_net"] != true {
		t.Errorf("%s: %v, want the net and nothing after", line, got)
	}
	if x := number(t, line, got, "x_m"); math.Abs(x-6.7056) > 1e-9 {
		t.Errorf("%s: x_m = %v, want it at the net", line, x)
	}
	if z := number(t, line, got, "net_z_m"); z >= .8636 {
		t.Errorf("%s: net_z_m = %v, want it below 34 in", line, z)
	}
	line += " --net-m 30"
	if got := jsonOutput(t, line); got["outcome"] != "landed" || got["net_z_m"] != nil {
		t.Errorf("%s: %v, want it to land before a net so far", line, got)
	}
}

func TestFlightStruckDown(t *testing.T) {
	line := "flight --speed-mps 10 --up-deg -30 --height-m 1"
	got := jsonOutput(t, line)
	if number(t, line, got, "apex_z_m") != 1 || got["net_z_m"] != nil {
		t.Errorf("%s: %v, want the launch height as apex and no net height", line, got)
	}
	if got := runOutput(t, line); !strings.HasPrefix(got, "lands after 0.1") || strings.Count(got, "\n") != 1 {
		t.Errorf("%s: %q", line, got)
	}
	if got := runOutput(t, "flight --speed-mps 20 --up-deg 5 --height-m .7"); !strings.HasPrefix(got, "ends (net) after ") {
		t.Errorf("into the net: %q", got)
	}
	if got := jsonOutput(t, "flight --speed-mps 0 --up-deg 0 --height-m 1"); got["outcome"] != "landed" {
		t.Errorf("dropped: %v", got)
	}
}

func TestFlightRefuses(t *testing.T) {
	for line, want := range map[string]string{
		"flight --up-deg 10 --height-m .8":                                                   "speed-mps",
		"flight --speed-mps -1 --up-deg 10 --height-m .8":                                    "speed-mps",
		"flight --speed-mps 1e9 --up-deg 10 --height-m .8":                                   "speed",
		"flight --speed-mps NaN --up-deg 10 --height-m .8":                                   "not a number",
		"flight --speed-mps 18 --up-deg inf --height-m .8":                                   "not a number",
		"flight --speed-mps 18 --up-deg 10 --height-m 0":                                     "below the court",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 --cd -1":                            "drag",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 --cd NaN":                           "drag",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 --air-density -1":                   "density",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 --air-density 1.2 --altitude-m 100": "altitude-m",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 --wind-mps 1e6":                     "wind",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 --spin-rpm 1e12":                    "spin",
		"flight --speed-mps fast --up-deg 10 --height-m .8":                                  "speed-mps",
		"flight --speed-mps 18 --up-deg 10 --height-m .8 more":                               "more",
	} {
		refused(t, line, want)
	}
}
