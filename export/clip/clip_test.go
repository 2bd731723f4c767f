package clip

import (
	"bytes"
	"context"
	"errors"
	"image"
	"image/gif"
	"io"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"homeside/canvas"
	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/units"
)

type writeFunc func(context.Context, io.Writer, export.Source, *export.Options) error

// writers are all of this package, so that every test walks them.
var writers = map[string]writeFunc{".gif": WriteGIF, ".avi": WriteAVI, ".apng": WriteAPNG, ".mp4": WriteMP4, ".webm": WriteWebM, ".mov": WriteMOV, ".frames": writePNGs}

// opaqueOnly are those that know no transparency.
var opaqueOnly = []string{".gif", ".avi", ".mp4"}

// writePNGs writes the pictures of a folder one after another.
func writePNGs(ctx context.Context, w io.Writer, src export.Source, o *export.Options) error {
	return FillPNGs(ctx, func(_ string, write func(io.Writer) error) error { return write(w) }, src, o)
}

var play = exporttest.Play{From: -0.5, To: 1.5}

// small is a clip of 2 s in 20 frames.
func small() *export.Options { return &export.Options{Width: 180, Height: 320, FPS: 10} }

func writeFile(t *testing.T, ext string, o *export.Options) string {
	t.Helper()
	return writeSource(t, ext, play, o)
}

