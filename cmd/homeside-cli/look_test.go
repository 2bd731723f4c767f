package main

import (
	"image"
	"image/color"
	_ "image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homeside/canvas/look"
)

// corner is the colour of a picture's first pixel and how many pixels differ
// from it.
func corner(t *testing.T, path string) (c color.Color, inked int) {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, _, err := image.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	c = color.NRGBAModel.Convert(img.At(0, 0))
	for y := range titleRows {
		for x := range img.Bounds().Dx() {
			if color.NRGBAModel.Convert(img.At(x, y)) != c {
				inked++
			}
		}
	}
	return c, inked
}

// titleRows are the rows of a picture of 360 x 640 that hold nothing but the
// title.
const titleRows = 40

func TestLookOfAStill(t *testing.T) {
	file := lessonFile(t, drill())
	export := func(args ...string) (color.Color, int) {
		out := filepath.Join(t.TempDir(), "still.png")
		if _, errs, code := cli(append([]string{"export", file, "--out", out, "--size", "360x640"}, args...)...); code != exitOK {
			t.Fatalf("export %v: exit %d, %s", args, code, errs)
		}
		return corner(t, out)
	}
	day, inked := export()
	if day != look.Daylight.Paper {
		t.Errorf("the paper is %v, want %v", day, look.Daylight.Paper)
	}
	if night, _ := export("--look", "night"); night != look.Night.Paper {
		t.Errorf("--look night: the paper is %v, want %v", night, look.Night.Paper)
	}
	if _, large := export("--large-text"); float64(large) < 1.2*float64(inked) {
		t.Errorf("--large-text: the title takes %d pixels, without it %d: want a quarter more at least", large, inked)
	}
}

func TestUnknownLook(t *testing.T) {
	out, errs, code := cli("export", lessonFile(t, drill()), "--out", filepath.Join(t.TempDir(), "x.png"), "--look", "dusk")
	if line := checkRefused(t, []string{"export"}, out, errs, code); !strings.Contains(line, "daylight or night") {
		t.Errorf("--look dusk: %q does not say what there is", line)
	}
}

// A reel has the look in all of its takes: nothing of the court's pale ground is
// left at night.
func TestLookOfAReel(t *testing.T) {
	file := lessonFile(t, drill())
	out := filepath.Join(t.TempDir(), "reel.png")
	if _, errs, code := cli("export", file, "--out", out, "--fit", "10", "--at", "5", "--size", "320x320", "--look", "night"); code != exitOK {
		t.Fatalf("export --fit --look night: exit %d, %s", code, errs)
	}
	f, err := os.Open(out)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, _, err := image.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	pale, deep := 0, 0
	for y := range 320 {
		for x := range 320 {
			switch color.NRGBAModel.Convert(img.At(x, y)) {
			case look.Daylight.Court, look.Daylight.Surface, look.Daylight.Kitchen:
				pale++
			case look.Night.Court, look.Night.Surface, look.Night.Kitchen:
				deep++
			}
		}
	}
	if pale > 0 || deep < 320*320/4 {
		t.Errorf("at night %d pixels are of daylight's grounds, %d of the night's, want 0 and a quarter at least", pale, deep)
	}
}
