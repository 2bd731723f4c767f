package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export/exporttest"
	"homeside/model/game"
	"homeside/model/lesson"
)

// spokenDrill is the drill with a caption and a signal about the serve, which
// is 1.5 s after the start.
func spokenDrill() lesson.Lesson {
	l := drill()
	span := lesson.Span{From: lesson.Anchor{Offset: -0.5}, To: lesson.Anchor{Offset: 1}}
	l.Plays[0].Cues = []lesson.Cue{
		{Span: span, Text: "Watch & wait <now> --> go"},
		{Kind: lesson.Signal, Span: span, Giver: game.Near1, Reader: game.Near2, Meaning: lesson.Switch},
	}
	return l
}

func TestExportText(t *testing.T) {
	path := lessonFile(t, spokenDrill())
	for _, c := range []struct{ name, args, want string }{
		{"x.vtt", "", "WEBVTT\n\n1\n00:00:01.000 --> 00:00:02.500\nWatch &amp; wait &lt;now&gt; --&gt; go\n\n2\n00:00:01.000 --> 00:00:02.500\nnear1 shows near2: switch.\n"},
		{"x.SRT", "--from -1 --to 0.5 --speed 0.5", "1\n00:00:01,000 --> 00:00:03,000\nWatch & wait <\u2060now> → go\n\n2\n00:00:01,000 --> 00:00:03,000\nnear1 shows near2: switch.\n"},
		{"x.chapters.vtt", "--from -1 --to 0.5", "WEBVTT\n\n1\n00:00:00.000 --> 00:00:01.000\nBefore the serve\n\n2\n00:00:01.000 --> 00:00:01.500\nServe by near2\n"},
	} {
		if got := exportedText(t, path, c.name, c.args); got != c.want {
			t.Errorf("export --out %s %s: %q, want %q", c.name, c.args, got, c.want)
		}
	}
	if got := exportedText(t, path, "x.txt", ""); !strings.HasPrefix(got, "from the odd court\n") || !strings.Contains(got, "\n0:01.00 - 0:02.50  SAY: Watch & wait <now> → go") {
		t.Errorf("export --out x.txt: %q, want the title first and what to say from 1 to 2.5 s", got)
	}
}

// Captions of a play without any are whole files that hold none, and that is said.
func TestExportNoCaptions(t *testing.T) {
	path := lessonFile(t, spokenDrill())
	for name, want := range map[string]string{"x.vtt": "WEBVTT\n\n", "x.srt": ""} {
		out := filepath.Join(t.TempDir(), name)
		_, stderr, code := cli("export", path, "--out", out, "--play", "2")
		if got, err := os.ReadFile(out); err != nil || string(got) != want || code != exitOK {
			t.Errorf("%s of a play without captions: %q, %v, exit %d; want %q", name, got, err, code, want)
		}
		if want := out + ": there are no captions in it, for the play has none\n"; stderr != want {
			t.Errorf("%s of a play without captions says %q, want %q", name, stderr, want)
		}
	}
}

// Captions fit the clip of the same flags: the last chapter ends when the clip
// does, to a frame at 25 a second.
func TestExportTextFitsTheClip(t *testing.T) {
	flags := "--from -1 --to 2 --speed 0.5"
	clip := exporttest.Probe(t, exported(t, "x.gif", strings.Fields(flags+" --size 64x64")...))
	got := exportedText(t, lessonFile(t, drill()), "x.chapters.vtt", flags)
	if !strings.Contains(got, " --> 00:00:06.000\n") || clip.DurationS < 5.96 || clip.DurationS > 6.04 {
		t.Errorf("a clip of %v s has chapters %q, want both 6 s long", clip.DurationS, got)
	}
}

func exportedText(t *testing.T, lesson, name, args string) string {
	t.Helper()
	out := filepath.Join(t.TempDir(), name)
	all := append([]string{"export", lesson, "--out", out}, strings.Fields(args)...)
	if stdout, stderr, code := cli(all...); code != exitOK || stdout+stderr != "" {
		t.Fatalf("homeside-cli %v: exit %d, %q, %q, want a silent success", all, code, stdout, stderr)
	}
	data, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func TestExportTextRefuses(t *testing.T) {
	path := lessonFile(t, spokenDrill())
	t.Chdir(t.TempDir())
	for line, want := range map[string]string{
		"--out x.vtt --size 100x100":  "--size: x.vtt holds words or beeps, which have no such thing",
		"--out x.srt --fps 10":        "--fps: x.srt holds words or beeps",
		"--out x.txt --at 1":          "--at: x.txt holds words or beeps",
		"--out x.vtt --view lying":    "--view: x.vtt holds words",
		"--out x.vtt --play all":      ".vtt of play 1 and .vtt of play 2 have the same name: x.vtt",
		"--out x.vtt --format gif":    "x.vtt: a name for .gif must end in .gif",
		"--out x.vtt --resume":        "--resume is for several files at once",
		"--out x.srt --play 4":        path + ": --play 4: the lesson has 3 plays",
		"--out x.srt --speed 0":       "--speed 0: want more than 0",
		"--out x.srt --speed 9":       "speed 9 is outside the 0.05 to 8",
		"--out x.txt --from 2 --to 1": "from 2 s is not before to 1 s",
		"--out x.vtt --to 99":         "to 99 s is outside the -1.5 to ",
		"--out x.vtt --from NaN":      "from NaN s is outside",
		"--out missing/x.vtt":         "save missing/x.vtt: there is no folder missing",
		"--out x.ass":                 "x.ass: no format is called .ass; there are .png",
		"--out x.vt":                  "; in words: .chapters.vtt, .vtt, .srt, .txt, .wav",
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
