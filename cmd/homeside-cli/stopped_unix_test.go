//go:build unix

package main

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"
	"time"

	"homeside/export/exporttest"
)

// asProgram, set to anything, has this test be the program.
const asProgram = "HOMESIDE_TEST_CLI"

func TestMain(m *testing.M) {
	if os.Getenv(asProgram) != "" {
		main()
	}
	os.Exit(m.Run())
}

// started is the program as a process of its own.
type started struct {
	*exec.Cmd
	said bytes.Buffer
}

// start starts the program in a folder, after what a shell prepares.
func start(t *testing.T, prepare, folder string, args ...string) *started {
	t.Helper()
	s := &started{Cmd: exec.Command("sh", append([]string{"-c", prepare + ` exec "$0" "$@"`, os.Args[0]}, args...)...)}
	s.Dir, s.Stderr, s.Env = folder, &s.said, append(os.Environ(), asProgram+"=1")
	if err := s.Start(); err != nil {
		t.Fatal(err)
	}
	return s
}

// until waits for something, as long as it may take on a busy machine.
func until(t *testing.T, what string, done func() bool) {
	t.Helper()
	for began := time.Now(); !done(); runtime.Gosched() {
		if time.Since(began) > 2*time.Minute {
			t.Fatalf("waited in vain until %s", what)
		}
	}
}

// underWay says whether something of a program's is being made in a folder.
func underWay(folder string) bool {
	found, err := filepath.Glob(filepath.Join(folder, ".homeside-*"))
	return err == nil && len(found) > 0
}

// fakeFFmpeg puts one in ffmpeg's place that takes frames for ever and has a child
// besides; it notes both processes in a file.
func fakeFFmpeg(t *testing.T) (pids string) {
	t.Helper()
	folder := t.TempDir()
	pids = filepath.Join(folder, "pids")
	script := fmt.Sprintf("#!/bin/sh\nsleep 1000 </dev/null >/dev/null 2>&1 &\nfor last; do :; done\necho half >\"$last\"\necho $$ $! >%s.new; mv %s.new %s\nhead -c 100000 >/dev/null\nwait\n", pids, pids, pids)
	if err := os.WriteFile(filepath.Join(folder, "ffmpeg"), []byte(script), 0o700); err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", folder+string(os.PathListSeparator)+os.Getenv("PATH"))
	return pids
}

// long are arguments of an export that does not end soon.
const long = "export lesson.json --size 1080x1920 --fps 50 --speed 0.05 --out "

// Whatever ends the program, an export under way leaves no file, no folder and no
// process, says so in a line and exits with 2.
func TestEndedBySignals(t *testing.T) {
	for _, end := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP} {
		if signal.Ignored(end) {
			continue // whoever runs this wants it ignored
		}
		for _, args := range []string{long + "x.gif", long + "x.avi", long + "x.apng", long + "x.frames", long + "x.mp4",
			long + "out/{play}.{ext} --play all --format gif,mp4 --jobs 3"} {
			if end != syscall.SIGTERM && !strings.Contains(args, "mp4") {
				continue // all are ended alike
			}
			t.Run(end.String()+" "+args[len(long):], func(t *testing.T) { checkEnded(t, end, args) })
		}
	}
}

func checkEnded(t *testing.T, end syscall.Signal, args string) {
	folder := filepath.Dir(lessonFile(t, drill()))
	pids := fakeFFmpeg(t)
	t.Setenv("TMPDIR", t.TempDir())
	s := start(t, "", folder, strings.Fields(args)...)
	files := folder
	if strings.Contains(args, "out/") {
		files = filepath.Join(folder, "out")
	}
	until(t, "something is being made", func() bool { return underWay(files) })
	if strings.Contains(args, "mp4") {
		until(t, "ffmpeg runs", func() bool { _, err := os.Stat(pids); return err == nil })
	}
	if err := s.Process.Signal(end); err != nil {
		t.Fatal(err)
	}
	err := s.Wait()
	var exit *exec.ExitError
	if !errors.As(err, &exit) || exit.ExitCode() != exitBad || !strings.Contains(s.said.String(), "cancelled") || strings.Count(s.said.String(), "\n") != 1 {
		t.Errorf("ended with %v, saying %q, want exit %d and a line", err, s.said.String(), exitBad)
	}
	left := append(exporttest.Files(t, files), exporttest.Files(t, os.Getenv("TMPDIR"))...)
	if files == folder && len(left) == 1 || files != folder && len(left) == 0 { // the lesson itself
		left = nil
	}
	if left != nil {
		t.Errorf("%v is left", left)
	}
	checkGone(t, pids)
}

