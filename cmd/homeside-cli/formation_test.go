package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"homeside/model/finding"
	"homeside/model/game"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/rules"
)

func formationJSON(t *testing.T, line string) formationAnswer {
	t.Helper()
	var got formationAnswer
	d := json.NewDecoder(strings.NewReader(runOutput(t, "formation "+line+" --json")))
	d.DisallowUnknownFields()
	if err := d.Decode(&got); err != nil {
		t.Fatalf("%s: %v", line, err)
	}
	return got
}

func TestFormationFields(t *testing.T) {
	var got map[string]any
	out := runOutput(t, "formation --when serve --court even --player near1 --kind stack --team near --json")
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	checkKeys(t, "formation", got, "contact", "end", "margins", "order", "tell_s")
	for _, field := range []string{"contact", "end"} {
		checkKeys(t, field, got[field], "far1", "far2", "near1", "near2")
		checkKeys(t, field, got[field].(map[string]any)["near1"], "x_ft", "y_ft")
	}
	checkKeys(t, "margins", got["margins"], "near1", "near2")
}

// By the trade: on the even court both stand right, and the server goes left.
func TestFormationStack(t *testing.T) {
	got := formationJSON(t, "--when serve --court even --player near2 --kind stack --team near --homes near1=right,near2=left")
	server, mate := got.Contact["near2"], got.Contact["near1"]
	if !(server.X > 0 && mate.X > server.X && server.Y < -22 && mate.Y < -22) {
		t.Errorf("at the serve near2 %v and near1 %v, want both on the right, near1 outside", server, mate)
	}
	if !(got.End["near2"].X < 0 && got.End["near1"].X > 0) {
		t.Errorf("at the end %v, want near1 right and near2 left", got.End)
	}
	if got.Tell == nil || *got.Tell >= 0 || got.Order != "near2 in front" {
		t.Errorf("tell %v, order %q, want before the serve and near2 in front", got.Tell, got.Order)
	}
}

// The far team's play is the near team's turned half round.
func TestFormationOfTheFarTeam(t *testing.T) {
	near := formationJSON(t, "--when return --court odd --player near1 --kind switch --team near --serve wide")
	far := formationJSON(t, "--when return --court odd --player near1 --kind switch --team far --serve wide")
	named := formationJSON(t, "--when return --court odd --player far1 --kind switch --serve wide")
	turned := map[string]string{"near1": "far1", "near2": "far2", "far1": "near1", "far2": "near2"}
	for a, b := range turned {
		p, q := near.End[a], far.End[b]
		if d := max(p.X+q.X, -p.X-q.X, p.Y+q.Y, -p.Y-q.Y); d > 1e-6 || far.End[b] != named.End[b] {
			t.Errorf("%s ends at %v, turned %s at %v (named %v)", a, p, b, q, named.End[b])
		}
	}
	if far.Order != "far2 in front" || len(far.Margins) != 2 {
		t.Errorf("order %q, margins %v", far.Order, far.Margins)
	}
}

func TestFormationWithoutATell(t *testing.T) {
	if got := formationJSON(t, "--when return --court even --player near1 --kind ordinary"); got.Tell != nil || got.Order != "nobody changes sides" {
		t.Errorf("ordinary: tell %v, order %q", got.Tell, got.Order)
	}
}

// What --out writes opens, is without a fault, and keeps the answer.
func TestFormationOut(t *testing.T) {
	for _, when := range []string{"serve", "return"} {
		for _, kind := range []string{"ordinary", "stack", "switch", "stay", "poach"} {
			path := filepath.Join(t.TempDir(), kind+".json")
			line := fmt.Sprintf("formation --when %s --court odd --player near2 --kind %s --out %s", when, kind, path)
			said := runOutput(t, line)
			l, err := lessonfile.Open(path)
			if err != nil {
				t.Fatal(err)
			}
			r, err := rally.Solve(l, 0)
			if err != nil {
				t.Fatal(err)
			}
			if all := rules.Check(r, l); finding.Faults(all) {
				t.Errorf("%s: %v", line, all)
			}
			if got := l.Player(game.Far1).Letters(); got != "F1" {
				t.Errorf("%s: far1's disc says %q, want F1", line, got)
			}
			lead := r.Strokes[0].By
			if when == "return" {
				lead = r.Strokes[1].By
			}
			if notes := l.Plays[0].Notes; lead != game.Near2 || notes == "" || !strings.Contains(said, notes) {
				t.Errorf("%s: %v, notes %q, said %q", line, lead, notes, said)
			}
		}
	}
}

func TestFormationRefuses(t *testing.T) {
	usual := map[string]string{"--when": "serve", "--court": "even", "--player": "near1", "--kind": "stack"}
	for _, c := range []struct{ flag, value, says string }{
		{"--when", "lunch", "want serve or return"},
		{"--court", "left", "want even or odd"},
		{"--player", "near3", "want near1, near2, far1 or far2"},
		{"--kind", "unsaid", "want ordinary, stack, switch, stay or poach"},
		{"--kind", "", "want ordinary, stack, switch, stay or poach"},
		{"--team", "north", "near or far"},
		{"--homes", "near1=left,near2=left", "both want the left side"},
		{"--homes", "near1=right,near2=left", "already stands on the right"},
		{"--homes", "near1", "want each player once"},
		{"--homes", "near1=left,near1=right", "want each player once"},
		{"--homes", "near1=either,near2=left", "want each player once"},
		{"--front", "near2", "cannot go in front"},
		{"--front", "net", "want near1"},
		{"--serve", "long", "want wide, middle or tee"},
	} {
		path := filepath.Join(t.TempDir(), "out.json")
		args := []string{"formation", "--out", path}
		for flag, value := range usual {
			if flag != c.flag {
				args = append(args, flag, value)
			}
		}
		args = append(args, c.flag, c.value)
		var out, errs bytes.Buffer
		code := run(context.Background(), args, &out, &errs)
		said := errs.String()
		if code != exitBad || !strings.Contains(said, c.says) || strings.Count(said, "\n") != 1 || out.Len() != 0 {
			t.Errorf("%s: exit %d, %q, %q, want exit 2 and one line with %q", slices.Concat(args[3:]), code, out.String(), said, c.says)
		}
		if _, err := os.Stat(path); err == nil {
			t.Errorf("%s %s: a file was written", c.flag, c.value)
		}
	}
}

func TestFormationOneHome(t *testing.T) {
	got := formationJSON(t, "--when serve --court even --player near1 --kind switch --homes near1=left")
	if !(got.End["near1"].X < 0 && got.End["near2"].X > 0) {
		t.Errorf("ends %v, want near1 left and near2 in the half that is left", got.End)
	}
}
