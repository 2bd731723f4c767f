package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
)

// cli runs a command line.
func cli(args ...string) (stdout, stderr string, code int) {
	return cliIn(context.Background(), args...)
}

func cliIn(ctx context.Context, args ...string) (stdout, stderr string, code int) {
	var out, errs bytes.Buffer
	code = run(ctx, args, &out, &errs)
	return out.String(), errs.String(), code
}

// drill is a lesson of three plays: a left-handed serve that is returned, an
// ordinary serve, a serve from the far end. Nobody comes near x = 8 ft or beyond.
func drill() lesson.Lesson {
	play := lesson.Play{
		Title: "from the odd court", Lead: 1.5,
		Shots: []lesson.Shot{
			{By: game.Near2, Aim: court.Pt(5, 17.5), Intent: lesson.Apex(7.5)},
			{By: game.Far1, Aim: court.Pt(-3, -18.5), Intent: lesson.Apex(8)},
		},
		Tracks: [4][]lesson.Keyframe{
			{{Place: court.Pt(-7, -23)}},
			{{Place: court.Pt(-1.6, -22.9)}, {At: lesson.At(lesson.TheEnd), Place: court.Pt(4, -20)}},
			{{Place: court.Pt(5.5, 24.5), Facing: 180}},
			{{Place: court.Pt(-5, 7.8), Facing: 180}},
		},
	}
	l := lesson.Lesson{Title: "Drill <1> & more", Plays: []lesson.Play{play, play, play}}
	l.Teams[court.Near].Players[1].Hand = lesson.LeftHanded
	l.Plays[1].Title, l.Plays[1].Shots = "one shot", play.Shots[:1]
	l.Plays[2].Title, l.Plays[2].Shots = "from the far end", play.Shots[1:]
	return l
}

// lessonFile writes a lesson to a file of its own.
func lessonFile(t *testing.T, l lesson.Lesson) (path string) {
	t.Helper()
	var b bytes.Buffer
	if err := lessonfile.Write(&b, l); err != nil {
		t.Fatal(err)
	}
	path = filepath.Join(t.TempDir(), "lesson.json")
	if err := os.WriteFile(path, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// checkRefused checks one line on standard error, exit 2 and nothing on
// standard output, and gives the line.
func checkRefused(t *testing.T, args []string, stdout, stderr string, code int) string {
	t.Helper()
	line, ended := strings.CutSuffix(stderr, "\n")
	text, named := strings.CutPrefix(line, "homeside-cli: ")
	if code != exitBad || stdout != "" || !ended || !named || strings.ContainsAny(line, "\n\r") {
		t.Errorf("homeside-cli %s: exit %d, stdout %q, stderr %q, want exit %d and one line on stderr", strings.Join(args, " "), code, stdout, stderr, exitBad)
	}
	return text
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{{}, {"--help"}, {"export", "--help"}, {"info", "--help"}} {
		out, errs, code := cli(args...)
		if code != exitOK || errs != "" || !strings.Contains(out, "Usage:") {
			t.Errorf("homeside-cli %v: exit %d, %q, %q, want the usage and exit 0", args, code, out, errs)
		}
	}
	for _, args := range [][]string{{"exprot"}, {"--bogus"}, {"info"}, {"info", "a", "b"}, {"info", "--bogus", "a"}, {"export"}, {"export", "a"}} {
		out, errs, code := cli(args...)
		checkRefused(t, args, out, errs, code)
	}
}

// Every command says in one line what it does.
func TestCommandsHaveHelp(t *testing.T) {
	out, _, _ := cli("--help")
	for _, c := range commands {
		command := c()
		if command.Short == "" || command.RunE == nil || !strings.Contains(out, "  "+command.Name()) {
			t.Errorf("command %q is not in the help or does nothing: %s", command.Name(), out)
		}
	}
}

// badLessons are files that no lesson can be read from, and what is said of them
// after the file's name.
func badLessons(t *testing.T) map[string]string {
	t.Helper()
	data, err := os.ReadFile(lessonFile(t, drill()))
	if err != nil {
		t.Fatal(err)
	}
	good, folder := string(data), t.TempDir()
	out := map[string]string{folder: "a folder, not a file", filepath.Join(folder, "missing.json"): "no such file"}
	write := func(name, data, want string) string {
		path := filepath.Join(folder, name)
		if err := os.WriteFile(path, []byte(data), 0o600); err != nil {
			t.Fatal(err)
		}
		out[path] = want
		return path
	}
	mangle := func(name, old, new, want string) {
		before, after, ok := strings.Cut(good, old)
		if !ok {
			t.Fatalf("the lesson has no %s", old)
		}
		write(name, before+new+after, fmt.Sprintf("line %d: %s", 1+strings.Count(before, "\n"), want))
	}
	write("empty.json", "", "line 1: not a Homeside lesson: the file is empty")
	write("picture.json", "\x89PNG\r\n\x1a\n", "line 1: not a Homeside lesson")
	write("other.json", `{"format": "gpx"}`, `line 1: not a Homeside lesson: "format" is "gpx", want "homeside-lesson"`)
	write("half.json", good[:len(good)/2], "line ")
	mangle("newer.json", `"version": 1`, `"version": 2`, "version: made by a newer version of Homeside")
	mangle("number.json", `"apex_ft": 7.5`, `"apex_ft": "high"`, "plays[0].shots[0].apex_ft: ")
	mangle("name.json", `"apex_ft": 7.5`, `"Apex_ft": 7.5`, "plays[0].shots[0].Apex_ft: ")
	mangle("twice.json", `"apex_ft": 7.5`, `"apex_ft": 7.5, "by": "near2"`, "plays[0].shots[0].by: ")
	mangle("far.json", `"apex_ft": 7.5`, `"apex_ft": 5e9`, "plays[0].shots[0].apex_ft: ")
	mangle("comma.json", `"apex_ft": 7.5`, `"apex_ft": 7,5`, "plays[0].shots[0]: ")
	huge := write("huge.json", `{"format": "homeside-lesson", "version": 1, "notes": "`, "larger than ")
	if err := os.Truncate(huge, 100<<20); err != nil { // sparse: 100 MB of zeros
		t.Fatal(err)
	}
	return out
}

// A lesson that cannot be read is one line with the file, the place and the
// reason, exit 2, and nothing is written.
func TestBadLessons(t *testing.T) {
	for path, want := range badLessons(t) {
		folder := t.TempDir()
		for _, args := range [][]string{
			{"info", path, "--json"}, {"info", path},
			{"export", path, "--out", filepath.Join(folder, "x.png")}, {"export", path, "--out", filepath.Join(folder, "x.avi")},
		} {
			out, errs, code := cli(args...)
			text := checkRefused(t, args, out, errs, code)
			if !strings.Contains(text, path) || !strings.Contains(text, want) || len(text) > 400+len(path) {
				t.Errorf("homeside-cli %v says %q, want the file and %q", args, text, want)
			}
		}
		if left, err := os.ReadDir(folder); err != nil || len(left) != 0 {
			t.Errorf("export of %s left %v (%v)", path, left, err)
		}
	}
}
