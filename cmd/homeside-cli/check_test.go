package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

const legalLesson = "../../assets/lessons/left-hand-middle.json"

// faultyLesson is the built-in lesson with the first play's server a foot over
// the baseline.
func faultyLesson(t *testing.T) string {
	t.Helper()
	l, err := lessonfile.Open(legalLesson)
	if err != nil {
		t.Fatal(err)
	}
	p := l.Plays[0]
	server, _ := p.Server()
	track := append([]lesson.Keyframe(nil), p.Tracks[server]...)
	track[p.ServeIndex(server)].Place = court.Pt(-1.6, -21)
	return lessonFile(t, l.WithPlay(0, p.WithTrack(server, track)))
}

func checkJSON(t *testing.T, path string, want int) checkLesson {
	t.Helper()
	out, errs, code := cli("check", path, "--json")
	if code != want || errs != "" {
		t.Fatalf("check %s --json exits %d with %q on standard error, want %d and nothing", path, code, errs, want)
	}
	var got checkLesson
	d := json.NewDecoder(strings.NewReader(out))
	d.DisallowUnknownFields()
	if err := d.Decode(&got); err != nil {
		t.Fatalf("check %s --json: %v", path, err)
	}
	return got
}

func TestCheckLegalLesson(t *testing.T) {
	got := checkJSON(t, legalLesson, exitOK)
	if len(got.Plays) == 0 || got.Plays[0].Title == "" {
		t.Fatalf("check --json = %+v, want plays with titles", got)
	}
	stacked := false
	for _, p := range got.Plays {
		for _, f := range p.Findings {
			stacked = stacked || f.ID == "stack-legal" && f.Severity == "advice" && f.Rule == "USAP 2026 5.B.4"
		}
	}
	if !stacked {
		t.Error("check --json does not say that the stack is legal")
	}
}

// USA Pickleball Official Rulebook 2026, 7.A: the server's feet.
func TestCheckFaultyLesson(t *testing.T) {
	got := checkJSON(t, faultyLesson(t), exitFaults).Plays[0].Findings
	if len(got) == 0 {
		t.Fatal("check --json finds nothing in the first play")
	}
	want := checkFinding{Severity: "fault", ID: "foot-on-court", Rule: "USAP 2026 7.A.2", Player: "near2", T: 0,
		Text: "Tobin touches the court with a foot at the serve; the baseline is court."}
	if got[0] != want {
		t.Errorf("the first finding is %+v, want %+v", got[0], want)
	}
}

// The fields, as they are promised.
func TestCheckFields(t *testing.T) {
	out, _, _ := cli("check", faultyLesson(t), "--json")
	var got map[string]any
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	checkKeys(t, "the answer", got, "plays")
	play := got["plays"].([]any)[0].(map[string]any)
	checkKeys(t, "a play", play, "findings", "title")
	checkKeys(t, "a finding", play["findings"].([]any)[0], "id", "player", "rule", "severity", "t_s", "text")
}

func TestCheckWithoutPlays(t *testing.T) {
	out, _, _ := cli("check", lessonFile(t, lesson.Lesson{}), "--json")
	if want := `{"plays":[]}` + "\n"; out != want {
		t.Errorf("check of an empty lesson = %q, want %q", out, want)
	}
}

func TestCheckInWords(t *testing.T) {
	out, _, code := cli("check", faultyLesson(t))
	for _, want := range []string{"1. 4-7-2: Tobin serves from the odd court, stacked\n", "   0.00 s  Fault: Tobin touches the court", "(USAP 2026 7.A.2)\n"} {
		if !strings.Contains(out, want) {
			t.Errorf("check prints %q, want %q in it", out, want)
		}
	}
	if code != exitFaults {
		t.Errorf("check exits %d, want %d", code, exitFaults)
	}
}

func TestCheckUnreadable(t *testing.T) {
	broken := filepath.Join(t.TempDir(), "broken.json")
	if err := os.WriteFile(broken, []byte(`{"format": "homeside-lesson", "version": 1, "plays": [{}]}`), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{{broken}, {broken + ".gone"}, {}, {broken, "--jsn"}, {"a", "b"}} {
		out, errs, code := cli(append([]string{"check"}, args...)...)
		if code != exitBad || out != "" || strings.Count(errs, "\n") != 1 {
			t.Errorf("check %v exits %d, prints %q and %q, want %d, nothing and one line", args, code, out, errs, exitBad)
		}
	}
}
