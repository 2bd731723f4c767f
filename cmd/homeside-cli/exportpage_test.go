package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export/exporttest"
)

func TestExportPage(t *testing.T) {
	path := lessonFile(t, spokenDrill())
	for _, c := range []struct {
		args  string
		plays int
	}{{"", 3}, {"--play all", 3}, {"--play 2", 1}} {
		out := filepath.Join(t.TempDir(), "x.html")
		args := append([]string{"export", path, "--out", out}, strings.Fields(c.args)...)
		if stdout, stderr, code := cli(args...); code != exitOK || stdout+stderr != "" {
			t.Fatalf("homeside-cli %v: exit %d, %q, %q, want a silent success", args, code, stdout, stderr)
		}
		got, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		if n := strings.Count(string(got), `<svg class="play"`); n != c.plays || !strings.Contains(string(got), "Drill &lt;1&gt; &amp; more") {
			t.Errorf("export %s: %d plays, want %d under the lesson's title", c.args, n, c.plays)
		}
	}
}

func TestExportPageRefuses(t *testing.T) {
	path := lessonFile(t, spokenDrill())
	t.Chdir(t.TempDir())
	for line, want := range map[string]string{
		"--out x.html --fps 10":    "--fps: x.html is a page, which has no such thing",
		"--out x.html --play 4":    path + ": --play 4: the lesson has 3 plays",
		"--out x.html --resume":    "--resume: x.html is a page",
		"--out missing/x.html":     "save missing/x.html: there is no folder missing",
		"--out x.html --play zero": "invalid argument",
	} {
		args := append([]string{"export", path}, strings.Fields(line)...)
		out, errs, code := cli(args...)
		if text := checkRefused(t, args, out, errs, code); !strings.Contains(text, want) {
			t.Errorf("export %s says %q, want %q", line, text, want)
		}
		if left := exporttest.Files(t, "."); len(left) != 0 {
			t.Errorf("export %s leaves %v", line, left)
		}
	}
}
