package clip

import (
	"context"
	"errors"
	"io"
	"math"
	"os"
	"strings"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

// FFmpeg's own reader finds H.264 of the size, frames and length that were asked
// for, its index before its frames, and pictures close to those drawn.
func TestMP4EqualsTheDrawing(t *testing.T) {
	t.Parallel()
	src := builtIn(t)
	o := export.Options{Width: 480, Height: 270, FPS: 5}
	f, err := newFilm(src, &o, "an MP4", export.MaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	path := writeSource(t, ".mp4", src, &o)
	got := exporttest.Probe(t, path)
	if got.Codec != "h264" || got.Width != 480 || got.Height != 270 || got.Frames != f.times.Count || math.Abs(got.DurationS-float64(f.times.Count)/5) > 0.001 {
		t.Errorf("ffprobe reads %+v, want h264 of 480x270 with %d frames", got, f.times.Count)
	}
	if got := leastPSNR(f, exporttest.Decode(t, path)); got < 34 {
		t.Errorf("PSNR %.1f dB in the worst frame, want 34 at least", got)
	}
	head, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if moov, mdat := strings.Index(string(head), "moov"), strings.Index(string(head), "mdat"); moov < 0 || moov > mdat {
		t.Errorf("moov stands at %d and mdat at %d, want moov first", moov, mdat)
	}
}

// Formats that pack two pixels by two refuse odd sides and say what would do.
func TestEvenSides(t *testing.T) {
	for ext, kind := range map[string]string{".mp4": "MP4", ".webm": "WebM", ".mov": "ProRes"} {
		for size, want := range map[[2]int]string{{181, 320}: "181 x 320 px", {180, 321}: "180 x 321 px", {181, 321}: "181 x 321 px"} {
			err := writers[ext](context.Background(), io.Discard, play, &export.Options{Width: size[0], Height: size[1]})
			if err == nil || err.Error() != want+": the sides of a clip as "+kind+" must be even, such as 180 x 320" {
				t.Errorf("%s of %s: got error %v", ext, want, err)
			}
		}
	}
}

func TestWithoutFFmpeg(t *testing.T) {
	temp := t.TempDir()
	t.Setenv("TMPDIR", temp)
	t.Setenv("PATH", t.TempDir())
	for _, ext := range []string{".mp4", ".webm", ".mov"} {
		err := writers[ext](context.Background(), io.Discard, play, small())
		var failed *FFmpegError
		if !errors.As(err, &failed) || !errors.Is(err, ErrNoFFmpeg) || !errors.Is(FindFFmpeg(), ErrNoFFmpeg) {
			t.Errorf("%s without ffmpeg: got error %v, want %v", ext, err, ErrNoFFmpeg)
		}
	}
	if left := exporttest.Files(t, temp); len(left) != 0 {
		t.Errorf("%v is left behind", left)
	}
}

// Brightness and colour are those of ITU-R BT.709 for black, white and the pure
// colours (from its table of coefficients, rounded to 8 bits).
func TestPlanes(t *testing.T) {
	for c, want := range map[[3]uint8][3]uint8{
		{0, 0, 0}: {16, 128, 128}, {255, 255, 255}: {235, 128, 128},
		{255, 0, 0}: {63, 102, 240}, {0, 255, 0}: {173, 42, 26}, {0, 0, 255}: {32, 240, 118},
	} {
		img := scrawl(4, 2, 1)
		for i := range img.Pix {
			img.Pix[i] = [4]uint8{c[0], c[1], c[2], 255}[i%4]
		}
		for pixels, size := range map[string]int{"yuv420p": 12, "yuva420p": 20} {
			p := newFeed(pixels, img).bytes()
			if got := [3]uint8{p[0], p[8], p[10]}; got != want || len(p) != size || size == 20 && p[12] != 255 {
				t.Errorf("%s of %v is %v, want %v", pixels, c, p, want)
			}
		}
	}
}
