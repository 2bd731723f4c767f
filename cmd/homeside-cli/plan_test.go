package main

import (
	"encoding/json"
	"math"
	"strings"
	"testing"
)

func planRun(t *testing.T, line string) planAnswer {
	t.Helper()
	var a planAnswer
	if err := json.Unmarshal([]byte(runOutput(t, line)), &a); err != nil {
		t.Fatalf("%s: %v", line, err)
	}
	return a
}

const planHomes = "plan --homes near1=left,near2=right --json "

// The figures of the chain of arXiv:2303.02942, computed once apart from this
// program, by exact algebra; near's chance whoever is first.
func TestPlanJSON(t *testing.T) {
	for _, c := range []struct {
		line         string
		win, rallies float64
	}{
		{planHomes + "--near-serving 0.5 --far-serving 0.5 --first near", 0.49999999752211, 34.9606697127},
		{planHomes + "--near-serving 0.5 --far-serving 0.5 --first far --to 15", 1 - (0.5 + 5.0297e-12), 49.1038268204},
		{planHomes + "--near-serving 0.44 --far-serving 0.44 --policy none", math.NaN(), 40.2253669866},
		{planHomes + "--near-serving 1 --far-serving 0.2", 1, 11},
	} {
		a := planRun(t, c.line)
		if math.Abs(a.Win-c.win) > 1e-13 || math.Abs(a.Rallies-c.rallies) > 1e-9 {
			t.Errorf("%s: win %.15f, rallies %.10f, want %.15f, %.10f", c.line, a.Win, a.Rallies, c.win, c.rallies)
		}
	}
}

// The states share the rallies, the stacks and the feet of the game out.
func TestPlanStates(t *testing.T) {
	a := planRun(t, planHomes+"--near-serving 0.45 --far-serving 0.4 --first far --starter near2 --policy three-quarter --runner near2")
	var rallies, stacks float64
	feet := map[string]float64{}
	for _, s := range a.States {
		rallies += s.Rallies
		if s.Formation == "stack" {
			stacks += s.Rallies
			if s.Sides["near1"] != "right" || s.Ends["near1"] != "left" || s.Serving == "far" && s.Receiver != "near2" {
				t.Errorf("%+v: three-quarter stacks where near1 is on the right, on the serve or near2's return", s)
			}
		}
		for name, f := range s.Feet {
			feet[name] += float64(f) * s.Rallies
		}
		if s.Legal == nil || !*s.Legal || s.Margin == nil {
			t.Errorf("%+v: want a legal play and its margin", s)
		}
	}
	for name, pair := range map[string][2]float64{
		"rallies": {rallies, a.Rallies}, "stacks": {stacks, a.Stacks},
		"near1": {feet["near1"], float64(a.Feet["near1"])}, "near2": {feet["near2"], float64(a.Feet["near2"])},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-9*pair[1] || !(pair[0] > 0) {
			t.Errorf("%s: states sum up to %v, the game to %v", name, pair[0], pair[1])
		}
	}
	if s := a.States[0]; s.Call != "0-0-2" || s.Serving != "far" || s.Receiver != "near2" || math.Abs(s.Win-a.Win) > 1e-15 || len(a.Feet) != 2 {
		t.Errorf("the first state is %+v, want 0-0-2 to near2 and the game's chance %v", s, a.Win)
	}
}

// Where nobody swaps there is nothing to stack for.
func TestPlanFixed(t *testing.T) {
	a := planRun(t, planHomes+"--format rally-fixed")
	if a.Stacks != 0 || !strings.Contains(a.Note, "before 0-0") {
		t.Errorf("rally-fixed: %v stacks, %q, want 0 and to choose sides before 0-0", a.Stacks, a.Note)
	}
	if got := runOutput(t, "plan --homes near1=left,near2=right --format rally-fixed"); !strings.Contains(got, "choose your sides before 0-0") || !strings.Contains(got, "The better starter is near2") {
		t.Errorf("rally-fixed says %q", got)
	}
	if b := planRun(t, planHomes+"--format rally-parity"); b.Stacks == 0 || b.Note != "" {
		t.Errorf("rally-parity: %v stacks, %q, want some and no note", b.Stacks, b.Note)
	}
}

