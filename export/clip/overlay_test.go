package clip

import (
	"image"
	"math"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

// overlays are the clips that are laid over others, with FFmpeg's decoder that
// knows their alpha and the least PSNR of what is seen over black and of alpha.
// VP9 is packed at a constant quality, ProRes nearly without loss.
var overlays = []struct {
	ext, decoder string
	db           float64
	opaque       string // pixels without and with alpha
	clear        string
}{
	{".webm", "libvpx-vp9", 33, "yuv420p", "yuv420p"}, // alpha is a picture of its own beside it
	{".mov", "", 44, "yuv444p12le", "yuva444p12le"},
}

// FFmpeg decodes pictures close to those drawn, on paper and on nothing; there is
// alpha only where it was asked for.
func TestOverlaysEqualTheDrawing(t *testing.T) {
	t.Parallel()
	src := builtIn(t)
	for _, c := range overlays {
		for _, clear := range []bool{false, true} {
			from := seconds(0)
			o := export.Options{Width: 320, Height: 180, FPS: 10, From: from, To: seconds(1), Ground: export.Ground{Clear: clear}}
			f, err := clearFilm(src, &o, "a clip", export.MaxFPS)
			if err != nil {
				t.Fatal(err)
			}
			path := writeSource(t, c.ext, src, &o)
			decoded := exporttest.DecodeWith(t, path, c.decoder)
			if len(decoded) != 10 {
				t.Fatalf("%s: %d frames, want 10", c.ext, len(decoded))
			}
			colour, alpha := leastOverBlack(f, decoded)
			if colour < c.db || alpha < c.db {
				t.Errorf("%s, clear %v: over black PSNR %.1f dB, of alpha %.1f, want %.0f in the worst frame", c.ext, clear, colour, alpha, c.db)
			}
			if !clear && !math.IsInf(alpha, 1) {
				t.Errorf("%s on paper: alpha has PSNR %.1f dB, want none missing", c.ext, alpha)
			}
			want := c.opaque
			if clear {
				want = c.clear
			}
			if got := exporttest.PixelFormat(t, path); got != want || (decoded[0].RGBAAt(2, 90).A == 0) != clear {
				t.Errorf("%s, clear %v: pixels %s, alpha beside the court %d, want %s", c.ext, clear, got, decoded[0].RGBAAt(2, 90).A, want)
			}
		}
	}
}

// leastOverBlack is the PSNR in dB of the worst frame, of what is seen over black
// and of alpha; decoded frames are straight.
func leastOverBlack(f *film, decoded []*image.RGBA) (colour, alpha float64) {
	colour, alpha = math.Inf(1), math.Inf(1)
	c := f.camera()
	for i, got := range decoded {
		drawn, _ := c.frame(i)
		var sumC, sumA float64
		for at := 0; at < len(drawn.Pix); at += 4 {
			p, q := drawn.Pix[at:at+4], got.Pix[at:at+4]
			for k := range 3 {
				d := float64(p[k]) - float64(q[k])*float64(q[3])/255
				sumC += d * d
			}
			d := float64(p[3]) - float64(q[3])
			sumA += d * d
		}
		n := float64(len(drawn.Pix) / 4)
		colour, alpha = min(colour, 10*math.Log10(255*255/(sumC/(3*n)))), min(alpha, 10*math.Log10(255*255/(sumA/n)))
	}
	return colour, alpha
}

// Chromium, another reader, lays a clear WebM over the page: the corner shows the
// page, the court its own colour.
func TestChromiumLaysWebMOver(t *testing.T) {
	o := &export.Options{Width: 180, Height: 320, FPS: 10, Ground: export.Ground{Clear: true}}
	clip := writeFile(t, ".webm", o)
	page := showing(t, clip, `<video src="clip.webm" muted autoplay></video>`, "#ff0080")
	page.Until(`document.querySelector("video").ended || document.querySelector("video").currentTime > 0.5`)
	img := page.Picture()
	if got := img.RGBAAt(2, 2); !near(got.R, 0xFF, 4) || !near(got.G, 0, 4) || !near(got.B, 0x80, 4) {
		t.Errorf("Chromium shows %v in the clear corner, want the page's #ff0080", got)
	}
	v := exporttest.View(180, 320).ToPx(play.Centre(0.5))
	if got := img.RGBAAt(int(v.X)+40, int(v.Y)+60); !near(got.R, exporttest.Court.R, 8) || !near(got.G, exporttest.Court.G, 8) || !near(got.B, exporttest.Court.B, 8) {
		t.Errorf("Chromium shows %v on the court, want %v", got, exporttest.Court)
	}
	if got := page.Errors(); len(got) > 0 || len(page.Requests()) != 2 {
		t.Errorf("errors %q, requests %q, want none and two", got, page.Requests())
	}
}

func near(a, b uint8, within int) bool { return int(a)-int(b) <= within && int(b)-int(a) <= within }
