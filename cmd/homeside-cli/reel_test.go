package main

import (
	"image/color"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/lesson"
)

// reelDrill is the drill with two reels.
func reelDrill() lesson.Lesson {
	l := spokenDrill()
	from, to := lesson.Anchor{Offset: -0.5}, lesson.Anchor{Offset: 0.5}
	l.Reels = []lesson.Reel{
		{Name: "For phones", Title: lesson.Card{Heading: "Drill", Length: 1}, Takes: []lesson.Take{{Play: 1, From: &from, To: &to, Speed: 0.5}}},
		{Name: "Broken", Takes: []lesson.Take{{Play: 9}, {Play: 2, From: &to, To: &from}}},
		{Name: "Half", Takes: []lesson.Take{{Play: 9}, {Play: 3, From: &from, To: &to}}},
	}
	return l
}

func TestExportReel(t *testing.T) {
	path := lessonFile(t, reelDrill())
	for _, which := range []string{"1", "for PHONES"} {
		out := filepath.Join(t.TempDir(), "x.gif")
		if _, stderr, code := cli("export", path, "--out", out, "--reel", which, "--size", "64x96", "--fps", "10"); code != exitOK || stderr != "" {
			t.Fatalf("export --reel %q: exit %d, %q", which, code, stderr)
		}
		if got := exporttest.Probe(t, out); got.Frames != 30 || got.Width != 64 || got.Height != 96 {
			t.Errorf("export --reel %q: %+v, want 30 frames of 64 x 96: a card of 1 s and 1 s at half speed", which, got)
		}
	}
	want := "WEBVTT\n\n1\n00:00:00.000 --> 00:00:01.000\nDrill\n\n2\n00:00:01.000 --> 00:00:03.000\nWatch &amp; wait &lt;now&gt; --&gt; go\n\n3\n00:00:01.000 --> 00:00:03.000\nnear1 shows near2: switch.\n"
	out := filepath.Join(t.TempDir(), "x.vtt")
	if _, stderr, code := cli("export", path, "--out", out, "--reel", "1"); code != exitOK || stderr != "" {
		t.Fatalf("export --reel 1 to x.vtt: exit %d, %q", code, stderr)
	}
	if got, err := os.ReadFile(out); err != nil || string(got) != want {
		t.Errorf("captions of reel 1: %q, %v; want %q", got, err, want)
	}
}

// What cannot be shown is told of; a reel of nothing is an error.
func TestExportReelTells(t *testing.T) {
	path := lessonFile(t, reelDrill())
	out := filepath.Join(t.TempDir(), "x.png")
	if _, stderr, code := cli("export", path, "--out", out, "--reel", "Half"); code != exitOK || stderr != "Left out: take 1: its play is not there.\n" {
		t.Errorf("export --reel Half: exit %d, %q; want it to say that play 9 is not there", code, stderr)
	}
	if _, stderr, code := cli("export", path, "--out", out, "--reel", "2"); code != exitBad || !strings.Contains(stderr, `reel "Broken": there is nothing to show`) {
		t.Errorf("export --reel 2: exit %d, %q; want that there is nothing to show", code, stderr)
	}
}

// A clip made to last 12.4 s does, in frames of a 25th.
func TestExportFit(t *testing.T) {
	path := lessonFile(t, reelDrill())
	for _, args := range []string{"--fit 12.4", "--fit 12.4 --recipe slow-fast", "--fit 12.4 --recipe loop --play 2", "--fit 12.4 --beside 3 --camera follow --on far2"} {
		out := filepath.Join(t.TempDir(), "x.gif")
		all := append([]string{"export", path, "--out", out, "--size", "48x48"}, strings.Fields(args)...)
		_, stderr, code := cli(all...)
		if code != exitOK {
			t.Errorf("export %s: exit %d, %q", args, code, stderr)
			continue
		}
		if got := exporttest.Probe(t, out); math.Abs(got.DurationS-12.4) > 0.041 {
			t.Errorf("export %s lasts %v s, want 12.4", args, got.DurationS)
		}
	}
	_, stderr, code := cli("export", path, "--out", filepath.Join(t.TempDir(), "x.png"), "--fit", "6")
	if code != exitOK || !strings.HasPrefix(stderr, "No time for: ") {
		t.Errorf("export --fit 6: exit %d, %q; want it to say what there is no time for", code, stderr)
	}
}

