package clip

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"image/jpeg"
	"math"
	"math/rand/v2"
	"testing"

	"homeside/canvas/raster"
	"homeside/export"
	"homeside/export/exporttest"
)

// The transform is the sum that ITU-T T.81, A.3.3 gives, times 8.
func TestDCT(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		var b, in block
		for i := range b {
			b[i] = int32(r.IntN(256)) - 128
			if r.IntN(3) == 0 {
				b[i] = 127
			}
		}
		in = b
		b.dct()
		for v := range 8 {
			for u := range 8 {
				if got, want := float64(b[8*v+u]), 8*directDCT(&in, u, v); math.Abs(got-want) > 4 {
					t.Fatalf("coefficient %d, %d is %v, want %.2f", u, v, got, want)
				}
			}
		}
	}
}

func directDCT(b *block, u, v int) float64 {
	norm := func(k int) float64 {
		if k == 0 {
			return math.Sqrt2 / 4
		}
		return 0.5
	}
	sum := 0.0
	for y := range 8 {
		for x := range 8 {
			sum += float64(b[8*y+x]) * math.Cos(float64((2*x+1)*u)*math.Pi/16) * math.Cos(float64((2*y+1)*v)*math.Pi/16)
		}
	}
	return norm(u) * norm(v) * sum
}

func TestQuantise(t *testing.T) {
	for _, step := range []int32{1, 2, 3, 16, 99, 255} {
		recip := uint64(1<<32/uint64(8*step) + 1)
		for v := int32(-16_400); v <= 16_400; v += 7 {
			want := int32(math.Round(float64(v) / float64(8*step)))
			if got := quantise(v, step, recip); got != want {
				t.Fatalf("quantise(%d, %d) = %d, want %d", v, step, got, want)
			}
		}
	}
}

func TestYCC(t *testing.T) {
	for i := range 1000 {
		r, g, b := uint8(i*7), uint8(i*31), uint8(i*101)
		y, cb, cr := ycc(int32(r), int32(g), int32(b))
		wy, wcb, wcr := color.RGBToYCbCr(r, g, b)
		if y != int32(wy) || max(cb-int32(wcb), int32(wcb)-cb) > 1 || max(cr-int32(wcr), int32(wcr)-cr) > 1 {
			t.Fatalf("ycc(%d, %d, %d) = %d, %d, %d, the standard library has %d, %d, %d", r, g, b, y, cb, cr, wy, wcb, wcr)
		}
	}
}

// scrawl is a picture of flat boxes and noise.
func scrawl(w, h int, seed uint64) *image.RGBA {
	img, r := image.NewRGBA(image.Rect(0, 0, w, h)), rand.New(rand.NewPCG(seed, 1))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for range 12 {
		c := color.RGBA{uint8(r.IntN(256)), uint8(r.IntN(256)), uint8(r.IntN(256)), 255}
		noisy := r.IntN(4) == 0
		x0, y0 := r.IntN(w), r.IntN(h)
		for y := y0; y < min(h, y0+20); y++ {
			for x := x0; x < min(w, x0+30); x++ {
				if noisy {
					c.G = uint8(r.IntN(256))
				}
				img.SetRGBA(x, y, c)
			}
		}
	}
	return img
}

// The standard library's reader sees at least the picture that the standard
// library's writer of the same quality would have left, and for colour at every
// pixel a better one.
func TestStillsAgainstTheStandardLibrary(t *testing.T) {
	for _, size := range []image.Point{{16, 16}, {1, 1}, {17, 33}, {200, 40}, {129, 65}} {
		for _, full := range []bool{false, true} {
			img := scrawl(size.X, size.Y, uint64(size.X))
			ours := decodeJPEG(t, newStills(size.X, size.Y, full, &usual).next(nil, img, raster.NewTiles(size.X, size.Y)))
			var b bytes.Buffer
			if err := jpeg.Encode(&b, img, &jpeg.Options{Quality: jpegQuality}); err != nil {
				t.Fatal(err)
			}
			theirs := decodeJPEG(t, b.Bytes())
			got, want := psnrOf(img, ours), psnrOf(img, theirs)
			if got < want-0.3 || full && got < want {
				t.Errorf("%v, full colour %v: PSNR %.1f dB, the standard library has %.1f", size, full, got, want)
			}
		}
	}
}

func decodeJPEG(t *testing.T, b []byte) image.Image {
	t.Helper()
	img, err := jpeg.Decode(bytes.NewReader(b))
	if err != nil {
		t.Fatal(err)
	}
	return img
}

