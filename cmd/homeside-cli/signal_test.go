package main

import (
	"strings"
	"testing"
)

// 0.3 0.7 / 0.6 0.4 by hand: 0.3p + 0.6(1-p) = 0.7p + 0.4(1-p) at p = 1/3, the
// value 0.5; a saddle point is no mix: always stay.
func TestSignalJSON(t *testing.T) {
	for line, want := range map[string]string{
		"signal --matrix 0.3,0.7,0.6,0.4 --length 0 --json":  `{"switch":0.3333333333333333,"value":0.5,"sequence":""}`,
		"signal --matrix 0,0.1,0.25,0.5 --length 6 --json":   `{"switch":0,"value":0.25,"sequence":"cccccc"}`,
		"signal --matrix 0.6,0.5,0.4,0.45 --length 4 --json": `{"switch":1,"value":0.5,"sequence":"oooo"}`,
	} {
		if got := runOutput(t, line); got != want+"\n" {
			t.Errorf("%s: %s, want %s", line, got, want)
		}
	}
}

// The same seed prints the same signals, another one others, of any sign.
func TestSignalSeed(t *testing.T) {
	a := runOutput(t, "signal --matrix 1,0,0,1 --length 60 --seed -4 --json")
	if b := runOutput(t, "signal --matrix 1,0,0,1 --length 60 --seed -4 --json"); a != b {
		t.Errorf("seed -4: %s and %s", a, b)
	}
	if b := runOutput(t, "signal --matrix 1,0,0,1 --length 60 --seed 4 --json"); a == b {
		t.Errorf("seeds -4 and 4 both: %s", a)
	}
}

func TestSignalText(t *testing.T) {
	got := runOutput(t, "signal --matrix 0.3,0.7,0.6,0.4 --length 8")
	for _, want := range []string{
		"Switch 33.3 % of the time, in no order: you win 50.0 % of the rallies wherever they aim. Always switching makes sure of 30.0 %, always staying of 40.0 %.\n",
		"Mostly switch if the chance when you switch and they aim left rises above 50.0 %.\n",
		"o is the open hand, switch; c the closed one, stay:\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("signal says %q, want %q in it", got, want)
		}
	}
}

func TestSignalRefuses(t *testing.T) {
	for line, want := range map[string]string{
		"signal":                                          `required flag(s) "matrix" not set`,
		"signal --matrix 0.3,0.7,0.6":                     `--matrix "0.3,0.7,0.6": want four chances, like 0.3,0.7,0.6,0.4`,
		"signal --matrix 0.3,0.7,0.6,much":                `--matrix: "much" is not a number`,
		"signal --matrix 0.3,0.7,0.6,1.1":                 `--matrix: chance out of range: stay while they aim right is 1.1, want 0 to 1`,
		"signal --matrix -0.3,0.7,0.6,1":                  `--matrix: chance out of range: switch while they aim left is -0.3, want 0 to 1`,
		"signal --matrix 0.3,NaN,0.6,1":                   `--matrix: chance out of range: switch while they aim right is NaN, want 0 to 1`,
		"signal --matrix 0.3,0.7,0.6,0.4 --length -1":     `--length: number of signals out of range: -1, want 0 to 10000`,
		"signal --matrix 0.3,0.7,0.6,0.4 --length 100000": `--length: number of signals out of range: 100000, want 0 to 10000`,
		"signal --matrix 0.3,0.7,0.6,0.4 more":            `unknown command "more" for "homeside-cli signal"`,
	} {
		out, errs, code := scoreRun(strings.Fields(line)...)
		if code != exitBad || out != "" || errs != "homeside-cli: "+want+"\n" {
			t.Errorf("homeside-cli %s: exit %d, %q, want exit %d\n got %swant %s", line, code, out, exitBad, errs, want)
		}
	}
}