func TestExportReelRefuses(t *testing.T) {
	path := lessonFile(t, reelDrill())
	for args, want := range map[string]string{
		"--reel 4":                          `--reel "4": the lesson has 1 "For phones", 2 "Broken", 3 "Half"`,
		"--reel 1 --fit 20":                 "give one or the other",
		"--reel 1 --play 2":                 "--play: a reel says itself",
		"--reel 1 --view lying":             "--view: the takes of a reel have their own cameras",
		"--recipe loop":                     "--recipe is for a reel that is made: give --fit as well",
		"--fit 1":                           "too short: one pass at match speed takes",
		"--fit 20 --recipe soup":            "--recipe \"soup\": want one of teach, slow-fast, loop",
		"--fit 20 --camera drone":           "--camera \"drone\": want court, half",
		"--fit 20 --on near3":               "--on:",
		"--fit 20 --beside 9":               "--beside 9: the lesson has 3 plays",
		"--fit nan":                         "must be a number",
		"--reel all --format gif --shard 3": "--shard",
		"--fit 20 --play 9":                 "--play 9: the lesson has 3 plays",
		"--reel 1 --at 99":                  "at 99 s is outside the 0 to 3 s",
	} {
		out := filepath.Join(t.TempDir(), "x.png")
		_, stderr, code := cli(append([]string{"export", path, "--out", out}, strings.Fields(args)...)...)
		if code != exitBad || !strings.Contains(stderr, want) || len(exporttest.Files(t, filepath.Dir(out))) > 0 {
			t.Errorf("export %s: exit %d, %q, want %q and no file", args, code, stderr, want)
		}
	}
	plain := lessonFile(t, drill())
	if _, stderr, code := cli("export", plain, "--out", filepath.Join(t.TempDir(), "{reel}.gif"), "--reel", "all"); code != exitBad || !strings.Contains(stderr, "the lesson has no reels") {
		t.Errorf("export --reel all of a lesson without reels: exit %d, %q", code, stderr)
	}
}

// A batch of reels writes what can be written and goes on past what cannot.
func TestExportReelBatch(t *testing.T) {
	path := lessonFile(t, reelDrill())
	folder := t.TempDir()
	_, stderr, code := cli("export", path, "--out", filepath.Join(folder, "{reel}-{title}.{ext}"), "--reel", "all", "--format", "gif,srt", "--size", "48x48", "--fps", "10")
	if code != exitFaults || !strings.Contains(stderr, "4 written, 0 current, 2 failed") || !strings.Contains(stderr, "3-Half.gif - Left out: take 1") {
		t.Errorf("a batch of three reels: exit %d, %q; want 4 written and 2 failed", code, stderr)
	}
	for _, name := range []string{"1-For-phones.gif", "1-For-phones.srt", "3-Half.gif", "3-Half.srt"} {
		if _, err := os.Stat(filepath.Join(folder, name)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	folder = t.TempDir()
	_, stderr, code = cli("export", path, "--out", filepath.Join(folder, "{play}.gif"), "--play", "all", "--fit", "8", "--recipe", "loop", "--size", "32x32", "--fps", "5")
	if files := exporttest.Files(t, folder); code != exitOK || len(files) != 3 {
		t.Errorf("a batch of fitted plays: exit %d, %q, files %v; want three", code, stderr, files)
	}
}

// On a ground to be keyed out or on none, a card leaves what is round its words to
// what it is laid over, in pictures and in clips.
func TestCardOverFootage(t *testing.T) {
	path := lessonFile(t, reelDrill())
	for ground, want := range map[string]color.NRGBA{"clear": {}, "green": export.KeyGreen} {
		for _, name := range []string{"x.png", "x.apng"} {
			out := filepath.Join(t.TempDir(), name)
			args := []string{"export", path, "--out", out, "--reel", "1", "--size", "180x320", "--background", ground}
			if _, stderr, code := cli(args...); code != exitOK || stderr != "" {
				t.Fatalf("%v: exit %d, %q", args, code, stderr)
			}
			img := exporttest.Decode(t, out)[0]
			if got := img.RGBAAt(2, 2); got.A != want.A || want.A > 0 && (got.R != want.R || got.G != want.G || got.B != want.B) {
				t.Errorf("%s on %s: the corner of a card is %v, want %v", name, ground, got, want)
			}
			if got := img.RGBAAt(90, 160); got.A != 0xFF {
				t.Errorf("%s on %s: the middle of a card is %v, want its plate", name, ground, got)
			}
		}
	}
}
