//go:build unix

package clip

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// An ffmpeg that has done its work has done it, whatever else it left running;
// that is ended.
func TestFFmpegThatLeavesSomething(t *testing.T) {
	pids := fakeFFmpeg(t, `cat >/dev/null; echo whole >"$last"; sleep 1000 </dev/null >/dev/null & echo $$ $! >>`+"$0.pids"+`; kill -0 $!`)
	var out strings.Builder
	if err := writeMP4(context.Background(), &out, play, small(), time.Minute); err != nil || out.String() != "whole\n" {
		t.Errorf("an ffmpeg that leaves something running: %q, error %v, want the whole file", out.String(), err)
	}
	checkGone(t, "leaves something running", pids)
	checkGone(t, "leaves something running", filepath.Join(filepath.Dir(pids), "ffmpeg.pids"))
}

// The file that ffmpeg makes is a sign, also when it is written over.
func TestSignsOfTheFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "clip")
	p := &ffmpeg{said: &tail{}, cmd: &exec.Cmd{Process: &os.Process{Pid: 1 << 23}}}
	before := p.signs(path)
	for _, text := range []string{"abc", "abcd", "ABCD"} {
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		if text == "ABCD" { // of the same size
			if err := os.Chtimes(path, time.Time{}, time.Now().Add(time.Second)); err != nil {
				t.Fatal(err)
			}
		}
		now := p.signs(path)
		if now == before {
			t.Errorf("with %q in the file the signs are as before: %+v", text, now)
		}
		before = now
	}
}