const planLesson = "../../assets/lessons/left-hand-middle.json"

// A lesson brings names, hands and wishes; a flag goes before it.
func TestPlanLesson(t *testing.T) {
	a := planRun(t, "plan "+planLesson+" --json --near-serving 0.44 --far-serving 0.44")
	b := planRun(t, "plan "+planLesson+" --json --near-serving 0.44 --far-serving 0.44 --to 21")
	if !(b.Rallies > 1.5*a.Rallies) {
		t.Errorf("%v rallies, to 21 %v, want more", a.Rallies, b.Rallies)
	}
	text := runOutput(t, "plan "+planLesson+" --policy half")
	for _, want := range []string{"on the serve only", "better starter", "met with a forehand", "not instructions to sprint", "to spare"} {
		if !strings.Contains(text, want) {
			t.Errorf("plan of the lesson says %q, want %q in it", text, want)
		}
	}
	if text := runOutput(t, "plan "+planLesson+" --policy three-quarter --runner near2"); !strings.Contains(text, "the better runner, receives") {
		t.Errorf("three-quarter says %q, want who runs", text)
	}
}

func TestPlanRefuses(t *testing.T) {
	homes := "plan --homes near1=left,near2=right "
	for line, want := range map[string]string{
		"plan":                                             "want a lesson or --homes near1=right,near2=left",
		"plan --homes near1=left,near2=left":               "plan a game: wanted sides clash: near1 and near2 both want the left side when serving",
		"plan --homes near1=left,far1=right":               "--homes: far1 is not on the near team",
		"plan --homes near1=left,near1=right":              `--homes: "near1=left,near1=right" names near1 twice`,
		"plan --homes near1=up":                            `--homes: side "up": want either, right or left`,
		"plan --homes near1":                               `--homes: "near1": want a player and a side, like near1=right,near2=left`,
		"plan --homes near3=left":                          `--homes: player "near3": want near1, near2, far1 or far2`,
		homes + "--near-serving 1.2":                       "plan a game: chance out of range: the near team wins 1.2 of the rallies it serves, want 0 to 1",
		homes + "--far-serving -0.2":                       "plan a game: chance out of range: the far team wins -0.2 of the rallies it serves, want 0 to 1",
		homes + "--far-serving NaN":                        "plan a game: chance out of range: the far team wins NaN of the rallies it serves, want 0 to 1",
		homes + "--near-serving 0 --far-serving 0":         "plan a game: the game hardly ever ends",
		homes + "--policy double":                          `--policy: policy "double": want full, half, three-quarter or none`,
		homes + "--policy three-quarter --runner far1":     `--runner "far1": want near1 or near2`,
		homes + "--starter far1":                           `--starter "far1": want near1 or near2`,
		homes + "--first left":                             `--first "left": want near or far`,
		homes + "--format rally":                           `--format: format "rally": want side-out, rally-parity, rally-own-serve or rally-fixed`,
		homes + "--to 0":                                   "--to 0: want 1 to 99 points",
		homes + "--to 100":                                 "a game to 100: want 1 to 99 points",
		homes + planLesson + " " + planLesson:              "accepts at most 1 arg(s), received 2",
		"plan --homes near1=left,near2=right no-such.json": "",
	} {
		out, errs, code := scoreRun(strings.Fields(line)...)
		if code != exitBad || out != "" || strings.Count(errs, "\n") != 1 || want != "" && errs != "homeside-cli: "+want+"\n" {
			t.Errorf("homeside-cli %s: exit %d, %q, want exit %d\n got %swant %s", line, code, out, exitBad, errs, want)
		}
	}
}
