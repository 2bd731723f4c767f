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

// Commands speak Spanish where they are asked to, and English after.
func TestCommandsInSpanish(t *testing.T) {
	file := lessonFile(t, drill())
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{"check", file}, "near2 saca"},
		{[]string{"info", file}, "pelota 11 in detrás de la línea de fondo"},
		{[]string{"score", "--winners", "nf"}, "near1 saca desde la derecha a far1"},
		{[]string{"who", "--call", "4-7-2", "--serving", "near"}, "saca desde la derecha"},
		{[]string{"run", "--distance-ft", "15", "--vmax-mps", "6", "--tau-s", "1"}, "Es una estimación"},
		{[]string{"plan", "--homes", "near1=left,near2=right"}, "gana el"},
		{[]string{"signal", "--matrix", "0.3,0.7,0.6,0.4"}, "Cambiar el 33.3 %"},
	} {
		out, errs, code := cli(append(c.args, "--lang", "es")...)
		if code == exitBad || !strings.Contains(out, c.want) {
			t.Errorf("%v --lang es: exit %d, %q, %q, want %q", c.args, code, out, errs, c.want)
		}
		if english, _, _ := cli(c.args...); english == out {
			t.Errorf("%v says the same in English: %q", c.args, out)
		}
	}
}
