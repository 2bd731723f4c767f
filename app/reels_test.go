package app

import (
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/canvas/film"
	"homeside/model/lesson"
)

// writeLogo writes a picture of a size, half of it transparent.
func writeLogo(t *testing.T, w, h int) string {
	t.Helper()
	img := image.NewNRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w / 2 {
			img.SetNRGBA(x, y, color.NRGBA{uint8(x * 7), uint8(y * 3), uint8(x ^ y), 255})
		}
	}
	path := filepath.Join(t.TempDir(), "logo.png")
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, img); err != nil {
		t.Fatal(err)
	}
	return path
}

// A logo within the bounds of a lesson is taken as it is; a larger one is made smaller,
// keeps its shape and what is transparent.
func TestReadLogo(t *testing.T) {
	for _, size := range [][2]int{{60, 20}, {4096, 1024}, {900, 900}} {
		g, err := readLogo(writeLogo(t, size[0], size[1]))
		if err != nil {
			t.Errorf("a logo of %v: %v", size, err)
			continue
		}
		img, err := film.DecodeLogo(g)
		if err != nil || len(g.PNG) > lesson.MaxLogo || img.Rect.Dx() > lesson.MaxLogoSide || img.Rect.Dy() > lesson.MaxLogoSide {
			t.Errorf("a logo of %v has %d bytes, %v", size, len(g.PNG), err)
			continue
		}
		w, h := img.Rect.Dx(), img.Rect.Dy()
		if w*size[1] != h*size[0] || size[0] == 60 && w != 60 {
			t.Errorf("a logo of %v is %d x %d", size, w, h)
		}
		if left, right := img.NRGBAAt(w/4, h/2).A, img.NRGBAAt(w*3/4, h/2).A; left != 255 || right != 0 {
			t.Errorf("a logo of %v has alpha %d at the left and %d at the right, want 255 and 0", size, left, right)
		}
	}
}

func TestReadLogoRefuses(t *testing.T) {
	broken := filepath.Join(t.TempDir(), "broken.png")
	data, err := os.ReadFile(writeLogo(t, 60, 20))
	if err == nil {
		err = os.WriteFile(broken, data[:len(data)-30], 0o600)
	}
	gif := filepath.Join(t.TempDir(), "x.gif")
	if err == nil {
		err = os.WriteFile(gif, []byte("GIF89a and more"), 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
	for path, want := range map[string]string{
		broken: "read the logo", gif: "the logo is not a PNG picture", filepath.Join(t.TempDir(), "none.png"): "no such file",
		writeLogo(t, 10001, 1): "the logo has 10001 x 1 px, at most 10000 x 10000",
	} {
		if _, err := readLogo(path); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("readLogo(%s) = %v, want %q", filepath.Base(path), err, want)
		}
	}
}

// A page of reels without a reel exports the play.
func TestExportWithoutAReel(t *testing.T) {
	b := newBench(t, lessonFile(t, "a"))
	b.wait()
	b.openReels()
	b.askExport()
	if !b.exports.Shown() {
		t.Fatal("the page of exports does not open")
	}
	b.exports.Close()
	if !b.reels.Shown() {
		t.Error("it does not lead back to the page of reels")
	}
}

// A reel's file is not named as its play's.
func TestFileOfAReel(t *testing.T) {
	for _, c := range []struct{ name, want string }{
		{"Stack the return", "stack-the-return-reel"}, {"The whole reel", "the-whole-reel"}, {"", "reel-2"},
	} {
		if got := reelFile(1, c.name); got != c.want {
			t.Errorf("reelFile(%q) = %q, want %q", c.name, got, c.want)
		}
	}
}
