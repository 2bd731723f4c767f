package clip

import (
	"encoding/base64"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/units"
)

func seconds(v float64) *units.Seconds { return new(units.Seconds(v)) }

// showing opens a page beside a clip, with the clip in its upper left corner on a
// ground, in headless Chromium.
func showing(t *testing.T, clip, element, ground string) *exporttest.Page {
	t.Helper()
	path := filepath.Join(filepath.Dir(clip), "page.html")
	html := fmt.Sprintf(`<!doctype html><meta charset="utf-8"><title>clip</title><style>body { margin: 0; background: %s } img, video { display: block }</style>%s`, ground, element)
	if err := os.WriteFile(path, []byte(html), 0o600); err != nil {
		t.Fatal(err)
	}
	return exporttest.OpenPage(t, path, 320, 360)
}

// Chromium reads a GIF and an animated PNG: their size, and in every frame the
// colours that were drawn; its ImageDecoder counts and times the frames.
func TestChromiumReadsAnimations(t *testing.T) {
	for ext, kind := range map[string]string{".gif": "image/gif", ".apng": "image/apng"} {
		within := 0
		if ext == ".gif" {
			within = 4 // this play has more colours than a palette
		}
		o := small()
		clip := writeFile(t, ext, o)
		page := showing(t, clip, `<img src="clip`+ext+`">`, "white")
		page.Until(`document.images[0].complete && document.images[0].naturalWidth > 0`)
		size := exporttest.Eval[[]int](page, `[document.images[0].naturalWidth, document.images[0].naturalHeight]`)
		if size[0] != o.Width || size[1] != o.Height {
			t.Errorf("%s: Chromium reads %v px, want %d x %d", ext, size, o.Width, o.Height)
		}
		data, err := os.ReadFile(clip)
		if err != nil {
			t.Fatal(err)
		}
		f, err := newFilm(play, o, "a clip", export.MaxFPS)
		if err != nil {
			t.Fatal(err)
		}
		checkDecoded(t, ext, decodedByChromium(page, kind, data), f, within)
		if got := page.Errors(); len(got) > 0 {
			t.Errorf("%s: %q", ext, got)
		}
	}
}

// decoded is what Chromium's ImageDecoder makes of a file.
type decoded struct {
	Frames      int
	Repeats     string    // Infinity
	DurationsMs []float64 // of every frame
	Some        [][]int   // of every frame: the colours of some pixels in turn
}

func decodedByChromium(p *exporttest.Page, kind string, data []byte) decoded {
	return exporttest.Eval[decoded](p, fmt.Sprintf(`(async () => {
		const bytes = Uint8Array.from(atob(%q), c => c.charCodeAt(0));
		const d = new ImageDecoder({type: %q, data: bytes});
		await d.completed; await d.tracks.ready;
		const track = d.tracks.selectedTrack;
		const out = {Frames: track.frameCount, Repeats: String(track.repetitionCount), DurationsMs: [], Some: []};
		for (let i = 0; i < track.frameCount; i++) {
			const {image} = await d.decode({frameIndex: i});
			const c = new OffscreenCanvas(image.displayWidth, image.displayHeight), g = c.getContext("2d");
			g.drawImage(image, 0, 0);
			const p = g.getImageData(0, 0, c.width, c.height).data, some = [];
			for (let at = 0; at < p.length; at += 4 * 997) some.push(p[at], p[at + 1], p[at + 2]);
			out.DurationsMs.push(image.duration / 1000); out.Some.push(some);
		}
		return out;
	})()`, base64.StdEncoding.EncodeToString(data), kind))
}

// checkDecoded compares every frame's picked pixels with those drawn.
func checkDecoded(t *testing.T, ext string, got decoded, f *film, within int) {
	t.Helper()
	if got.Frames != f.times.Count || got.Repeats != "Infinity" {
		t.Fatalf("%s: Chromium finds %d frames, repeated %s times, want %d for ever", ext, got.Frames, got.Repeats, f.times.Count)
	}
	c := f.camera()
	for i := range got.Frames {
		if got.DurationsMs[i] != 1000/float64(f.o.FPS) {
			t.Errorf("%s: Chromium shows frame %d for %v ms, want %v", ext, i, got.DurationsMs[i], 1000/float64(f.o.FPS))
		}
		img, _ := c.frame(i)
		for k := 0; k*997 < len(img.Pix)/4; k++ {
			want := img.Pix[4*997*k:][:3]
			if g := got.Some[i][3*k:][:3]; !near(uint8(g[0]), want[0], within) || !near(uint8(g[1]), want[1], within) || !near(uint8(g[2]), want[2], within) {
				t.Errorf("%s: in frame %d Chromium reads %v at pixel %d, want %v", ext, i, g, 997*k, want)
			}
		}
	}
}
