package main

import (
	"context"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"homeside/canvas/look"
	"homeside/export/exporttest"
)

// exported runs export into a folder of its own and gives the file's path.
func exported(t *testing.T, name string, args ...string) string {
	t.Helper()
	lesson := lessonFile(t, drill())
	out := filepath.Join(t.TempDir(), name)
	all := append([]string{"export", lesson, "--out", out}, args...)
	stdout, stderr, code := cli(all...)
	if code != exitOK || stdout != "" || stderr != "" {
		t.Fatalf("homeside-cli %v: exit %d, %q, %q, want a silent success", all, code, stdout, stderr)
	}
	if files := exporttest.Files(t, filepath.Dir(out)); len(files) != 1 {
		t.Errorf("export leaves %v, want the file alone", files)
	}
	return out
}

func readPNG(t *testing.T, path string) image.Image {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// scale is where feet of the court are in an exported picture.
type scale struct {
	originX, originY, pxPerFoot float64
	lying                       bool
}

func (s scale) px(xFt, yFt float64) (x, y float64) {
	if s.lying {
		return s.originX + s.pxPerFoot*yFt, s.originY + s.pxPerFoot*xFt
	}
	return s.originX + s.pxPerFoot*xFt, s.originY - s.pxPerFoot*yFt
}

// The geometry of an export: a point is a 360th of the shorter side; in between title
// and caption stand 30 x 60 ft and 1 ft around, upright also 1 ft, the 12 ft of the
// height strip and 1 ft. 5 % of the height is kept free of words, then come 32.5 points
// for the title, 34 for the caption. A picture for a phone held upright keeps 8 %
// above and 16 % below free; title and caption have 48 and 46 points there.
func exportScale(w, h int, lying bool) scale {
	pt := math.Min(float64(w), float64(h)) / 360
	top, bottom := 0.05*float64(h)+32.5*pt, 0.95*float64(h)-34*pt
	if float64(h) > 1.5*float64(w) {
		top, bottom = 0.08*float64(h)+48*pt, 0.84*float64(h)-46*pt
	}
	across, along := 32.0+14, 62.0
	if lying {
		across, along = 62, 32
	}
	k := math.Min(float64(w)/across, (bottom-top)/along)
	s := scale{float64(w) / 2, (top + bottom) / 2, k, lying}
	if !lying {
		s.originX -= 7 * k // the middle of -16 to 30 ft
	}
	return s
}

// A pixel of the court is where the scale says it is, and a line is 2 in wide
// (USA Pickleball Official Rulebook 2026, 3.A.4.e): along a cut from outside to
// inside the colours change where the edges are.
func TestPixelsOfTheCourt(t *testing.T) {
	lk := look.Daylight
	for _, c := range []struct {
		w, h int
		view string
	}{{1080, 1920, "upright"}, {720, 1280, "upright"}, {1280, 720, "lying"}, {1920, 1080, "lying"}} {
		img := readPNG(t, exported(t, "x.png", "--size", fmt.Sprintf("%dx%d", c.w, c.h), "--view", c.view, "--play", "1"))
		if got := img.Bounds().Size(); got != image.Pt(c.w, c.h) {
			t.Fatalf("--size %dx%d is %v", c.w, c.h, got)
		}
		s := exportScale(c.w, c.h, c.view == "lying")
		for _, p := range []struct {
			what   string
			x, y   float64 // ft
			colour color.NRGBA
		}{
			{"behind the near baseline", 8, -22.3, lk.Surface},
			{"in the near baseline", 8, -22 + 1.0/12, lk.Line},
			{"in front of the near baseline", 8, -21.5, lk.Court},
			{"in the near kitchen line", 8, -7 + 1.0/12, lk.Line},
			{"in the near kitchen", 8, -6.5, lk.Kitchen},
			{"in the far kitchen line", 8, 7 - 1.0/12, lk.Line},
			{"in the right sideline", 10 - 1.0/12, -15, lk.Line},
			{"right of it", 10.4, -15, lk.Surface},
			{"in the left sideline", -10 + 1.0/12, 15, lk.Line},
			{"in the near centreline", 0, -12, lk.Line},
			{"on the paper", -15.6, 30.6, lk.Paper},
			{"on the run-off", -14.6, 29.6, lk.Surface},
		} {
			x, y := s.px(p.x, p.y)
			if got := color.NRGBAModel.Convert(img.At(int(x), int(y))); got != p.colour {
				t.Errorf("%dx%d %s: %s at %.1f, %.1f px is %v, want %v", c.w, c.h, c.view, p.what, x, y, got, p.colour)
			}
		}
		checkLineWidth(t, img, s)
	}
}

// checkLineWidth adds up how much of each pixel across the near baseline is line.
func checkLineWidth(t *testing.T, img image.Image, s scale) {
	t.Helper()
	lk := look.Daylight
	covered := 0.0
	for i := -8; i <= 8; i++ {
		x, y := s.px(8, -22+1.0/12)
		if s.lying {
			x += float64(i)
		} else {
			y += float64(i)
		}
		r, _, _, _ := img.At(int(x), int(y)).RGBA()
		light, dark := float64(lk.Court.R), float64(lk.Line.R)
		if i < 0 == s.lying { // outside the line
			light = float64(lk.Surface.R)
		}
		covered += math.Max(0, math.Min(1, (light-float64(r>>8))/(light-dark)))
	}
	if want := s.pxPerFoot / 6; math.Abs(covered-want) > 0.25 {
		t.Errorf("the near baseline is %.2f px wide, want 2 in = %.2f px", covered, want)
	}
}

// The ending says the format; FFmpeg says what came out.
func TestExportClips(t *testing.T) {
	for _, c := range []struct {
		name     string
		args     string
		w, h     int
		frames   int
		duration float64
		format   string
	}{
		{"x.gif", "--size 120x200 --fps 10 --from -1 --to 1", 120, 200, 20, 2, "gif"},
		{"x.GIF", "--size 120x200 --fps 10 --from 0.5 --to 1 --speed 0.5", 120, 200, 10, 1, "gif"},
		{"x.avi", "--size 120x200 --fps 10 --from -1.5 --to -0.5", 120, 200, 10, 1, "avi"},
		{"x.avi", "--size 200x120 --fps 30 --from 0 --to 1 --speed 2 --view lying --play 3", 200, 120, 15, 0.5, "avi"},
		{"x.avi", "--size 64x64 --to -1 --play 2", 64, 64, 13, 0.52, "avi"}, // half a second at 25 frames: 12.5
	} {
		path := exported(t, c.name, strings.Fields(c.args)...)
		got := exporttest.Probe(t, path)
		if got.Width != c.w || got.Height != c.h || got.Frames != c.frames || math.Abs(got.DurationS-c.duration) > 0.011 || got.Format != c.format {
			t.Errorf("export %s %s: %+v, want %s, %dx%d, %d frames, %v s", c.name, c.args, got, c.format, c.w, c.h, c.frames, c.duration)
		}
	}
}

// Another moment, play or view is another picture; the same is the same.
func TestExportStills(t *testing.T) {
	read := func(args ...string) string {
		data, err := os.ReadFile(exported(t, "x.PNG", append(args, "--size", "90x160")...))
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	seen := map[string]string{}
	for _, args := range []string{"--at 0", "--at 2.5", "--at -1.5", "--at 0 --play 2", "--at 0 --view lying", "--at 0 --end far", "--at 0 --view half-near", "--at 0 --view half-far",
		"--at 0 --view behind", "--at 0 --view behind --behind servers", "--at 0 --view behind --behind near2"} {
		got := read(strings.Fields(args)...)
		if other, same := seen[got]; same {
			t.Errorf("export %s is the same as %s", args, other)
		}
		seen[got] = args
	}
	if seen[read("--at", "0", "--play", "1", "--view", "upright")] != "--at 0" {
		t.Error("the same picture came out differently")
	}
	if seen[read()] != "--at -1.5" {
		t.Error("without --at the still is not the play's start")
	}
}

// The ground is the paper, nothing at all, or the colour that is asked for; the
// court on it stays.
func TestExportGround(t *testing.T) {
	for ground, want := range map[string]color.NRGBA{
		"paper": look.Daylight.Paper, "clear": {}, "green": {0, 0xB1, 0x40, 255}, "#102030": {0x10, 0x20, 0x30, 255},
	} {
		img := readPNG(t, exported(t, "x.png", "--size", "180x320", "--background", ground))
		if got := color.NRGBAModel.Convert(img.At(2, 318)); got != want {
			t.Errorf("--background %s: the corner is %v, want %v", ground, got, want)
		}
		if got := color.NRGBAModel.Convert(img.At(40, 158)); got == want {
			t.Errorf("--background %s: the court is %v as well", ground, got)
		}
	}
}

// An AVI has a quarter of the colour samples, or all if they are asked for;
// ffprobe says which.
func TestExportFullColour(t *testing.T) {
	for args, want := range map[string]string{"": "yuvj420p", "--full-colour": "yuvj444p"} {
		path := exported(t, "x.avi", append(strings.Fields(args), "--size", "64x64", "--to", "-1")...)
		if got := exporttest.PixelFormat(t, path); got != want {
			t.Errorf("export x.avi %s has pixels of %s, want %s", args, got, want)
		}
	}
}

func TestExportDefaultSize(t *testing.T) {
	if got := readPNG(t, exported(t, "x.png")).Bounds().Size(); got != image.Pt(720, 1280) {
		t.Errorf("without --size the picture is %v, want 720 x 1280", got)
	}
}

// What cannot be is one line, exit 2, and nothing is written.
func TestExportRefuses(t *testing.T) {
	lesson := lessonFile(t, drill())
	for line, want := range map[string]string{
		"":                                  `required flag(s) "out" not set`,
		"--out x.bmp":                       "x.bmp: no format is called .bmp; there are .png, .svg, .pdf, .gif, .avi, .apng, .mp4, .webm, .mov, .frames",
		"--out x":                           "x: the name must end in one of .png, .svg, .pdf, .gif, .avi, .apng, .mp4, .webm, .mov, .frames",
		"--out x.png --play 0":              lesson + ": --play 0: the lesson has 3 plays",
		"--out x.png --play 4":              lesson + ": --play 4: the lesson has 3 plays",
		"--out x.png --play -1":             lesson + ": --play -1: the lesson has 3 plays",
		"--out x.png --play 1.5":            `invalid argument "1.5" for "--play"`,
		"--out x.png --at 99":               "at 99 s is outside the -1.5 to ",
		"--out x.png --at -5":               "at -5 s is outside the -1.5 to ",
		"--out x.png --at NaN":              "at NaN s is outside",
		"--out x.png --at one":              `invalid argument "one" for "--at"`,
		"--out x.gif --at 1":                "--at: x.gif is a clip",
		"--out x.png --from 0":              "--from: x.png is a still",
		"--out x.png --to 1":                "--to: x.png is a still",
		"--out x.png --fps 10":              "--fps: x.png is a still",
		"--out x.png --speed 2":             "--speed: x.png is a still",
		"--out x.svg --fps 10":              "--fps: x.svg is a still",
		"--out x.pdf --to 1":                "--to: x.pdf is a still",
		"--out x.gif --at 1 --from 0":       "--at is for a still, --from and --to are for a clip",
		"--out x.gif --from 2 --to 1":       "from 2 s is not before to 1 s",
		"--out x.gif --from 1 --to 1":       "from 1 s is not before to 1 s",
		"--out x.gif --from -9":             "from -9 s is outside the -1.5 to ",
		"--out x.gif --to 99":               "to 99 s is outside the -1.5 to ",
		"--out x.gif --to NaN":              "to NaN s is outside",
		"--out x.gif --fps 0":               "--fps 0: want at least 1",
		"--out x.gif --fps 61":              "fps 61 is outside the 1 to 60",
		"--out x.avi --fps -5":              "--fps -5: want at least 1",
		"--out x.avi --speed 0":             "--speed 0: want more than 0",
		"--out x.avi --speed -1":            "--speed -1: want more than 0",
		"--out x.avi --speed NaN":           "speed NaN is outside",
		"--out x.avi --speed 9":             "speed 9 is outside the 0.05 to 8",
		"--out x.png --size 100":            `--size "100": want width x height in pixels`,
		"--out x.png --size 100x":           `--size "100x": want width x height in pixels`,
		"--out x.png --size 0x100":          `--size "0x100": want width x height in pixels`,
		"--out x.png --size -5x100":         `--size "-5x100": want width x height in pixels`,
		"--out x.png --size 1e2x100":        `--size "1e2x100": want width x height in pixels`,
		"--out x.png --size 8x100":          "width 8 px is outside the 16 to 8192 px",
		"--out x.gif --size 100x5000":       "height 5000 px is outside",
		"--out x.png --view sideways":       `--view "sideways": want one of upright, lying, half-near, half-far, behind`,
		"--out x.png --background pink":     `background "pink": want paper, clear, green, blue, magenta or a colour such as #00B140`,
		"--out x.png --background #12345":   `background "#12345": want`,
		"--out x.avi --background clear":    "an AVI cannot be transparent: choose .png",
		"--out x.gif --background clear":    "a GIF cannot be transparent: choose .png",
		"--out x.gif --full-colour":         "--full-colour: x.gif has no such choice",
		"--out x.png extra":                 "accepts 1 arg(s), received 2",
		"--out missing/x.png":               "save missing/x.png: there is no folder missing",
		"--out folder.png":                  "save folder.png: this is a folder, not a file",
		"--out " + os.DevNull + "/x.png":    "save " + os.DevNull + "/x.png: ",
		"--out x.png --bogus":               "unknown flag: --bogus",
		"--out x.png --size 100x100 --from": "flag needs an argument: --from",
	} {
		folder := t.TempDir()
		if err := os.Mkdir(filepath.Join(folder, "folder.png"), 0o700); err != nil {
			t.Fatal(err)
		}
		t.Chdir(folder)
		args := append([]string{"export", lesson}, strings.Fields(line)...)
		out, errs, code := cli(args...)
		if text := checkRefused(t, args, out, errs, code); !strings.Contains(text, want) {
			t.Errorf("export %s says %q, want %q", line, text, want)
		}
		if files := exporttest.Files(t, folder); len(files) != 1 {
			t.Errorf("export %s leaves %v", line, files)
		}
	}
}

// ticking is a context that is cancelled when it has been asked so often.
type ticking struct {
	context.Context
	cancel context.CancelFunc
	asked  atomic.Int64
	most   int64 // 0 never cancels
}

func (c *ticking) Err() error {
	if c.asked.Add(1) == c.most {
		c.cancel()
	}
	return c.Context.Err()
}

func newTicking(most int64) *ticking {
	inner, cancel := context.WithCancel(context.Background())
	return &ticking{Context: inner, cancel: cancel, most: most}
}

// Cancelled before or in the middle: one line, exit 2, and what stood at the
// path stays.
func TestExportCancelled(t *testing.T) {
	lesson := lessonFile(t, drill())
	for _, line := range []string{"x.png --size 64x64", "x.svg --size 64x64", "x.pdf --size 64x64", "x.gif --size 64x64", "x.avi --size 64x64",
		"x.html", "x.vtt", "x.wav", "x.pdf --sheet storyboard", "x.pdf --sheet match"} {
		name, more, _ := strings.Cut(line, " ")
		path := filepath.Join(t.TempDir(), name)
		args := append([]string{"export", lesson, "--out", path}, strings.Fields(more)...)
		whole := newTicking(0)
		if _, errs, code := cliIn(whole, args...); code != exitOK {
			t.Fatalf("homeside-cli %v: exit %d, %s", args, code, errs)
		}
		for _, most := range []int64{1, whole.asked.Load() / 2} {
			if err := os.WriteFile(path, []byte("before"), 0o600); err != nil {
				t.Fatal(err)
			}
			out, errs, code := cliIn(newTicking(most), args...)
			if text := checkRefused(t, args, out, errs, code); !strings.Contains(text, "cancelled, nothing was written") {
				t.Errorf("%s cancelled when asked the %d. time says %q", name, most, text)
			}
			if data, err := os.ReadFile(path); err != nil || string(data) != "before" || len(exporttest.Files(t, filepath.Dir(path))) != 1 {
				t.Errorf("%s cancelled when asked the %d. time left %v with %d bytes (%v)", name, most, exporttest.Files(t, filepath.Dir(path)), len(data), err)
			}
		}
	}
}
