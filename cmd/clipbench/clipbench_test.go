package main

import (
	"bytes"
	"context"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"homeside/export/formats"
)

// baseline builds the C program (Debian packages gcc, pkg-config, libcairo2-dev).
func baseline(t *testing.T) string {
	t.Helper()
	flags, err := exec.Command("pkg-config", "--cflags", "--libs", "cairo", "cairo-ft", "freetype2").Output()
	if err != nil {
		t.Fatalf("pkg-config: %v: install the Debian package libcairo2-dev", err)
	}
	program := filepath.Join(t.TempDir(), "baseline")
	args := append([]string{"-O2", "-Wall", "-Wextra", "-Werror", "-o", program, "../../testdata/baseline/baseline.c"}, strings.Fields(string(flags))...)
	if out, err := exec.Command("cc", args...).CombinedOutput(); err != nil {
		t.Fatalf("cc: %v: %s", err, out)
	}
	return program
}

// small is a job of few and small pictures.
func small(t *testing.T, scene string) job {
	t.Helper()
	j, err := jobOf(scene, 1, 4)
	if err != nil {
		t.Fatal(err)
	}
	j.width, j.height = 640, 360
	return j
}

// The baseline is fair: cairo, another drawer, draws the same pictures from the
// list. Edges and letters differ by how a pixel is counted, and its letters stand
// on whole pixels; a shape that is missing costs more.
func TestBaselineDrawsTheSame(t *testing.T) {
	program := baseline(t)
	for _, scene := range []string{still, moving} {
		j := small(t, scene)
		command, err := drawer(program, t.TempDir(), j)
		if err != nil {
			t.Fatal(err)
		}
		theirs, ended, err := printed(context.Background(), j, true, command...)
		if err != nil {
			t.Fatal(err)
		}
		ours := drawn(j)
		for i := range j.frames() {
			a, err := ours()
			b, err2 := theirs()
			if err != nil || err2 != nil {
				t.Fatal(err, err2)
			}
			if psnr := 10 * math.Log10(255*255/(squares(a, b)/float64(3*j.width*j.height))); psnr < 27 {
				t.Errorf("%s, frame %d: cairo's picture has PSNR %.1f dB beside ours, want 27", scene, i, psnr)
			}
		}
		if err := ended(); err != nil {
			t.Errorf("%s: the baseline ends with %v", scene, err)
		}
	}
}

// A list that is cut off is an error, not a picture.
func TestBaselineRefusesHalfAList(t *testing.T) {
	program, folder := baseline(t), t.TempDir()
	command, err := drawer(program, folder, small(t, still))
	if err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(command[1])
	if err == nil {
		err = os.WriteFile(command[1], data[:len(data)-10], 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
	if _, err := run(context.Background(), command); err == nil || !strings.Contains(err.Error(), "the list is cut off") {
		t.Errorf("half a list: error %v", err)
	}
}

// Both ways to make a clip give one of the frames that are counted, as like the
// drawing as the format allows.
func TestLikeness(t *testing.T) {
	j, folder := small(t, still), t.TempDir()
	for ext, want := range map[string]float64{".apng": math.Inf(1), ".avi": 36} {
		path := filepath.Join(folder, "x"+ext)
		if err := formats.Save(context.Background(), path, j.source, j.options()); err != nil {
			t.Fatal(err)
		}
		if got, err := likeness(context.Background(), j, path, drawn(j)); err != nil || got < want {
			t.Errorf("likeness of %s is %.1f dB, %v, want %.0f at least", ext, got, err, want)
		}
	}
	if got := squares([]byte{1, 2, 3, 9, 0, 0, 0, 0}, []byte{2, 0, 3, 0, 0, 0, 255, 0}); got != 1+4+255*255 {
		t.Errorf("squares = %v, want %v", got, 1+4+255*255)
	}
}

// Time, work and memory of programs in a row are counted, and what one of them
// says when it fails is told.
func TestRun(t *testing.T) {
	c, err := run(context.Background(), []string{"sh", "-c", "head -c 3000000 /dev/zero"}, []string{"sh", "-c", "test $(wc -c) = 3000000"})
	if err != nil || c.time <= 0 || c.work <= 0 || c.memory < 1<<18 {
		t.Errorf("run = %+v, %v", c, err)
	}
	if _, err := run(context.Background(), []string{"true"}, []string{"sh", "-c", "echo broken >&2; exit 3"}); err == nil || !strings.Contains(err.Error(), "broken") {
		t.Errorf("a program that fails: %v", err)
	}
}

func TestMedian(t *testing.T) {
	for _, c := range []struct {
		times []time.Duration
		want  cost
		runs  int
	}{
		{[]time.Duration{9, 1, 8, 2, 7, 3, 6, 4, 5}, cost{time: 5, memory: 9}, 9},
		{[]time.Duration{3 * time.Second, 1 * time.Second, 2 * time.Second, 7 * time.Second}, cost{time: 2 * time.Second, memory: 4}, 4},
		{[]time.Duration{13 * time.Second}, cost{time: 13 * time.Second, memory: 1}, 1},
		{[]time.Duration{9 * time.Second, 8 * time.Second}, cost{time: 8 * time.Second, memory: 2}, 2},
	} {
		runs := 0
		got, err := median(func() (cost, error) {
			runs++
			return cost{time: c.times[runs-1], memory: int64(runs)}, nil
		})
		if err != nil || got != c.want || runs != c.runs {
			t.Errorf("median of %v = %+v after %d runs, %v, want %+v after %d", c.times, got, runs, err, c.want, c.runs)
		}
	}
}

// A list begins with its size and ends with the end of a frame.
func TestList(t *testing.T) {
	var b bytes.Buffer
	if err := list(&b, small(t, still)); err != nil {
		t.Fatal(err)
	}
	if got := b.Bytes(); !bytes.HasPrefix(got, []byte{0x80, 2, 0, 0, 0x68, 1, 0, 0, 4, 0, 0, 0}) || got[len(got)-1] != 'F' {
		t.Errorf("a list of 640 x 360 px and 4 frames begins %x and ends %x", got[:12], got[len(got)-1])
	}
}
