package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"homeside/export/exporttest"
)

// inFolder writes the drill as lesson.json into a folder of its own and works there.
func inFolder(t *testing.T) {
	t.Helper()
	from := lessonFile(t, drill())
	t.Chdir(filepath.Dir(from))
}

// batchOf are the arguments of a small batch.
func batchOf(line string) []string {
	return append([]string{"export", "lesson.json", "--size", "32x32"}, strings.Fields(line)...)
}

const everything = "--play all --out out/{play}-{title}.{ext} --format gif,png"

var sixFiles = []string{
	"1-from-the-odd-court.gif", "1-from-the-odd-court.png", "2-one-shot.gif", "2-one-shot.png",
	"3-from-the-far-end.gif", "3-from-the-far-end.png",
}

// checkBatch runs a batch and wants an exit code and what it tells, line by line.
func checkBatch(t *testing.T, line string, code int, want ...string) {
	t.Helper()
	out, errs, got := cli(batchOf(line)...)
	lines := strings.Split(strings.TrimSuffix(errs, "\n"), "\n")
	if got != code || out != "" || !slices.Equal(lines, want) {
		t.Errorf("export %s: exit %d, %q, lines\n%s\nwant exit %d, lines\n%s", line, got, out, strings.Join(lines, "\n"), code, strings.Join(want, "\n"))
	}
}

// namesIn are the names of what is in a folder.
func namesIn(t *testing.T, folder string) []string {
	t.Helper()
	var names []string
	for _, path := range exporttest.Files(t, folder) {
		names = append(names, filepath.Base(path))
	}
	return names
}

func checkFiles(t *testing.T, folder string, want ...string) {
	t.Helper()
	if got := namesIn(t, folder); !slices.Equal(got, want) {
		t.Errorf("folder %s has %q, want %q", folder, got, want)
	}
}

// A batch makes its folder, tells of every file, and each file is what a single
// export writes, with any number of jobs.
func TestBatch(t *testing.T) {
	inFolder(t)
	checkBatch(t, everything, exitOK,
		"1/6 wrote out/1-from-the-odd-court.gif", "2/6 wrote out/1-from-the-odd-court.png", "3/6 wrote out/2-one-shot.gif",
		"4/6 wrote out/2-one-shot.png", "5/6 wrote out/3-from-the-far-end.gif", "6/6 wrote out/3-from-the-far-end.png",
		"6 written, 0 current, 0 failed")
	checkFiles(t, "out", sixFiles...)
	_, errs, code := cli(batchOf(strings.Replace(everything, "out/", "four/", 1) + " --jobs 4")...)
	lines := strings.Split(errs, "\n")
	for i, line := range lines[:min(6, len(lines))] { // the order is that of getting done, the count is not
		if want := fmt.Sprintf("%d/6 wrote four/", i+1); code != exitOK || !strings.HasPrefix(line, want) {
			t.Errorf("with 4 jobs: exit %d, line %q, want %q", code, line, want)
		}
	}
	checkFiles(t, "four", sixFiles...)
	for i, name := range sixFiles {
		if _, errs, code := cli(batchOf("--out alone" + filepath.Ext(name) + " --play " + string(rune('1'+i/2)))...); code != exitOK {
			t.Fatalf("export %s alone: exit %d, %s", name, code, errs)
		}
		want := read(t, "alone"+filepath.Ext(name))
		if got := read(t, "out/"+name); got != read(t, "four/"+name) || withoutRemark(got) != want {
			t.Errorf("%s of a batch differs from the same file exported alone", name)
		}
	}
}

// withoutRemark is a PNG or GIF without what a batch adds to it: a chunk of 12 bytes
// and "Comment", zero, and the remark, or an extension of 4 and the remark.
func withoutRemark(file string) string {
	const remark = len("homeside:") + 32
	at := strings.LastIndex(file, "homeside:")
	if at < 0 {
		return "no remark"
	}
	if strings.HasPrefix(file, "GIF") {
		return file[:at-3] + file[at+remark+1:]
	}
	return file[:at-8-len("Comment ")] + file[at+remark+4:]
}

