package formats

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

// ticking is a context that is cancelled when it has been asked so often.
type ticking struct {
	context.Context
	cancel context.CancelFunc
	asked  atomic.Int64
	most   int64 // 0 never cancels
}

func newTicking(most int64) *ticking {
	inner, cancel := context.WithCancel(context.Background())
	return &ticking{Context: inner, cancel: cancel, most: most}
}

// Err implements context.Context.
func (c *ticking) Err() error {
	if c.asked.Add(1) == c.most {
		c.cancel()
	}
	return c.Context.Err()
}

// Cancelled at any moment, an export says so and leaves what stood there, and
// nothing else: no file, no folder, nothing of icza/mjpeg's index or ffmpeg's.
func TestSaveCancelledAtAnyMoment(t *testing.T) {
	for _, f := range All {
		whole := newTicking(0)
		if err := f.Save(whole, filepath.Join(t.TempDir(), "x"+f.Ext), play, small()); err != nil {
			t.Fatal(err)
		}
		asked := whole.asked.Load()
		step := max(asked/12, 1)
		if f.Needs != nil {
			step = max(asked/3, 1) // a process each time
		}
		for at := int64(1); at <= asked; at += step {
			folder := t.TempDir()
			t.Setenv("TMPDIR", t.TempDir())
			err := f.Save(newTicking(at), filepath.Join(folder, "x"+f.Ext), play, small())
			left := append(exporttest.Files(t, folder), exporttest.Files(t, os.Getenv("TMPDIR"))...)
			if errors.Is(err, context.Canceled) && len(left) != 0 {
				t.Errorf("%s cancelled when asked the %d. time of %d: %v is left", f.Ext, at, asked, left)
			}
			if !errors.Is(err, context.Canceled) && (err != nil || at < asked-3) { // workers may ask less often
				t.Errorf("%s cancelled when asked the %d. time of %d: error %v", f.Ext, at, asked, err)
			}
		}
	}
}

// A folder that vanishes in the middle is said, and does not come back.
func TestSaveIntoAVanishedFolder(t *testing.T) {
	for _, f := range All {
		folder := filepath.Join(t.TempDir(), "gone")
		if err := os.Mkdir(folder, 0o700); err != nil {
			t.Fatal(err)
		}
		t.Setenv("TMPDIR", t.TempDir())
		o := small()
		o.Progress = func(done, total int) {
			if done == (total+1)/2 {
				if err := os.RemoveAll(folder); err != nil {
					t.Error(err)
				}
			}
		}
		err := f.Save(context.Background(), filepath.Join(folder, "x"+f.Ext), play, o)
		if err == nil || !strings.Contains(err.Error(), filepath.Join(folder, "x"+f.Ext)) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s into a folder that vanishes: error %v, want one that names the file", f.Ext, err)
		}
		if left := exporttest.Files(t, filepath.Dir(folder)); len(left) != 0 {
			t.Errorf("%s into a folder that vanishes: %v is there", f.Ext, left)
		}
	}
}

// What takes room takes it on the disk of the file, not in the system's folder
// for temporary files, which is often small.
func TestSaveNeedsNoOtherFolder(t *testing.T) {
	t.Setenv("TMPDIR", filepath.Join(t.TempDir(), "missing"))
	for _, f := range All {
		folder := t.TempDir()
		if err := f.Save(context.Background(), filepath.Join(folder, "x"+f.Ext), play, small()); err != nil {
			t.Errorf("%s without a folder for temporary files: %v", f.Ext, err)
		}
		for _, path := range exporttest.Files(t, folder) {
			if strings.Contains(path, ".homeside") {
				t.Errorf("%s leaves %s", f.Ext, path)
			}
		}
	}
}

// Sizes that cannot be are refused with what can, before anything is begun;
// formats that pack two pixels by two say which even size would do.
func TestOddSizes(t *testing.T) {
	even := map[string]bool{".mp4": true, ".webm": true, ".mov": true}
	for _, f := range All {
		for size, want := range map[[2]int]string{
			{1, 1}: "width 1 px is outside the 16 to", {0, 100}: "needs both a width and a height", {100, 0}: "needs both",
			{-8, 100}: "width -8 px is outside", {20000, 100}: "width 20000 px is outside the 16 to", {100, 20000}: "height 20000 px is outside the 16 to",
			{181, 321}: "",
		} {
			if even[f.Ext] && want == "" {
				want = "even, such as 180 x 320"
			}
			folder := t.TempDir()
			err := f.Save(context.Background(), filepath.Join(folder, "x"+f.Ext), play, &export.Options{Width: size[0], Height: size[1], FPS: 1})
			if want == "" && err != nil || want != "" && (err == nil || !strings.Contains(err.Error(), want)) {
				t.Errorf("%s of %v px: error %v, want %q", f.Ext, size, err, want)
			}
			if left := exporttest.Files(t, folder); want != "" && len(left) != 0 {
				t.Errorf("%s of %v px: %v is left", f.Ext, size, left)
			}
		}
	}
}
