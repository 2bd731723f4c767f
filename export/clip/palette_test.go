package clip

import (
	"context"
	"image"
	"image/color"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/export"
	"homeside/export/exporttest"
	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/units"
)

func TestPaletteIsExactUpTo255Colours(t *testing.T) {
	for _, n := range []int{1, 2, 254, 255} {
		counts := map[rgb]int{}
		for i := range n {
			counts[rgb(i*65_537)&0xFFFFFF] = 1 + i%7
		}
		palette := newPalette(counts)
		x := newIndexer(palette)
		if len(palette) != len(counts) {
			t.Errorf("newPalette of %d colours has %d", len(counts), len(palette))
		}
		for c := range counts {
			if got := palette[x.index(c)]; got != c {
				t.Errorf("of %d colours, %06x became %06x", n, c, got)
			}
		}
	}
	if got := newPalette(nil); len(got) != 1 {
		t.Errorf("newPalette of nothing has %d colours, want 1", len(got))
	}
}

// Flat colours stay as they are among thousands of mixtures, and no mixture
// errs more than a step of an even division of the cube would.
func TestPaletteOfManyColours(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	counts := map[rgb]int{}
	flat := []rgb{0xE2EBE7, 0xD2DFDB, 0x0072B2, 0xE69F00, 0xFFFFFF, 0x16232A}
	for range 20_000 {
		a, b, share := flat[r.IntN(len(flat))], flat[r.IntN(len(flat))], r.Float64()
		mixed := rgb(0)
		for axis := range 3 {
			mixed = mixed<<8 | rgb(float64(a.channel(axis))*share+float64(b.channel(axis))*(1-share))
		}
		counts[mixed]++
	}
	for _, c := range flat {
		counts[c] += 10_000
	}
	palette := newPalette(counts)
	if len(palette) != 255 {
		t.Fatalf("newPalette of %d colours has %d, want 255", len(counts), len(palette))
	}
	x := newIndexer(palette)
	for _, c := range flat {
		if got := palette[x.index(c)]; got != c {
			t.Errorf("flat %06x became %06x", c, got)
		}
	}
	for c := range counts {
		if d := c.distance(palette[x.index(c)]); d > 3*20*20 {
			t.Errorf("%06x became %06x", c, palette[x.index(c)])
		}
	}
	if again := newPalette(counts); !slices.Equal(palette, again) {
		t.Error("two palettes of the same colours differ")
	}
}

func TestCutKeepsEveryColourOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var colours []counted
		for _, c := range rapid.SliceOfNDistinct(rapid.Uint32Range(0, 0xFFFFFF), 1, 60, rapid.ID).Draw(t, "colours") {
			colours = append(colours, counted{rgb(c), 1 + int(c%9)})
		}
		n := rapid.IntRange(1, 40).Draw(t, "boxes")
		boxes := cut(slices.Clone(colours), n)
		if want := min(n, len(colours)); len(boxes) != want {
			t.Fatalf("cut of %d colours into %d gave %d boxes, want %d", len(colours), n, len(boxes), want)
		}
		seen := map[rgb]bool{}
		for _, b := range boxes {
			for _, c := range b.colours {
				seen[c.c] = true
			}
		}
		if len(seen) != len(colours) {
			t.Fatalf("%d of %d colours are left", len(seen), len(colours))
		}
	})
}

// A film of few colours has them all in its palette, also those that come in a
// frame between those that are looked at first.
func TestFilmOfFewColoursIsExact(t *testing.T) {
	f, err := newFilm(blinks{}, &export.Options{Width: 16, Height: 16, FPS: 50}, "a GIF", GIFMaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	palette, err := f.palette(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if want := 1 + f.times.Count; len(palette) != want || f.times.Count <= sampled {
		t.Errorf("%d colours in %d frames, want %d in more than %d", len(palette), f.times.Count, want, sampled)
	}
	x := newIndexer(palette)
	c := f.camera()
	for i := range f.times.Count {
		img, _ := c.frame(i)
		for at := 0; at < len(img.Pix); at += 4 {
			if want := pixel(img.Pix[at:]); palette[x.index(want)] != want {
				t.Fatalf("frame %d: %06x became %06x", i, want, palette[x.index(want)])
			}
		}
	}
}

// blinks is a box in a colour that no other frame has, its sides between pixels.
type blinks struct{}

func (blinks) Span() (from, to units.Seconds) { return 0, 4 }

func (blinks) Static(w, h int) *canvas.Scene {
	return &canvas.Scene{Width: w, Height: h, PxPerPoint: 1, Background: color.NRGBA{250, 250, 250, 255}}
}

func (b blinks) Moving(w, h int, t units.Seconds) *canvas.Scene {
	s, frame := b.Static(w, h), uint8(math.Round(float64(t)*50))
	s.Panels = []canvas.Panel{{View: canvas.View{PxPerFoot: 1}}}
	s.Panels[0].Add(canvas.Shape{Path: canvas.Box(court.RectOf(court.Pt(2, -9), court.Pt(5, -4))), Style: canvas.Style{Fill: color.NRGBA{frame, 20, 30, 255}}})
	return s
}

// FFmpeg decodes the frames that were drawn: exactly if the palette has all
// colours, and otherwise with flat colours exact and edges close.
func TestGIFEqualsTheDrawing(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name string
		src  export.Source
		o    export.Options
		db   float64
	}{
		{"few colours", blinks{}, export.Options{Width: 33, Height: 17, FPS: 50}, math.Inf(1)},
		{"many colours", play, export.Options{Width: 180, Height: 320, FPS: 20}, 60},
		{"the built-in lesson", builtIn(t), export.Options{Width: 480, Height: 270, FPS: 4}, 50},
	} {
		f, err := newFilm(c.src, &c.o, "a GIF", GIFMaxFPS)
		if err != nil {
			t.Fatal(err)
		}
		decoded := exporttest.Decode(t, writeSource(t, ".gif", c.src, &c.o))
		if len(decoded) != f.times.Count {
			t.Errorf("%s: %d frames, want %d", c.name, len(decoded), f.times.Count)
		}
		if got := leastPSNR(f, decoded); got < c.db {
			t.Errorf("%s: PSNR %.1f dB in the worst frame, want %.1f", c.name, got, c.db)
		}
	}
}

// leastPSNR is the peak signal to noise ratio, in dB, of the worst frame beside
// the drawn ones.
func leastPSNR(f *film, decoded []*image.RGBA) float64 {
	least, c := math.Inf(1), f.camera()
	for i, got := range decoded {
		drawn, _ := c.frame(i)
		sum := 0.0
		for at := range drawn.Pix {
			d := float64(drawn.Pix[at]) - float64(got.Pix[at])
			sum += d * d
		}
		least = min(least, 10*math.Log10(255*255/(sum/float64(len(drawn.Pix)/4*3))))
	}
	return least
}