func read(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// One play in several formats, and all plays in the format of the ending; --at
// is for the stills of a mixed batch, --to for its clips.
func TestBatchForms(t *testing.T) {
	inFolder(t)
	checkBatch(t, "--play 2 --out x.{ext} --format .PNG,gif --at 0.5 --to 0", exitOK, "1/2 wrote x.png", "2/2 wrote x.gif", "2 written, 0 current, 0 failed")
	if n := exporttest.Probe(t, "x.gif").Frames; n != 38 { // -1.5 to 0 s at 25 frames: 37.5
		t.Errorf("x.gif has %d frames, want 38", n)
	}
	checkBatch(t, "--play all --out {title}/{play}.svg", exitOK, "1/3 wrote from-the-odd-court/1.svg", "2/3 wrote one-shot/2.svg",
		"3/3 wrote from-the-far-end/3.svg", "3 written, 0 current, 0 failed")
}

// The shards of a batch together are the batch; one without files is no error.
func TestBatchShards(t *testing.T) {
	inFolder(t)
	for _, s := range []string{"1/4", "2/4", "3/4", "4/4"} {
		if _, errs, code := cli(batchOf(everything + " --shard " + s)...); code != exitOK || strings.Count(errs, "wrote") != 1 && strings.Count(errs, "wrote") != 2 {
			t.Errorf("shard %s: exit %d, %q, want 1 or 2 of 6 files", s, code, errs)
		}
	}
	checkFiles(t, "out", sixFiles...)
	checkBatch(t, everything+" --shard 7/7", exitOK, "0 written, 0 current, 0 failed")
}

// setTime dates a file some seconds after a fixed moment.
func setTime(t *testing.T, path string, seconds int) {
	t.Helper()
	at := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC).Add(time.Duration(seconds) * time.Second)
	if err := os.Chtimes(path, at, at); err != nil {
		t.Fatal(err)
	}
}

