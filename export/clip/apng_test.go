package clip

import (
	"bytes"
	"image/png"
	"math"
	"os"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

// FFmpeg decodes exactly what was drawn.
func TestAPNGEqualsTheDrawing(t *testing.T) {
	t.Parallel()
	for name, src := range map[string]export.Source{"the built-in lesson": builtIn(t), "few colours": blinks{}} {
		o := export.Options{Width: 301, Height: 170, FPS: 4}
		f, err := newFilm(src, &o, "an APNG", export.MaxFPS)
		if err != nil {
			t.Fatal(err)
		}
		decoded := exporttest.Decode(t, writeSource(t, ".apng", src, &o))
		if got := leastPSNR(f, decoded); !math.IsInf(got, 1) || len(decoded) != f.times.Count {
			t.Errorf("%s: %d frames, PSNR %.1f dB in the worst, want %d exact ones", name, len(decoded), got, f.times.Count)
		}
	}
}

// Where nothing is drawn, the clip is transparent, also where something was
// drawn before; alpha is as drawn, and colours too where they can be seen.
func TestAPNGIsTransparent(t *testing.T) {
	t.Parallel()
	src := exporttest.Play{To: 2, Transparent: true}
	o := export.Options{Width: 90, Height: 160, FPS: 10}
	f, err := clearFilm(src, &o, "an APNG", export.MaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	c := f.camera()
	for i, got := range exporttest.Decode(t, writeSource(t, ".apng", src, &o)) {
		drawn, _ := c.frame(i)
		clear := 0
		for at := 0; at < len(drawn.Pix); at += 4 {
			p, q, a := drawn.Pix[at:at+4], got.Pix[at:at+4], int(drawn.Pix[at+3])
			if int(q[3]) != a {
				t.Fatalf("frame %d, pixel %d: alpha %d, want %d", i, at/4, q[3], a)
			}
			if a == 0 {
				clear++
			}
			for k := range 3 {
				if want := int(p[k]); (int(q[k])*a+127)/255-want > 1 || want-(int(q[k])*a+127)/255 > 1 {
					t.Fatalf("frame %d, pixel %d: %v, want %v with the alpha taken out", i, at/4, q, p)
				}
			}
		}
		if clear < len(drawn.Pix)/40 {
			t.Errorf("frame %d: %d pixels are clear", i, clear)
		}
	}
}

// A reader that knows no animation shows the first frame.
func TestAPNGIsAPNG(t *testing.T) {
	b, err := os.ReadFile(writeFile(t, ".apng", small()))
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(b))
	if err != nil {
		t.Fatal(err)
	}
	f, err := newFilm(play, small(), "an APNG", export.MaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	want, _ := f.camera().frame(0)
	if got := psnrOf(want, img); got < 100 {
		t.Errorf("the still of an APNG has PSNR %.1f dB, want the first frame", got)
	}
}
