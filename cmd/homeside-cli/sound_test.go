package main

import (
	"path/filepath"
	"strings"
	"testing"

	"homeside/export/exporttest"
)

// tiny makes small clips of few frames.
var tiny = []string{"--size", "48x64", "--fps", "2"}

// MP4 and WebM are heard unless they are to be silent or to be laid over footage.
func TestExportSound(t *testing.T) {
	for _, c := range []struct{ name, args, want string }{
		{"x.mp4", "", "aac"}, {"x.mp4", "--sound beeps --speed 0.5", "aac"}, {"x.mp4", "--sound none", ""},
		{"x.webm", "", "opus"}, {"x.webm", "--sound none", ""}, {"x.webm", "--background clear", ""}, {"x.mov", "", ""},
	} {
		if got := exporttest.HeardCodec(t, exported(t, c.name, append(strings.Fields(c.args), tiny...)...)); got != c.want {
			t.Errorf("%s %s is heard by %q, want %q", c.name, c.args, got, c.want)
		}
	}
}

func TestExportSoundOfABatch(t *testing.T) {
	folder := t.TempDir()
	args := append([]string{"export", lessonFile(t, drill()), "--out", filepath.Join(folder, "{play}.{ext}"), "--format", "mp4,gif"}, tiny...)
	for want, more := range map[string][]string{"aac": nil, "": {"--sound", "none"}} {
		if _, stderr, code := cli(append(args, more...)...); code != exitOK {
			t.Fatalf("a batch %v: exit %d, %s", more, code, stderr)
		}
		if got := exporttest.HeardCodec(t, filepath.Join(folder, "1.mp4")); got != want {
			t.Errorf("1.mp4 of a batch %v is heard by %q, want %q", more, got, want)
		}
	}
}

func TestExportSoundRefused(t *testing.T) {
	path := lessonFile(t, drill())
	for args, want := range map[string]string{
		"--out x.mp4 --sound music":                           `--sound "music": want beeps or none`,
		"--out x.gif --sound none":                            "--sound: x.gif has no such choice",
		"--out x.mov --sound beeps":                           "--sound: x.mov has no such choice",
		"--out x.webm --sound beeps --background clear":       "--sound beeps: a clip on a clear ground is silent",
		"--out x.wav --sound none":                            "--sound: x.wav holds words or beeps",
		"--out x.html --sound none":                           "--sound: x.html is a page",
		"--out x.pdf --sheet cones --sound none":              "--sound: a handout has no such thing",
		"--out {play}.{ext} --format gif,png --sound none":    "--sound is for MP4 and WebM clips, and there are none among the files",
		"--out {play}.{ext} --format mp4 --sound no --jobs 2": `--sound "no": want beeps or none`,
	} {
		all := append([]string{"export", path}, strings.Fields(args)...)
		stdout, stderr, code := cli(all...)
		if line := checkRefused(t, all, stdout, stderr, code); !strings.Contains(line, want) {
			t.Errorf("export %s: %q, want %q", args, line, want)
		}
	}
}
