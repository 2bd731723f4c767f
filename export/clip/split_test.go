package clip

import (
	"bytes"
	"context"
	"testing"

	"homeside/export"
)

// makerOf gives a new maker of a format's frames for a worker.
type makerOf func(worker int) func(i int) ([]byte, error)

// makers are the formats whose frames are made side by side.
func makers(t *testing.T, f *film) map[string]makerOf {
	t.Helper()
	palette, err := f.palette(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	suited := newJPEGMaker(f, &usual).suited().tables
	return map[string]makerOf{
		"GIF":  func(int) func(int) ([]byte, error) { return newGIFMaker(f, palette).block },
		"APNG": func(int) func(int) ([]byte, error) { return newAPNGMaker(f, !f.base.Opaque()).chunks },
		"PNG": func(int) func(int) ([]byte, error) {
			return (&pngMaker{f.camera(), newBands(f.base, !f.base.Opaque())}).png
		},
		"AVI": func(int) func(int) ([]byte, error) {
			m := newJPEGMaker(f, suited)
			return func(i int) ([]byte, error) { return m.jpeg(nil, i), nil }
		},
	}
}

// A clip is the same whether one worker makes all its frames or two share them:
// no frame depends on which others its maker has made.
func TestTwoWorkersMakeWhatOneMakes(t *testing.T) {
	t.Parallel()
	for _, clear := range []bool{false, true} {
		o := export.Options{Width: 161, Height: 97, FPS: 12, Ground: export.Ground{Clear: clear}}
		f, err := clearFilm(builtIn(t), &o, "a clip", export.MaxFPS)
		if err != nil {
			t.Fatal(err)
		}
		if f.times.Count < 3*run {
			t.Fatalf("%d frames are not shared out", f.times.Count)
		}
		alone := makers(t, f)
		for format, maker := range makers(t, f) {
			one := alone[format](0)
			err := inOrder(context.Background(), f.times.Count, maker, func(i int, got []byte) error {
				if want, err := one(i); err != nil || !bytes.Equal(got, want) {
					t.Errorf("%s, clear %v: frame %d of two workers has %d bytes, of one %d (%v)", format, clear, i, len(got), len(want), err)
				}
				return nil
			})
			if err != nil {
				t.Error(err)
			}
		}
	}
}
