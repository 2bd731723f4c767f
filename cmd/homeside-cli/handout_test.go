package main

import (
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/handout"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/roster"
)

// builtInLesson is written beside the sources.
const builtInLesson = "../../assets/lessons/left-hand-middle.json"

func pdfText(t *testing.T, path string) string {
	t.Helper()
	out, err := exec.Command("pdftotext", "-raw", path, "-").Output()
	if err != nil {
		t.Fatalf("pdftotext (Debian package poppler-utils): %v", err)
	}
	return strings.Join(strings.Fields(string(out)), " ")
}

// Every sheet is written on both papers, in silence; without --sheet a PDF is
// one picture as it was.
func TestExportHandout(t *testing.T) {
	folder := t.TempDir()
	for _, s := range handout.Sheets {
		for _, paper := range []string{"a4", "LETTER"} {
			out := filepath.Join(folder, s.Name+paper+".pdf")
			if stdout, stderr, code := cli("export", builtInLesson, "--out", out, "--sheet", s.Name, "--paper", paper); code != exitOK || stdout+stderr != "" {
				t.Errorf("%s on %s: exit %d, %q, %q, want a silent success", s.Name, paper, code, stdout, stderr)
				continue
			}
			info, err := exec.Command("pdfinfo", out).Output()
			if want := map[string]string{"a4": "(A4)", "LETTER": "(letter)"}[paper]; err != nil || !strings.Contains(string(info), want) {
				t.Errorf("%s: pdfinfo says %s, %v, want %s", out, info, err, want)
			}
			if !strings.Contains(pdfText(t, out), s.Title()) {
				t.Errorf("%s does not say %q", out, s.Title())
			}
		}
	}
	still := filepath.Join(folder, "still.PDF")
	if _, stderr, code := cli("export", builtInLesson, "--out", still); code != exitOK || stderr != "" || strings.Contains(pdfText(t, still), "page 1 of") {
		t.Errorf("a still: exit %d, %q", code, stderr)
	}
}

func TestExportHandoutOfPlays(t *testing.T) {
	out := filepath.Join(t.TempDir(), "x.pdf")
	for plays, want := range map[string]int{"": 3, "all": 3, "2": 1} {
		args := []string{"export", builtInLesson, "--out", out, "--sheet", "storyboard"}
		if plays != "" {
			args = append(args, "--play", plays)
		}
		if _, stderr, code := cli(args...); code != exitOK {
			t.Fatalf("%v: exit %d, %q", args, code, stderr)
		}
		if got := strings.Count(pdfText(t, out), "page "); got != want {
			t.Errorf("--play %q: %d pages, want %d", plays, got, want)
		}
	}
}

// The pairs of a roster have cards; what the fonts lack is told on standard error.
func TestExportCardsOfARoster(t *testing.T) {
	folder := t.TempDir()
	pairs, out := filepath.Join(folder, "pairs.json"), filepath.Join(folder, "cards.pdf")
	r := roster.Roster{Pairs: []roster.Pair{
		{Name: "Harbour", Players: [2]lesson.Player{{Name: "Ivo"}, {Name: "Mara"}}},
		{Name: "Fern \U0001F3D3", Players: [2]lesson.Player{{Name: "Oskar"}, {Name: "Tilde"}}},
	}}
	if err := export.Save(t.Context(), pairs, func(w io.Writer) error { return lessonfile.WriteRoster(w, r) }); err != nil {
		t.Fatal(err)
	}
	_, stderr, code := cli("export", builtInLesson, "--out", out, "--sheet", "match", "--pairs", pairs)
	if want := out + ": No font here has \U0001F3D3 (U+1F3D3): pictures show empty boxes instead.\n"; code != exitOK || stderr != want {
		t.Errorf("exit %d, %q, want %q", code, stderr, want)
	}
	if got := pdfText(t, out); !strings.Contains(got, "Ivo serves right") || !strings.Contains(got, "Tilde receives left") || strings.Contains(got, "Ines serves") {
		t.Errorf("the cards are not those of the roster:\n%s", got)
	}
}

// A flag that means nothing for a handout is refused, and so is what is not
// there; no file is left.
func TestExportHandoutRefused(t *testing.T) {
	folder := t.TempDir()
	empty := drill()
	empty.Plays = nil
	bare := lessonFile(t, empty)
	for _, c := range []struct{ lesson, args, want string }{
		{builtInLesson, "--out x.png --sheet cones", "--sheet is for a .pdf, and --out is x.png"},
		{builtInLesson, "--out x.pdf --sheet poster", `--sheet: sheet "poster": there are storyboard, cones, match, advisor, plan`},
		{builtInLesson, "--out x.pdf --sheet cones --paper a5", `--paper: paper "a5": want a4 or letter`},
		{builtInLesson, "--out x.pdf --sheet cones --play 9", "--play 9: the lesson has 3 plays"},
		{builtInLesson, "--out x.pdf --sheet cones --fps 9", "--fps: a handout has no such thing"},
		{builtInLesson, "--out x.pdf --sheet cones --pairs y.json", "--pairs is for --sheet match, not for cones"},
		{builtInLesson, "--out x.pdf --sheet match --pairs " + bare, "format"},
		{builtInLesson, "--out x.pdf --sheet match --play 1", "--play: match is made of pairs, not of plays"},
		{builtInLesson, "--out x.pdf --paper letter", "--paper is for a handout: give --sheet as well"},
		{bare, "--out x.pdf --sheet plan", "the lesson has no plays"},
		{bare, "--out x.pdf --sheet plan --play all", "the lesson has no plays"},
	} {
		args := append([]string{"export", c.lesson}, strings.Fields(c.args)...)
		for i := range args {
			if args[i] == "x.pdf" || args[i] == "x.png" {
				args[i] = filepath.Join(folder, args[i])
			}
		}
		stdout, stderr, code := cli(args...)
		got := strings.ReplaceAll(checkRefused(t, args, stdout, stderr, code), folder+string(os.PathSeparator), "")
		if !strings.Contains(got, c.want) {
			t.Errorf("%s: %q, want %q", c.args, got, c.want)
		}
	}
	if left, err := os.ReadDir(folder); err != nil || len(left) > 0 {
		t.Errorf("%v is left behind (%v)", left, err)
	}
}
