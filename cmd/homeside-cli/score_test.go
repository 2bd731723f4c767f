package main

import (
	"bytes"
	"context"
	"encoding/json"
	"strings"
	"testing"
)

// scoreRun runs a command line of score or who.
func scoreRun(args ...string) (stdout, stderr string, code int) {
	var out, errs bytes.Buffer
	code = run(context.Background(), args, &out, &errs)
	return out.String(), errs.String(), code
}

func checkScoreRun(t *testing.T, line, want string) {
	t.Helper()
	out, errs, code := scoreRun(strings.Fields(line)...)
	if out != want || errs != "" || code != exitOK {
		t.Errorf("homeside-cli %s: exit %d, %q\n got %s\nwant %s", line, code, errs, out, want)
	}
}

// USA Pickleball Official Rulebook 2026, 5.B and 6.B.2: the first rallies of the
// game worked out by hand in the game package's tests.
func TestScoreJSON(t *testing.T) {
	checkScoreRun(t, "score --format side-out --to 11 --first near --winners nnff --json",
		`[{"call":"0-0-2","server":"near1","from":"right","receiver":"far1"},`+
			`{"call":"1-0-2","server":"near1","from":"left","receiver":"far2"},`+
			`{"call":"2-0-2","server":"near1","from":"right","receiver":"far1"},`+
			`{"call":"0-2-1","server":"far1","from":"right","receiver":"near1"},`+
			`{"call":"1-2-1","server":"far1","from":"left","receiver":"near2"}]`+"\n")
	checkScoreRun(t, "score --json", `[{"call":"0-0-2","server":"near1","from":"right","receiver":"far1"}]`+"\n")
	checkScoreRun(t, "score --format rally-fixed --first far --starters far2,near2 --winners f --json",
		`[{"call":"0-0","server":"far2","from":"right","receiver":"near2"},`+
			`{"call":"1-0","server":"far1","from":"left","receiver":"near1"}]`+"\n")
}

// The end is one last object, and rallies after it are ignored.
func TestScoreEnd(t *testing.T) {
	winners := "ffffff" + "nn" + strings.Repeat("n", 20)
	out, errs, code := scoreRun("score", "--format", "rally-parity", "--winners", winners, "--json")
	var all []map[string]any
	if err := json.Unmarshal([]byte(out), &all); err != nil || code != exitOK {
		t.Fatalf("score: exit %d, %q, %v in %s", code, errs, err, out)
	}
	if !strings.HasSuffix(out, `,{"over":true,"winner":"near","score":[11,6]}]`+"\n") || len(all) != 18 {
		t.Errorf("score of %d states ends %s, want 18 states and near 11, far 6", len(all), out[max(0, len(out)-60):])
	}
}

func TestScoreText(t *testing.T) {
	checkScoreRun(t, "score --format rally-fixed --to 3 --winners fff", `0-0      near1 serves from the right to far1
1-0      far2 serves from the left to near2
The teams change ends.
2-0      far1 serves from the right to near1
The far team wins 3-0.
In rally-fixed nobody changes sides, so stacking has no purpose.
`)
	checkScoreRun(t, "score --winners f", "0-0-2    near1 serves from the right to far1\n0-0-1    far1 serves from the right to near1\n")
}

func TestScoreRefuses(t *testing.T) {
	for line, want := range map[string]string{
		"score --winners nnxf":                                           "winners: rally 3 is 'x', want n or f",
		"score --to 0":                                                   "--to 0: want 1 to 99 points",
		"score --to -5":                                                  "--to -5: want 1 to 99 points",
		"score --to 100":                                                 "start a game: a game to 100: want 1 to 99 points",
		"score --first left":                                             `--first "left": want near or far`,
		"score --format rally":                                           `--format: format "rally": want side-out, rally-parity, rally-own-serve or rally-fixed`,
		"score --starters near1,near2":                                   `--starters: "near1,near2" names two players of the near team`,
		"score --starters near1":                                         `--starters: "near1": want one player of each team, like near1,far1`,
		"score --starters near1,far3":                                    `--starters: player "far3": want near1, near2, far1 or far2`,
		"score extra":                                                    `unknown command "extra" for "homeside-cli score"`,
		"who --call 12-3-1 --serving near":                               "call 12-3-1 is impossible in side-out to 11: 11-3 has ended the game",
		"who --call 0-0-3 --serving near":                                `call "0-0-3": the server is 1 or 2, not 3`,
		"who --call -4-7-2 --serving near":                               `call "-4-7-2": want two scores and in side-out scoring the server, like 4-7-2`,
		"who --call 4-7 --serving near":                                  "call 4-7 is impossible in side-out to 11: a call in side-out scoring ends with server 1 or 2",
		"who --call 4-7-2":                                               `required flag(s) "serving" not set`,
		"who --call 4-7-2 --serving middle":                              `--serving "middle": want near or far`,
		"who --call 4-7-2 --serving near --began x":                      `--began "x": want near or far`,
		"who --call 4-7-2 --serving near --server near3":                 `--server: player "near3": want near1, near2, far1 or far2`,
		"who --call 4-7-2 --serving near --server far1":                  "server: far1 is not on the near team",
		"who --call 4-7-2 --serving near --format parity":                `--format: format "parity": want side-out, rally-parity, rally-own-serve or rally-fixed`,
		"who --call 0-0 --format rally-fixed --serving far --began near": "call 0-0 is impossible: the near team began, so the far team does not serve",
	} {
		out, errs, code := scoreRun(strings.Fields(line)...)
		if code != exitBad || out != "" || errs != "homeside-cli: "+want+"\n" {
			t.Errorf("homeside-cli %s: exit %d, %q, want exit %d\n got %swant %s", line, code, out, exitBad, errs, want)
		}
	}
}
