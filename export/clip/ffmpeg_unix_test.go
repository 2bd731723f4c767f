//go:build unix

package clip

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"homeside/export"
	"homeside/export/exporttest"
)

// fakeFFmpeg puts a shell script in ffmpeg's place. It notes its own process and
// that of a child that would sleep for ever.
func fakeFFmpeg(t *testing.T, script string) (pids string) {
	t.Helper()
	folder := t.TempDir()
	pids = filepath.Join(folder, "pids")
	text := fmt.Sprintf("#!/bin/sh\nsleep 1000 2>/dev/null </dev/null >/dev/null &\necho $$ $! > %s.new; mv %s.new %s\nfor last; do :; done\n%s\n", pids, pids, pids, script)
	if err := os.WriteFile(filepath.Join(folder, "ffmpeg"), []byte(text), 0o700); err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", folder+string(os.PathListSeparator)+os.Getenv("PATH"))
	return pids
}

// An ffmpeg that dies or hangs, or a cancelled export, gives an error with its
// last line and leaves no file and no process.
func TestFFmpegThatFails(t *testing.T) {
	writers := map[string]func(context.Context, io.Writer, export.Source, *export.Options, patient) error{".mp4": writeMP4, ".webm": writeWebM, ".mov": writeMOV}
	for _, c := range []struct {
		name, script string
		want         string
		cancelled    bool
	}{
		{"dies at once", "kill $!; echo first >&2; echo 'no such encoder' >&2; exit 3", "ffmpeg failed (exit status 3): no such encoder", false},
		{"dies in the middle", "kill $!; head -c 200000 >/dev/null; echo half >\"$last\"; echo 'disk is full' >&2; exit 1", "ffmpeg failed (exit status 1): disk is full", false},
		{"reads nothing", "echo half >\"$last\"; echo waiting >&2; wait", "ffmpeg did nothing for 1.5s and was stopped: waiting", false},
		{"does not end", "cat >/dev/null; echo half >\"$last\"; echo flushing >&2; wait", "ffmpeg did nothing for 1.5s and was stopped: flushing", false},
		{"is cancelled", "head -c 3000000 >/dev/null; echo half >\"$last\"; wait", "context canceled", true},
	} {
		for ext, write := range writers {
			slow := strings.Contains(c.want, "did nothing")
			if slow && ext != ".mp4" {
				continue // they wait alike
			}
			wait := time.Minute
			if slow {
				wait = 1500 * time.Millisecond
			}
			checkFails(t, c.name+", "+ext, c.script, c.want, c.cancelled, func(ctx context.Context, w io.Writer, o *export.Options) error {
				return write(ctx, w, play, o, wait)
			})
		}
	}
}

func checkFails(t *testing.T, name, script, want string, cancelled bool, write func(context.Context, io.Writer, *export.Options) error) {
	t.Helper()
	pids, temp := fakeFFmpeg(t, script), t.TempDir()
	t.Setenv("TMPDIR", temp)
	before := runtime.NumGoroutine()
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	o := small()
	o.Track = tones(0.5) // one more file to be gone
	o.Progress = func(done, _ int) {
		if cancelled && done == 5 {
			waitFor(t, pids) // frames may wait in the pipe before the script has begun
			cancel()
		}
	}
	var out strings.Builder
	err := write(ctx, &out, o)
	if err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "\n") {
		t.Errorf("an ffmpeg that %s: got error %v, want %q", name, err, want)
	}
	if left := exporttest.Files(t, temp); len(left) != 0 || out.Len() != 0 {
		t.Errorf("an ffmpeg that %s: %v is left behind, %d bytes written", name, left, out.Len())
	}
	checkGone(t, name, pids)
	if after := goroutinesDownTo(before); after > before {
		t.Errorf("an ffmpeg that %s: %d goroutines, want %d as before", name, after, before)
	}
}

// waitFor waits for a file.
func waitFor(t *testing.T, path string) {
	t.Helper()
	for began := time.Now(); ; runtime.Gosched() {
		if _, err := os.Stat(path); err == nil {
			return
		}
		if time.Since(began) > 10*time.Second {
			t.Errorf("%s is not there", path)
			return
		}
	}
}

// checkGone waits until the processes have ended.
func checkGone(t *testing.T, name, pids string) {
	t.Helper()
	b, err := os.ReadFile(pids)
	if err != nil {
		t.Fatal(err)
	}
	for _, field := range strings.Fields(string(b)) {
		pid, err := strconv.Atoi(field)
		if err != nil {
			t.Fatal(err)
		}
		for began := time.Now(); running(pid); runtime.Gosched() { // the system takes its time to bury it
			if time.Since(began) > 10*time.Second {
				t.Fatalf("an ffmpeg that %s: process %d still runs", name, pid)
			}
		}
	}
}

// running says whether a process is alive; a dead one that nobody has asked
// about is not.
func running(pid int) bool {
	if syscall.Kill(pid, 0) != nil {
		return false
	}
	stat, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	return err != nil || !strings.Contains(string(stat), ") Z ")
}
