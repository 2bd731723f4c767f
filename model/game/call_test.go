package game

import (
	"strings"
	"testing"
)

func TestParseCall(t *testing.T) {
	for s, want := range map[string]Call{
		"4-7-2": {4, 7, 2}, "0-0-2": {0, 0, 2}, "10-11-1": {10, 11, 1}, "4-7": {4, 7, 0}, "0-0": {}, "999-0": {999, 0, 0},
	} {
		got, err := ParseCall(s)
		if err != nil || got != want {
			t.Errorf("ParseCall(%q) = %v, %v, want %v", s, got, err, want)
		}
		if got.String() != s {
			t.Errorf("ParseCall(%q).String() = %q", s, got)
		}
	}
}

func TestParseCallRefuses(t *testing.T) {
	for s, want := range map[string]string{
		"":                       `call "": want two scores and in side-out scoring the server, like 4-7-2`,
		"4":                      `call "4": want two scores and in side-out scoring the server, like 4-7-2`,
		"4-7-2-1":                `call "4-7-2-1": want two scores and in side-out scoring the server, like 4-7-2`,
		"0-0-3":                  `call "0-0-3": the server is 1 or 2, not 3`,
		"0-0-0":                  `call "0-0-0": the server is 1 or 2, not 0`,
		"-1-0-2":                 `call "-1-0-2": want two scores and in side-out scoring the server, like 4-7-2`,
		"-1-2":                   `call "-1-2": "" is not a score: want digits, like 4-7-2`,
		"4-x-2":                  `call "4-x-2": "x" is not a score: want digits, like 4-7-2`,
		"4-+7-2":                 `call "4-+7-2": "+7" is not a score: want digits, like 4-7-2`,
		"1000-0":                 `call "1000-0": no score is higher than 999`,
		"99999999999999999999-0": `call "99999999999999999999-0": no score is higher than 999`,
	} {
		if got, err := ParseCall(s); err == nil || err.Error() != want || got != (Call{}) {
			t.Errorf("ParseCall(%q) = %v, %v\nwant error %s", s, got, err, want)
		}
	}
}

// USA Pickleball Official Rulebook 2026, 6.B.2 and 14.A.
func TestStartCall(t *testing.T) {
	for f, want := range map[Format]string{SideOut: "0-0-2", RallyParity: "0-0", RallyOwnServe: "0-0", RallyFixed: "0-0"} {
		start, err := Settings{Format: f}.Start()
		if got := StartCall(f); err != nil || got.String() != want || start.Call() != got {
			t.Errorf("StartCall(%v) = %v, a game starts at %v, %v, want %s", f, got, start.Call(), err, want)
		}
	}
}

func TestFormats(t *testing.T) {
	for _, f := range Formats {
		got, err := ParseFormat(f.String())
		if err != nil || got != f {
			t.Errorf("ParseFormat(%q) = %v, %v, want %v", f, got, err, f)
		}
		swaps := replay(t, Settings{Format: f}, "nnfnffn")
		moved := false
		for _, s := range swaps.States() {
			moved = moved || s.SideOf(Near1) != swaps.States()[0].SideOf(Near1)
		}
		if f.SwapsSides() != moved {
			t.Errorf("%v.SwapsSides() = %v, but near1 changes sides: %v", f, f.SwapsSides(), moved)
		}
	}
	if _, err := ParseFormat("rally"); err == nil || !strings.Contains(err.Error(), "rally-parity") {
		t.Errorf("ParseFormat(rally) error %v, want one that lists the formats", err)
	}
}

func FuzzParseCall(f *testing.F) {
	for _, s := range []string{"4-7-2", "0-0-2", "4-7", "0-0-3", "12-3-1", "-1-0-2", "", "1e3-2", "٣-4-1", "4-7-2\n"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		c, err := ParseCall(s)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") {
				t.Errorf("ParseCall(%q) error of several lines: %q", s, err)
			}
			return
		}
		if again, err := ParseCall(c.String()); err != nil || again != c {
			t.Errorf("ParseCall(%q) = %v, read again %v, %v", s, c, again, err)
		}
		for _, format := range Formats {
			states, err := Query{Format: format, Call: c}.Who()
			if (err == nil) != (len(states) > 0) {
				t.Errorf("Who(%v, %v) = %d states, %v, want states or an error", format, c, len(states), err)
			}
		}
	})
}