// What was made of this lesson with these flags is current, nothing else; without
// --resume every file is written.
func TestBatchResume(t *testing.T) {
	inFolder(t)
	all := "--play all --out {play}.png"
	for _, path := range []string{"1.png", "2.png"} {
		if err := os.WriteFile(path, []byte(strings.Repeat("before", 100)), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	checkBatch(t, all, exitOK, "1/3 wrote 1.png", "2/3 wrote 2.png", "3/3 wrote 3.png", "3 written, 0 current, 0 failed")
	checkBatch(t, all+" --resume --jobs 1", exitOK, "1/3 current, skipped 1.png", "2/3 current, skipped 2.png", "3/3 current, skipped 3.png", "0 written, 3 current, 0 failed")
	checkBatch(t, "--play 2 --out {play}.{ext} --format png --resume", exitOK, "1/1 current, skipped 2.png", "0 written, 1 current, 0 failed")
	for path, size := range map[string]int64{"1.png": 0, "2.png": 300} {
		if err := os.Truncate(path, size); err != nil {
			t.Fatal(err)
		}
	}
	checkBatch(t, all+" --resume", exitOK, "1/3 wrote 1.png", "2/3 wrote 2.png", "3/3 current, skipped 3.png", "2 written, 1 current, 0 failed")
	if err := os.Rename("1.png", "3.png"); err != nil {
		t.Fatal(err)
	}
	checkBatch(t, all+" --resume", exitOK, "1/3 wrote 1.png", "2/3 current, skipped 2.png", "3/3 wrote 3.png", "2 written, 1 current, 0 failed")
	checkBatch(t, all, exitOK, "1/3 wrote 1.png", "2/3 wrote 2.png", "3/3 wrote 3.png", "3 written, 0 current, 0 failed")
}

// Every format that has room for a remark is made anew with other settings, and of
// another lesson; words are always written.
func TestBatchResumeOfOtherSettings(t *testing.T) {
	inFolder(t)
	line := "--play 1 --from -1.2 --to -1 --out x.{ext} --format png,gif,apng,avi,frames,svg,pdf,vtt"
	const anew, kept = "\n8 written, 0 current, 0 failed\n", "\n1 written, 7 current, 0 failed\n"
	checkEnd := func(want string, more ...string) {
		t.Helper()
		if _, errs, code := cli(append(batchOf(line), more...)...); code != exitOK || !strings.HasSuffix(errs, want) {
			t.Errorf("with %q: exit %d, %q, want %q", more, code, errs, want)
		}
	}
	checkEnd(anew)
	checkEnd(kept, "--resume")
	for _, other := range [][]string{{"--size", "32x48"}, {"--speed", "0.5"}, {"--view", "lying"}, {"--look", "night"}, {"--measures", "m"}, {"--background", "green"}, {"--at", "0"}, {"--large-text"}} {
		checkEnd(anew, append(other, "--resume")...)
		checkEnd(kept, append(other, "--resume")...)
	}
	checkEnd(anew, "--resume")
	l := drill()
	l.Plays[0].Shots[0].Spin = 300
	if err := os.Rename(lessonFile(t, l), "lesson.json"); err != nil {
		t.Fatal(err)
	}
	checkEnd(anew, "--resume")
	checkEnd(kept, "--resume")
}

// A lesson that is saved while its files are written: they show how it was, fail,
// and are written again by the next --resume.
func TestBatchLessonChanged(t *testing.T) {
	inFolder(t)
	setTime(t, "lesson.json", 0)
	later := []byte(read(t, "lesson.json") + "\n")
	ctx := &ticking{Context: t.Context(), cancel: func() {
		if err := os.WriteFile("lesson.json", later, 0o600); err != nil {
			t.Error(err)
		}
	}, most: 3}
	_, errs, code := cliIn(ctx, batchOf("--play 1 --out x.{ext} --format png")...)
	if want := "1/1 failed: save x.png: the lesson was changed meanwhile, this is how it was before\n"; code != exitFaults || !strings.HasPrefix(errs, want) {
		t.Errorf("lesson changed meanwhile: exit %d, %q, want exit %d, %q", code, errs, exitFaults, want)
	}
	checkBatch(t, "--play 1 --out x.{ext} --format png --resume", exitOK, "1/1 wrote x.png", "1 written, 0 current, 0 failed")
}

// What cannot be written is told in a line, the rest is written, and the exit
// code is not 0.
func TestBatchFailureGoesOn(t *testing.T) {
	inFolder(t)
	if err := os.MkdirAll("out/2-one-shot.png", 0o700); err != nil {
		t.Fatal(err)
	}
	checkBatch(t, everything, exitFaults,
		"1/6 wrote out/1-from-the-odd-court.gif", "2/6 wrote out/1-from-the-odd-court.png", "3/6 wrote out/2-one-shot.gif",
		"4/6 failed: save out/2-one-shot.png: this is a folder, not a file",
		"5/6 wrote out/3-from-the-far-end.gif", "6/6 wrote out/3-from-the-far-end.png", "5 written, 0 current, 1 failed")
	checkFiles(t, "out", sixFiles...)
	if n := len(exporttest.Files(t, "out/2-one-shot.png")); n != 0 {
		t.Errorf("the folder in the way has %d files, want 0", n)
	}
	t.Setenv("PATH", "")
	_, errs, code := cli(batchOf("--play 2 --out y.{ext} --format mp4,png")...)
	if code != exitFaults || !strings.HasPrefix(errs, "1/2 failed: save y.mp4: ") || !strings.HasSuffix(errs, "\n2/2 wrote y.png\n1 written, 0 current, 1 failed\n") {
		t.Errorf("without ffmpeg: exit %d, %q", code, errs)
	}
}

// Cancelled at any moment: exit 2, every file that is there is whole, and
// nothing else is.
func TestBatchCancelled(t *testing.T) {
	inFolder(t)
	checkExit := func(ctx *ticking, folder string, want int) string {
		_, errs, code := cliIn(ctx, batchOf(strings.Replace(everything, "out/", folder+"/", 1)+" --jobs 2")...)
		if code != want {
			t.Fatalf("batch into %s: exit %d, want %d: %s", folder, code, want, errs)
		}
		return errs
	}
	whole := newTicking(0)
	checkExit(whole, "whole", exitOK)
	for i, most := range []int64{1, whole.asked.Load() / 3, whole.asked.Load() * 2 / 3} {
		folder := "part" + string(rune('a'+i))
		errs := checkExit(newTicking(most), folder, exitBad)
		left := namesIn(t, folder)
		if n := strings.Count(errs, "/6 wrote"); n != len(left) || n == 6 || !strings.Contains(errs, "homeside-cli: cancelled: ") || strings.Contains(errs, "failed: save") {
			t.Errorf("cancelled when asked the %d. time: %q, with %q left", most, errs, left)
		}
		for _, name := range left {
			if read(t, folder+"/"+name) != read(t, "whole/"+name) {
				t.Errorf("cancelled when asked the %d. time: %s is not whole", most, name)
			}
		}
	}
}

// A wrong call is one line and exit 2, and neither a file nor a folder is made.
func TestBatchRefuses(t *testing.T) {
	inFolder(t)
	const all = "--play all --out out/{play}.{ext} --format gif,png "
	for line, want := range map[string]string{
		"--play all --out out/{play}.{ext}":                       "--out out/{play}.{ext}: say with --format what {ext} is",
		"--play all --out out/{play}":                             "the name must end in one of",
		"--play all --out out/{number}.gif":                       "there is no {number}; there are {play} or {reel}, {title}, {ext}",
		"--play all --out out/x.gif":                              ".gif of play 1 and .gif of play 2 have the same name: out/x.gif",
		"--play all --out out/{title}.{ext} --format gif,bmp":     `no format is called "bmp"; there are .png, `,
		"--play all --out out/{title}.{ext} --format gif,":        `no format is called ""`,
		"--play all --out out/{title}.{ext} --format gif,.GIF":    ".gif is there twice",
		"--play all --out out/{title}.gif --format gif,png":       "a name for .png must end in .png",
		"--play al --out out/x.gif":                               `invalid argument "al" for "--play"`,
		"--play 4 --out out/x.gif --format gif":                   "lesson.json: --play 4: the lesson has 3 plays",
		"--play 1 --out out/x.gif --jobs 2":                       "--jobs is for several files at once",
		"--play 1 --out out/x.gif --shard 1/2":                    "--shard is for several files at once",
		"--out out/x.gif --resume":                                "--resume is for several files at once",
		all + "--jobs 0":                                          "--jobs 0: want at least 1",
		all + "--jobs -3":                                         "--jobs -3: want at least 1",
		all + "--shard 3/2":                                       `--shard "3/2": want part/parts such as 2/8`,
		all + "--size 8x8":                                        "width 8 px is outside the 16 to 8192 px",
		all + "--fps 60":                                          "--fps 60: .gif has at most 50",
		all + "--view sideways":                                   `--view "sideways": want one of upright, lying, half-near, half-far, behind`,
		all + "--from 2 --to 1":                                   "from 2 s is not before to 1 s",
		"--play all --out out/{play}.png --fps 10":                "--fps is for clips, and there are none among the files",
		"--play all --out out/{play}.gif --at 1":                  "--at is for stills, and there are none among the files",
		"--play all --out lesson.json/{play}.gif":                 "make folder lesson.json: ",
		"--play all --out lesson.json/{title}/{play}.gif":         "make folder lesson.json/from-the-odd-court: ",
		"--play all --format gif":                                 `required flag(s) "out" not set`,
		"--play all --out out/{play}.gif extra":                   "accepts 1 arg(s), received 2",
		"--play all --out {play}{.gif --format gif --shard 1e0/2": `--shard "1e0/2"`,
	} {
		args := batchOf(line)
		out, errs, code := cli(args...)
		if text := checkRefused(t, args, out, errs, code); !strings.Contains(text, want) {
			t.Errorf("export %s says %q, want %q", line, text, want)
		}
		checkFiles(t, ".", "lesson.json")
	}
}

// Words and beeps of all plays come beside their clips, with the clips' times, as
// a single export writes them.
func TestBatchOfWords(t *testing.T) {
	inFolder(t)
	line := "--play all --out {play}.{ext} --format gif,vtt,chapters.vtt,wav,frames --from -1 --to 0 --fps 5 --speed 0.5"
	if _, errs, code := cli(batchOf(line)...); code != exitOK || !strings.HasSuffix(errs, "\n15 written, 0 current, 0 failed\n") {
		t.Fatalf("export %s: exit %d, %s", line, code, errs)
	}
	for _, ext := range []string{"vtt", "chapters.vtt", "wav"} {
		alone := "alone." + ext
		if _, errs, code := cli("export", "lesson.json", "--play", "2", "--out", alone, "--from", "-1", "--to", "0", "--speed", "0.5"); code != exitOK {
			t.Fatal(errs)
		}
		got, err := os.ReadFile("2." + ext)
		want, err2 := os.ReadFile(alone)
		if err != nil || err2 != nil || string(got) != string(want) || len(got) == 0 {
			t.Errorf("2.%s of a batch has %d bytes (%v, %v), want the %d of a single export", ext, len(got), err, err2, len(want))
		}
	}
	checkFiles(t, "3.frames", "000001.png", "000002.png", "000003.png", "000004.png", "000005.png", "000006.png", "000007.png", "000008.png", "000009.png", "000010.png")
	if _, errs, _ := cli(batchOf(line + " --resume")...); !strings.HasSuffix(errs, "\n9 written, 6 current, 0 failed\n") {
		t.Errorf("--resume says %s", errs)
	}
	for line, want := range map[string]string{
		"--format vtt --fps 10 --out {play}.{ext}":               "--fps is for clips, and there are none",
		"--format vtt,wav --background clear --out {play}.{ext}": "--background is for pictures and clips, and there are none",
		"--format png --from 0 --out {play}.{ext}":               "--from is for clips and words, and there are none",
		"--format png,mp4 --full-colour --out {play}.{ext}":      "--full-colour is for AVI clips, and there are none",
		"--format png,gif --background clear --out {play}.{ext}": "--background clear: .gif cannot be transparent",
		"--format vt --out {play}.{ext}":                         `no format is called "vt"; there are .png`,
	} {
		args := append([]string{"export", "lesson.json"}, strings.Fields(line)...)
		out, errs, code := cli(args...)
		if text := checkRefused(t, args, out, errs, code); !strings.Contains(text, want) {
			t.Errorf("export %s says %q, want %q", line, text, want)
		}
	}
}

// Letters that no font has are told, alone and in a batch, and drawn as boxes.
func TestExportSaysWhichLettersAreLacking(t *testing.T) {
	l := drill()
	l.Plays[0].Title, l.Teams[0].Players[0].Initials = "Stack → שלום", "中"
	path := lessonFile(t, l)
	t.Chdir(t.TempDir())
	const want = "No font here has → (U+2192), 中 (U+4E2D): pictures show empty boxes instead."
	for _, name := range []string{"x.png", "x.svg", "x.pdf", "x.gif"} {
		if _, errs, code := cli("export", path, "--out", name, "--size", "64x64"); code != exitOK || errs != name+": "+want+"\n" {
			t.Errorf("export --out %s: exit %d, %q, want %q", name, code, errs, want)
		}
	}
	if _, errs, code := cli("export", path, "--out", "x.pdf", "--sheet", "storyboard"); code != exitOK || !strings.Contains(errs, "x.pdf: "+want+"\n") {
		t.Errorf("export --sheet: exit %d, %q, want %q in it", code, errs, want)
	}
	if _, errs, code := cli("export", path, "--out", "x.html"); code != exitOK || !strings.Contains(errs, "x.html: No font here has 中 (U+4E2D)") {
		t.Errorf("export --out x.html: exit %d, %q, want it to say that 中 is lacking", code, errs) // the title is the browser's
	}
	_, errs, code := cli("export", path, "--play", "all", "--out", "{play}.{ext}", "--format", "png", "--size", "64x64")
	if wrote := strings.Split(errs, "\n"); code != exitOK || wrote[0] != "1/3 wrote 1.png - "+want || wrote[1] != "2/3 wrote 2.png - No font here has 中 (U+4E2D): pictures show empty boxes instead." {
		t.Errorf("a batch: exit %d, %q", code, errs)
	}
}