func psnrOf(a *image.RGBA, b image.Image) float64 {
	sum := 0.0
	for y := range a.Rect.Dy() {
		for x := range a.Rect.Dx() {
			p, q := a.RGBAAt(x, y), color.RGBAModel.Convert(b.At(x, y)).(color.RGBA)
			for _, d := range [3]float64{float64(p.R) - float64(q.R), float64(p.G) - float64(q.G), float64(p.B) - float64(q.B)} {
				sum += d * d
			}
		}
	}
	return 10 * math.Log10(255*255/max(sum/float64(3*a.Rect.Dx()*a.Rect.Dy()), 1e-9))
}

// A picture packed with what the one before left is the same as one packed anew.
func TestStillsReuseWhatStayed(t *testing.T) {
	const w, h = 190, 75
	for _, full := range []bool{false, true} {
		s, before := newStills(w, h, full, &usual), image.NewRGBA(image.Rect(0, 0, w, h))
		for seed := range uint64(12) {
			img := scrawl(w, h, seed/3)
			img.SetRGBA(int(seed)*16%w, int(seed)*7%h, color.RGBA{200, 0, 0, 255})
			changed := differing(before, img)
			got, want := s.next(nil, img, changed), newStills(w, h, full, &usual).next(nil, img, changed)
			if !bytes.Equal(got, want) {
				t.Fatalf("full colour %v, picture %d: the JPEG is not that of a fresh one", full, seed)
			}
			before = img
		}
	}
}

// A square of one colour is packed as the transform would have it.
func TestFlatSquares(t *testing.T) {
	for _, full := range []bool{false, true} {
		for _, c := range []color.RGBA{{0, 0, 0, 255}, {255, 255, 255, 255}, {200, 30, 90, 255}, {1, 254, 3, 255}} {
			flat, slow := newStills(16, 16, full, &usual), newStills(16, 16, full, &usual)
			img := image.NewRGBA(image.Rect(0, 0, 16, 16))
			draw.Draw(img, img.Rect, image.NewUniform(c), image.Point{}, draw.Src)
			if !flat.flat(img, 0, 0) {
				t.Fatalf("a square of %v is not flat", c)
			}
			slow.transform(img, 0, 0)
			flat.coder.end()
			slow.coder.end()
			if !bytes.Equal(flat.coder.out, slow.coder.out) || len(slow.coder.out) == 0 {
				t.Errorf("%v, full colour %v: % x, want % x", c, full, flat.coder.out, slow.coder.out)
			}
			img.SetRGBA(15, 7, color.RGBA{9, 9, 9, 255})
			if q := newStills(16, 16, false, &usual); q.flat(img, 0, 0) {
				t.Errorf("a square with a dot on %v is flat", c)
			}
		}
	}
}

// differing are the tiles in which two pictures differ.
func differing(a, b *image.RGBA) *raster.Tiles {
	tiles := raster.NewTiles(a.Rect.Dx(), a.Rect.Dy())
	for i := range a.Pix {
		if a.Pix[i] != b.Pix[i] {
			x, y := i%a.Stride/4, i/a.Stride
			tiles.Add(image.Rect(x, y, x+1, y+1))
		}
	}
	return tiles
}

// FFmpeg decodes frames close to those drawn. The tolerance is what quality 92
// leaves: halved colour costs the edges between strong colours.
func TestAVIEqualsTheDrawing(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		full bool
		db   float64
	}{{false, 38}, {true, 43}} {
		o := export.Options{Width: 481, Height: 271, FPS: 4, FullColour: c.full}
		src := builtIn(t)
		f, err := newFilm(src, &o, "an AVI", export.MaxFPS)
		if err != nil {
			t.Fatal(err)
		}
		decoded := exporttest.Decode(t, writeSource(t, ".avi", src, &o))
		if got := leastPSNR(f, decoded); got < c.db || len(decoded) != f.times.Count {
			t.Errorf("full colour %v: %d frames, PSNR %.1f dB in the worst, want %d and %.1f", c.full, len(decoded), got, f.times.Count, c.db)
		}
	}
}

// No picture, not even noise, is packed in more bytes than its samples are: a film
// that is short enough in them needs no look ahead.
func TestStillsAreSmallerThanTheirSamples(t *testing.T) {
	const w, h = 320, 200
	r, noise := rand.New(rand.NewPCG(9, 9)), image.NewRGBA(image.Rect(0, 0, w, h))
	for i := range noise.Pix {
		noise.Pix[i] = byte(r.Uint32())
	}
	for _, full := range []bool{false, true} {
		for _, first := range []*image.RGBA{noise, scrawl(w, h, 1)} {
			s := newStills(w, h, full, newStills(w, h, full, &usual).suiting(first))
			if got := len(s.next(nil, noise, raster.NewTiles(w, h))); got >= s.raw() {
				t.Errorf("full colour %v: noise takes %d bytes, its samples %d", full, got, s.raw())
			}
		}
	}
}