func writeSource(t *testing.T, ext string, src export.Source, o *export.Options) string {
	t.Helper()
	var b bytes.Buffer
	if err := writers[ext](context.Background(), &b, src, o); err != nil {
		t.Fatalf("write %s: %v", ext, err)
	}
	path := filepath.Join(t.TempDir(), "clip"+ext)
	if err := os.WriteFile(path, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// FFmpeg (Debian) reads what was written: size, frames and length.
func TestClipsReadByFFmpeg(t *testing.T) {
	t.Parallel()
	at := units.Seconds(0.5)
	for _, c := range []struct {
		name      string
		o         export.Options
		frames    int
		durationS float64
	}{
		{"whole", export.Options{Width: 180, Height: 320, FPS: 10}, 20, 2},
		{"odd size", export.Options{Width: 181, Height: 323, FPS: 10}, 20, 2},
		{"even size", export.Options{Width: 182, Height: 324, FPS: 10}, 20, 2},
		{"half speed at 30 fps", export.Options{Width: 90, Height: 160, FPS: 30, Speed: 0.5}, 120, 4},
		{"double speed from 0.5 s", export.Options{Width: 90, Height: 160, FPS: 50, Speed: 2, From: &at}, 25, 0.5},
		{"one frame", export.Options{Width: 90, Height: 160, FPS: 1, Speed: 8}, 1, 1},
	} {
		for ext, kind := range map[string][2]string{
			".gif": {"gif", "gif"}, ".avi": {"mjpeg", "avi"}, ".apng": {"apng", "apng"},
			".mp4": {"h264", "mov,mp4,m4a,3gp,3g2,mj2"}, ".webm": {"vp9", "matroska,webm"}, ".mov": {"prores", "mov,mp4,m4a,3gp,3g2,mj2"},
		} {
			if packed := ext == ".mp4" || ext == ".webm" || ext == ".mov"; packed && c.name != "even size" && c.name != "one frame" {
				continue // slower, and refused if a side is odd: see TestEvenSides
			}
			got := exporttest.Probe(t, writeFile(t, ext, &c.o))
			want := exporttest.Clip{Codec: kind[0], Format: kind[1], Width: c.o.Width, Height: c.o.Height, Frames: c.frames, DurationS: got.DurationS, Rate: got.Rate, StreamNames: got.StreamNames}
			if got != want || ext == ".avi" && got.StreamNames != 0 {
				t.Errorf("%s%s: ffprobe reads %+v, want %+v", c.name, ext, got, want)
			}
			if math.Abs(got.DurationS-c.durationS) > 0.001 {
				t.Errorf("%s%s: ffprobe reads %v s, want %v s", c.name, ext, got.DurationS, c.durationS)
			}
			if c.frames > 1 && math.Abs(got.Rate-float64(c.o.FPS)) > 0.01 {
				t.Errorf("%s%s: ffprobe reads %v frames a second, want %d", c.name, ext, got.Rate, c.o.FPS)
			}
		}
	}
}

// The picture is to scale: colours stand where the court's feet say.
func TestClipsShowTheCourtToScale(t *testing.T) {
	t.Parallel()
	o := small()
	v := exporttest.View(o.Width, o.Height)
	for ext, tolerance := range map[string]int{".gif": 0, ".avi": 12, ".apng": 0, ".mp4": 12, ".webm": 12, ".mov": 4} {
		frames := exporttest.Decode(t, writeFile(t, ext, o))
		for _, i := range []int{0, 7, 19} {
			disc := play.Centre(export.FrameTime(i, 10, 1, play.From))
			for _, c := range []struct {
				name string
				at   court.Point
				want [3]uint8
			}{
				{"court, near right", court.Pt(5, -14), [3]uint8{exporttest.Court.R, exporttest.Court.G, exporttest.Court.B}},
				{"just inside the far left corner", court.Pt(-9, 21), [3]uint8{exporttest.Court.R, exporttest.Court.G, exporttest.Court.B}},
				{"just outside the sideline", court.Pt(11, 3), [3]uint8{exporttest.Paper.R, exporttest.Paper.G, exporttest.Paper.B}},
				{"the disc", disc, [3]uint8{exporttest.Disc.R, exporttest.Disc.G, exporttest.Disc.B}},
			} {
				px := v.ToPx(c.at)
				got := frames[i].RGBAAt(int(px.X), int(px.Y))
				for k, g := range [3]uint8{got.R, got.G, got.B} {
					if d := int(g) - int(c.want[k]); d > tolerance || -d > tolerance {
						t.Errorf("%s frame %d, %s at %v: got %v, want %v", ext, i, c.name, px, got, c.want)
						break
					}
				}
			}
		}
	}
}

// nothing moves in it.
type frozen struct{ blinks }

func (f frozen) Moving(w, h int, _ units.Seconds) *canvas.Scene { return f.blinks.Moving(w, h, 1) }

// A clip in which nothing moves has all its frames.
func TestClipsOfAStill(t *testing.T) {
	t.Parallel()
	o := export.Options{Width: 40, Height: 30, FPS: 5}
	for ext := range writers {
		if ext == ".frames" {
			continue // pictures have no times
		}
		if got := exporttest.Probe(t, writeSource(t, ext, frozen{}, &o)); got.Frames != 20 || math.Abs(got.DurationS-4) > 0.001 {
			t.Errorf("%s: %d frames in %v s, want 20 in 4 s", ext, got.Frames, got.DurationS)
		}
	}
}

func TestDelays(t *testing.T) {
	for _, c := range []struct {
		fps  int
		want []int
	}{
		{30, []int{3, 3, 4, 3, 3, 4}}, {25, []int{4, 4, 4, 4}}, {40, []int{2, 3, 2, 3}}, {50, []int{2, 2, 2}}, {1, []int{100, 100}},
	} {
		got := make([]int, len(c.want))
		for i := range got {
			got[i] = delay(i, c.fps)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("delays at %d fps: got %v, want %v", c.fps, got, c.want)
		}
	}
	for fps := 1; fps <= GIFMaxFPS; fps++ {
		sum := 0
		for i := range 10 * fps {
			if d := delay(i, fps); d < 2 {
				t.Errorf("delay(%d, %d) = %d, want at least 2", i, fps, d)
			}
			sum += delay(i, fps)
		}
		if sum != 1000 {
			t.Errorf("10 s at %d fps last %d hundredths, want 1000", fps, sum)
		}
	}
}

// The standard library's reader finds the delays, one palette, a whole first
// frame and small ones after it.
func TestGIFStructure(t *testing.T) {
	f, err := os.Open(writeFile(t, ".gif", &export.Options{Width: 90, Height: 160, FPS: 30}))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	g, err := gif.DecodeAll(f)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := g.Delay[:6], []int{3, 3, 4, 3, 3, 4}; len(g.Image) != 60 || !slices.Equal(got, want) {
		t.Errorf("%d frames with delays %v, want 60 with %v", len(g.Image), got, want)
	}
	if g.LoopCount != 0 {
		t.Errorf("LoopCount = %d, want 0: for ever", g.LoopCount)
	}
	for i, img := range g.Image {
		if all := image.Rect(0, 0, 90, 160); i == 0 && img.Rect != all || i > 0 && 2*img.Rect.Dx()*img.Rect.Dy() > all.Dx()*all.Dy() {
			t.Errorf("frame %d covers %v", i, img.Rect)
		}
		if !slices.Equal(img.Palette, g.Image[0].Palette) {
			t.Errorf("frame %d has a palette of its own", i)
		}
	}
}

func TestClipsAreDeterministic(t *testing.T) {
	for ext, write := range writers {
		var a, b bytes.Buffer
		if err := errors.Join(write(context.Background(), &a, play, small()), write(context.Background(), &b, play, small())); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(a.Bytes(), b.Bytes()) || a.Len() == 0 {
			t.Errorf("two %s of the same play differ: %d and %d bytes", ext, a.Len(), b.Len())
		}
	}
}

func TestProgressCountsEveryFrame(t *testing.T) {
	for ext, write := range writers {
		var got []int
		o := small()
		o.Progress = func(done, total int) { got = append(got, done, total) }
		if err := write(context.Background(), io.Discard, play, o); err != nil {
			t.Fatal(err)
		}
		want := []int{}
		for i := range 20 {
			want = append(want, i+1, 20)
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: progress %v, want %v", ext, got, want)
		}
	}
}

// Cancelled in the middle, a clip ends with the context's error, without
// goroutines and without files in the folder for temporary ones.
func TestCancelLeavesNothing(t *testing.T) {
	for ext, write := range writers {
		temp := t.TempDir()
		t.Setenv("TMPDIR", temp)
		before := runtime.NumGoroutine()
		ctx, cancel := context.WithCancelCause(context.Background())
		last := 0
		o := small()
		o.Progress = func(done, _ int) {
			if last = done; done == 7 {
				if ext == ".avi" && len(exporttest.Files(t, temp)) == 0 {
					t.Errorf("the AVI is not made in the folder for temporary files")
				}
				cancel(errors.New("a cause that wraps nothing"))
			}
		}
		err := write(ctx, io.Discard, play, o)
		if !errors.Is(err, context.Canceled) || last != 7 {
			t.Errorf("%s cancelled at frame 7: error %v after frame %d, want %v after 7", ext, err, last, context.Canceled)
		}
		if left := exporttest.Files(t, temp); len(left) != 0 {
			t.Errorf("%s cancelled: %v is left behind", ext, left)
		}
		if after := goroutinesDownTo(before); after > before {
			t.Errorf("%s cancelled: %d goroutines, want %d as before", ext, after, before)
		}
	}
}

// goroutinesDownTo counts them, giving those that have done their last step, and
// the runtime's own, the chance to be gone: on a busy machine that takes a while.
func goroutinesDownTo(n int) int {
	const patience = 10 * time.Second
	for began := time.Now(); runtime.NumGoroutine() > n && time.Since(began) < patience; {
		runtime.Gosched()
	}
	return runtime.NumGoroutine()
}

func TestCancelledBeforeItBegins(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	for ext, write := range writers {
		var b bytes.Buffer
		if err := write(ctx, &b, play, small()); !errors.Is(err, context.Canceled) || b.Len() != 0 {
			t.Errorf("%s: error %v and %d bytes, want %v and none", ext, err, b.Len(), context.Canceled)
		}
	}
}

// errFull stands for a disk that is full after some bytes.
var errFull = errors.New("no space left")

type fullDisk struct{ left int }

func (d *fullDisk) Write(p []byte) (int, error) {
	if len(p) > d.left {
		return d.left, errFull
	}
	d.left -= len(p)
	return len(p), nil
}

// kindOf is what errors call the files.
var kindOf = map[string]string{".gif": "GIF", ".avi": "AVI", ".apng": "APNG", ".mp4": "MP4", ".webm": "WebM", ".mov": "ProRes", ".frames": "frame 1"}

func TestWriteErrorsComeBack(t *testing.T) {
	for ext, write := range writers {
		temp := t.TempDir()
		t.Setenv("TMPDIR", temp)
		for _, room := range []int{0, 100, 1_000} {
			err := write(context.Background(), &fullDisk{room}, play, small())
			if !errors.Is(err, errFull) || !strings.Contains(err.Error(), kindOf[ext]) {
				t.Errorf("%s with room for %d bytes: got error %v, want %v and the kind of file", ext, room, err, errFull)
			}
		}
		if left := exporttest.Files(t, temp); len(left) != 0 {
			t.Errorf("%s: %v is left behind", ext, left)
		}
	}
}

func TestNoTemporaryFolder(t *testing.T) {
	t.Setenv("TMPDIR", filepath.Join(t.TempDir(), "missing"))
	if err := WriteAVI(context.Background(), io.Discard, play, small()); err == nil || !strings.Contains(err.Error(), "make a folder for the AVI") {
		t.Errorf("without a folder for temporary files: got error %v", err)
	}
}

func TestClipBounds(t *testing.T) {
	for _, c := range []struct {
		ext    string
		o      export.Options
		option string
	}{
		{".gif", export.Options{FPS: 51}, "fps"},
		{".avi", export.Options{FPS: 61}, "fps"},
		{".gif", export.Options{Width: 4097, Height: 100}, "width"},
		{".avi", export.Options{Width: 100, Height: 4097}, "height"},
		{".avi", export.Options{Speed: 9}, "speed"},
		{".apng", export.Options{FPS: 61}, "fps"},
	} {
		var out *export.OptionError
		if err := writers[c.ext](context.Background(), io.Discard, play, &c.o); !errors.As(err, &out) || out.Option != c.option {
			t.Errorf("%s with %+v: got error %v, want one about %s", c.ext, c.o, err, c.option)
		}
	}
}

// A film of more than 2 GB is refused before a file is begun.
func TestTooLongForAnAVI(t *testing.T) {
	long := exporttest.Play{From: 0, To: 82}
	t.Setenv("TMPDIR", filepath.Join(t.TempDir(), "missing")) // nothing may be begun
	o := &export.Options{FPS: 60, Speed: 0.05}
	err := WriteAVI(context.Background(), io.Discard, long, o)
	if err == nil || !strings.Contains(err.Error(), "GB and can have 2: choose") {
		t.Errorf("98400 frames: got error %v, want one about 2 GB", err)
	}
	if checkLength(maxAVI) != nil || checkLength(maxAVI+1) == nil {
		t.Errorf("checkLength: %d must pass and one more must not", maxAVI)
	}
}

// The clock must not get into the file.
func TestAVIHasNoDate(t *testing.T) {
	b, err := os.ReadFile(writeFile(t, ".avi", small()))
	if err != nil {
		t.Fatal(err)
	}
	for _, unwanted := range []string{"strn", "Created"} {
		if bytes.Contains(b, []byte(unwanted)) {
			t.Errorf("the AVI contains %q", unwanted)
		}
	}
	if _, err := withoutName([]byte("RIFF....AVI LIST")); err == nil {
		t.Error("withoutName of a file without lists: no error")
	}
}

// A transparent scene stands on white in formats that know no transparency.
func TestTransparentScenesStandOnWhite(t *testing.T) {
	t.Parallel()
	clear := exporttest.Play{To: 0.2, Transparent: true}
	for _, ext := range opaqueOnly {
		var b bytes.Buffer
		if err := writers[ext](context.Background(), &b, clear, small()); err != nil {
			t.Fatal(err)
		}
		path := filepath.Join(t.TempDir(), "clip"+ext)
		if err := os.WriteFile(path, b.Bytes(), 0o600); err != nil {
			t.Fatal(err)
		}
		if got := exporttest.Decode(t, path)[0].RGBAAt(1, 1); got.R < 250 || got.G < 250 || got.B < 250 {
			t.Errorf("%s: corner %v, want white", ext, got)
		}
	}
}
