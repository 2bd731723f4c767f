package lessonfile

import (
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/roster"
)

// rosterExample is the roster printed in ROSTER.md.
func rosterExample(t testing.TB) string {
	t.Helper()
	data, err := os.ReadFile("ROSTER.md")
	if err != nil {
		t.Fatal(err)
	}
	_, rest, _ := strings.Cut(string(data), "```json\n")
	text, _, closed := strings.Cut(rest, "```")
	if !closed {
		t.Fatal("ROSTER.md has no example between ```json and ```")
	}
	return text
}

func rosterText(t testing.TB, r roster.Roster) string {
	t.Helper()
	var out strings.Builder
	if err := WriteRoster(&out, r); err != nil {
		t.Fatalf("WriteRoster(%+v) = %v", r, err)
	}
	return out.String()
}

// The example is a roster, and stands on the page just as the program writes it.
func TestRosterExample(t *testing.T) {
	text := rosterExample(t)
	r, err := ReadRoster(strings.NewReader(text))
	if err != nil {
		t.Fatalf("ReadRoster(the example of ROSTER.md) = %v", err)
	}
	preset, _ := movement.PresetByKey("50-plus")
	want := lesson.Player{Name: "Mara", Hand: lesson.LeftHanded, Serving: lesson.WantRight, Pace: &preset.Pace}
	if got := r.Pairs[0].Players[1]; !reflect.DeepEqual(got, want) {
		t.Errorf("the second of Harbour Lane is %+v, want %+v", got, want)
	}
	if got := rosterText(t, r); got != text {
		t.Errorf("WriteRoster of the example gives\n%s\nwant it as it stands on the page:\n%s", got, text)
	}
}

func TestRosterMistakes(t *testing.T) {
	for _, c := range []struct {
		old, new, want string
		kind           error
	}{
		{`homeside-roster`, `homeside-lesson`, `line 2: not a Homeside roster: "format" is "homeside-lesson", want "homeside-roster"`, ErrNotRoster},
		{`"version": 1`, `"version": 2`, `line 3: version: made by a newer version of Homeside (version 2; this one reads up to 1)`, ErrNewer},
		{`"hand": "left"`, `"hand": "both"`, `line 12: pairs[0].players.second.hand: hand "both": want right or left`, nil},
		{`"first": {"name": "Oskar"}`, `"third": {"name": "Oskar"}`, `line 15: pairs[1].players.third: no such name here: want one of first, second`, nil},
		{`"preset": "50-plus"`, `"preset": "hare"`, `line 12: pairs[0].players.second.pace.preset: "hare": want one of`, nil},
		{`"name": "Ivo"`, `"name": 7`, `line 11: pairs[0].players.first.name: found a number, want a text in " "`, nil},
		{`"initials": "IV"`, `"initials": "IVOR"`, `line 11: pairs[0].players.first.initials: 4 characters, want at most 3`, lesson.ErrInvalid},
		{`"preset": "50-plus"`, `"braking_mps2": NaN`, `line 12: pairs[0].players.second.pace.braking_mps2: want an ordinary number (NaN and Infinity are none)`, nil},
		{"  ]\n}\n", "", "line 16: pairs: the file ends too early: unexpected EOF", nil},
	} {
		text := rosterExample(t)
		if !strings.Contains(text, c.old) {
			t.Fatalf("the example has no %q", c.old)
		}
		_, err := ReadRoster(strings.NewReader(strings.Replace(text, c.old, c.new, 1)))
		if err == nil || !strings.HasPrefix(err.Error(), c.want) || c.kind != nil && !errors.Is(err, c.kind) {
			t.Errorf("with %s: ReadRoster = %v, want %s", c.new, err, c.want)
		}
	}
}

func TestRosterTooLarge(t *testing.T) {
	_, err := ReadRoster(strings.NewReader(strings.Repeat(" ", MaxRosterSize+1)))
	if !errors.Is(err, ErrRosterTooLarge) {
		t.Errorf("ReadRoster of %d bytes = %v, want %v", MaxRosterSize+1, err, ErrRosterTooLarge)
	}
	many := `{"format": "homeside-roster", "version": 1, "pairs": [` + strings.Repeat("{},", roster.MaxPairs) + `{}]}`
	if _, err := ReadRoster(strings.NewReader(many)); err == nil || !strings.Contains(err.Error(), "too many entries, want at most 1000") {
		t.Errorf("ReadRoster of %d pairs = %v, want that they are too many", roster.MaxPairs+1, err)
	}
}

func TestOpenRosterNamesTheFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "pairs.json")
	if _, err := OpenRoster(path); !errors.Is(err, os.ErrNotExist) || !strings.Contains(err.Error(), path) {
		t.Errorf("OpenRoster(no file) = %v, want that %s is not there", err, path)
	}
	if err := os.WriteFile(path, []byte("{}"), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := OpenRoster(path); !errors.Is(err, ErrNotRoster) || !strings.Contains(err.Error(), path) {
		t.Errorf("OpenRoster({}) = %v, want %v and the path", err, ErrNotRoster)
	}
}

// One outside the bounds is not written at all.
func TestWriteRosterRefuses(t *testing.T) {
	var out strings.Builder
	err := WriteRoster(&out, roster.Roster{Title: strings.Repeat("x", lesson.MaxTitle+1)})
	if !errors.Is(err, lesson.ErrInvalid) || out.Len() > 0 {
		t.Errorf("WriteRoster of a long title = %v with %d bytes, want %v and none", err, out.Len(), lesson.ErrInvalid)
	}
}

func anyRoster() *rapid.Generator[roster.Roster] {
	text := func(most int) *rapid.Generator[string] { return rapid.StringN(0, most, -1) }
	return rapid.Custom(func(t *rapid.T) roster.Roster {
		r := roster.Roster{Title: text(20).Draw(t, "title"), Notes: text(20).Draw(t, "notes")}
		for range rapid.IntRange(0, 4).Draw(t, "pairs") {
			p := roster.Pair{Name: text(lesson.MaxName).Draw(t, "name"), Notes: text(20).Draw(t, "notes")}
			if rapid.Bool().Draw(t, "signs") {
				p.Signs = lesson.Signs(rapid.Permutation([]lesson.Meaning{lesson.Stay, lesson.Switch, lesson.Fake}).Draw(t, "meanings"))
			}
			for i := range p.Players {
				p.Players[i] = lesson.Player{
					Name: text(10).Draw(t, "player"), Initials: text(lesson.MaxInitials).Draw(t, "initials"),
					Hand: lesson.Hand(rapid.IntRange(0, 1).Draw(t, "hand")), Serving: lesson.Want(rapid.IntRange(0, 2).Draw(t, "serving")),
					Receiving: lesson.Want(rapid.IntRange(0, 2).Draw(t, "receiving")), Wheelchair: rapid.Bool().Draw(t, "wheelchair"),
				}
				if rapid.Bool().Draw(t, "paced") {
					p.Players[i].Pace = new(rapid.SampledFrom(movement.Presets[:]).Draw(t, "preset").Pace)
				}
			}
			r.Pairs = append(r.Pairs, p)
		}
		return r
	})
}

func TestRosterRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyRoster().Draw(t, "roster")
		var out strings.Builder
		if err := WriteRoster(&out, r); err != nil {
			t.Fatalf("WriteRoster(%+v) = %v", r, err)
		}
		if got, err := ReadRoster(strings.NewReader(out.String())); err != nil || !reflect.DeepEqual(got, r) {
			t.Fatalf("ReadRoster(WriteRoster(r)) = %+v, %v, want %+v", got, err, r)
		}
	})
}

// FuzzReadRoster holds ReadRoster to its promises: a sound roster that can be
// written and read again the same, or one short line.
func FuzzReadRoster(f *testing.F) {
	f.Add([]byte(rosterExample(f)))
	f.Add([]byte(rosterText(f, roster.Roster{})))
	f.Fuzz(func(t *testing.T, data []byte) {
		r, err := ReadRoster(strings.NewReader(string(data)))
		if err != nil {
			if text := err.Error(); len(text) > 1000 || strings.ContainsAny(text, "\n\r") {
				t.Errorf("ReadRoster = %.1000q, want one short line", text)
			}
			return
		}
		if again, err := ReadRoster(strings.NewReader(rosterText(t, r))); err != nil || !reflect.DeepEqual(again, r) {
			t.Errorf("ReadRoster(WriteRoster(r)) = %+v, %v, want %+v", again, err, r)
		}
	})
}
