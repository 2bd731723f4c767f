package clip

import (
	"bytes"
	"context"
	"image"
	"image/gif"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"homeside/export"
	"homeside/export/exporttest"
	_ "homeside/internal/fixedseed"
)

func TestPaletteIsExactUpTo256Colours(t *testing.T) {
	for _, n := range []int{1, 2, 255, 256} {
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
	if len(palette) != 256 {
		t.Fatalf("newPalette of %d colours has %d, want 256", len(counts), len(palette))
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

// The decoded GIF is the drawn picture: flat colours exactly, edges closely.
func TestGIFEqualsTheDrawing(t *testing.T) {
	o := &export.Options{Width: 180, Height: 320, FPS: 10}
	var b bytes.Buffer
	if err := WriteGIF(context.Background(), &b, play, o); err != nil {
		t.Fatal(err)
	}
	g, err := gif.DecodeAll(&b)
	if err != nil {
		t.Fatal(err)
	}
	f, err := newFilm(play, o, "a GIF", GIFMaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	c := f.camera()
	for i, got := range g.Image {
		drawn, exact := c.frame(i), 0
		eachPixel(drawn, func(at int, want rgb) {
			r, gr, bl, _ := got.Palette[got.Pix[at]].RGBA()
			shown := rgb(r>>8<<16 | gr>>8<<8 | bl>>8)
			if shown == want {
				exact++
			}
			if shown.distance(want) > 3*16*16 {
				t.Fatalf("frame %d, pixel %d: %06x is shown as %06x", i, at, want, shown)
			}
		})
		if share := float64(exact) / float64(180*320); share < 0.98 {
			t.Errorf("frame %d: %.3f of the pixels are exact, want 0.98", i, share)
		}
	}
}

func TestEachChangeFindsWhatDiffers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, h := rapid.IntRange(1, 9).Draw(t, "w"), rapid.IntRange(1, 5).Draw(t, "h")
		a, b := striped(w, h), striped(w, h)
		var want, got []int
		for _, at := range rapid.SliceOfDistinct(rapid.IntRange(0, w*h-1), rapid.ID).Draw(t, "changed") {
			a.Pix[4*at+at%3]++
			want = append(want, at)
		}
		slices.Sort(want)
		eachChange(a, b, func(at int, c rgb) {
			if c != pixel(a.Pix[4*at:]) {
				t.Fatalf("pixel %d: got %06x", at, c)
			}
			got = append(got, at)
		})
		if !slices.Equal(got, want) {
			t.Fatalf("eachChange found %v, want %v", got, want)
		}
	})
}

func striped(w, h int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for i := range img.Pix {
		img.Pix[i] = uint8(i * 7)
	}
	return img
}

// A short film has all its colours in the palette if they are few.
func TestFilmOfFewColoursIsExact(t *testing.T) {
	still := exporttest.Play{}
	f, err := newFilm(still, &export.Options{Width: 16, Height: 16}, "a GIF", GIFMaxFPS)
	if err != nil {
		t.Fatal(err)
	}
	palette, err := f.palette(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	x := newIndexer(palette)
	eachPixel(f.camera().frame(0), func(at int, c rgb) {
		if got := palette[x.index(c)]; got != c {
			t.Errorf("pixel %d: %06x became %06x", at, c, got)
		}
	})
}