// checkGone waits until the processes that ffmpeg noted, if it ran, have ended.
func checkGone(t *testing.T, pids string) {
	t.Helper()
	noted, err := os.ReadFile(pids)
	if err != nil {
		return
	}
	var mine, child int
	if _, err := fmt.Sscan(string(noted), &mine, &child); err != nil {
		t.Fatal(err)
	}
	for _, pid := range []int{mine, child} {
		until(t, "a process of ffmpeg has ended", func() bool {
			stat, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
			return syscall.Kill(pid, 0) != nil || err == nil && strings.Contains(string(stat), ") Z ")
		})
	}
}

// An ffmpeg that dies is told with its last line, not taken for a wish to end.
func TestFFmpegDiesUnderTheProgram(t *testing.T) {
	fakes := t.TempDir()
	if err := os.WriteFile(filepath.Join(fakes, "ffmpeg"), []byte("#!/bin/sh\nhead -c 5000000 >/dev/null\necho 'no space left' >&2\nexit 1\n"), 0o700); err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", fakes+string(os.PathListSeparator)+os.Getenv("PATH"))
	folder := filepath.Dir(lessonFile(t, drill()))
	for _, ext := range []string{"mp4", "mov"} {
		s := start(t, "", folder, strings.Fields(long+"x."+ext)...)
		if err, want := s.Wait(), "save x."+ext+": ffmpeg failed (exit status 1): no space left\n"; err == nil || !strings.HasSuffix(s.said.String(), want) {
			t.Errorf("%s: ended with %v, saying %q, want %q", ext, err, s.said.String(), want)
		}
	}
	checkFiles(t, folder, "lesson.json")
}

// A program that is to outlive its terminal does.
func TestHangUpIsIgnoredUnderNohup(t *testing.T) {
	folder := filepath.Dir(lessonFile(t, drill()))
	s := start(t, `trap "" HUP;`, folder, strings.Fields("export lesson.json --size 360x640 --fps 50 --speed 0.2 --out x.gif")...)
	until(t, "something is being made", func() bool { return underWay(folder) })
	if err := s.Process.Signal(syscall.SIGHUP); err != nil {
		t.Fatal(err)
	}
	if err := s.Wait(); err != nil {
		t.Errorf("ended with %v, saying %q, want the clip", err, s.said.String())
	}
	checkFiles(t, folder, "lesson.json", "x.gif")
}

// A batch that nobody listens to any more ends, and leaves whole files only.
func TestBatchThatNobodyHears(t *testing.T) {
	folder := filepath.Dir(lessonFile(t, drill()))
	hear, tell, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	c := exec.Command(os.Args[0], strings.Fields("export lesson.json --play all --out {play}.{ext} --format png,svg,pdf,gif --size 720x1280 --jobs 2")...)
	c.Dir, c.Stderr, c.Env = folder, tell, append(os.Environ(), asProgram+"=1")
	if err := errors.Join(c.Start(), tell.Close()); err != nil {
		t.Fatal(err)
	}
	line, err := bufio.NewReader(hear).ReadString('\n')
	if err := errors.Join(err, hear.Close()); err != nil || !strings.HasPrefix(line, "1/12 wrote ") {
		t.Fatalf("the first line is %q (%v)", line, err)
	}
	var exit *exec.ExitError
	if err := c.Wait(); !errors.As(err, &exit) || exit.ExitCode() != exitBad {
		t.Errorf("ended with %v, want exit %d", err, exitBad)
	}
	for _, path := range exporttest.Files(t, folder) {
		if strings.Contains(path, ".homeside") {
			t.Errorf("%s is left", path)
		}
	}
}
