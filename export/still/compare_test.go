package still

import (
	"bytes"
	"image"
	"image/draw"
	"image/png"
	"strconv"
	"testing"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/export"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/units"
)

// blockSide is the side of the blocks that are compared, in pixels.
const blockSide = 8

// tolerance is how far a picture drawn by another program may be from the PNG,
// in levels of 255. Programs smooth edges differently, and Poppler draws shapes
// a fraction of a pixel fatter; a shape that is missing, moved by a pixel or of
// another colour changes whole blocks.
type tolerance struct {
	mean  float64 // difference of a pixel on average
	block float64 // difference of a block's mean colour
}

var tolerances = map[string]tolerance{"SVG": {mean: 0.5, block: 8}, "PDF": {mean: 2, block: 16}}

// finer is how many pixels of pdftoppm make one of the PNG: it snaps thin lines
// to whole pixels, which hides what is compared at one to one.
const finer = 3

// renderers are programs from outside that draw a format, a pixel for a CSS
// pixel: librsvg, and Poppler.
var renderers = map[string]func(t *testing.T, content []byte) *image.RGBA{
	"SVG": func(t *testing.T, c []byte) *image.RGBA {
		return decoded(t, tool(t, "librsvg2-bin", c, "rsvg-convert", "FILE"))
	},
	"PDF": func(t *testing.T, c []byte) *image.RGBA {
		return coarser(decoded(t, tool(t, "poppler-utils", c, "pdftoppm", "-r", strconv.Itoa(96*finer), "-png", "FILE")))
	},
}

// coarser averages squares of pixels.
func coarser(img *image.RGBA) *image.RGBA {
	out := image.NewRGBA(image.Rectangle{Max: img.Rect.Size().Div(finer)})
	for y := range out.Rect.Dy() {
		for x := range out.Rect.Dx() {
			for channel := range 4 {
				sum := finer * finer / 2
				for i := range finer * finer {
					sum += int(img.Pix[img.PixOffset(x*finer+i%finer, y*finer+i/finer)+channel])
				}
				out.Pix[out.PixOffset(x, y)+channel] = uint8(sum / (finer * finer))
			}
		}
	}
	return out
}

// difference is how far a picture is from another of its size.
func difference(t *testing.T, a, b *image.RGBA) (d tolerance) {
	t.Helper()
	r := a.Rect
	if r != b.Rect {
		t.Fatalf("one picture is %v, the other %v", r, b.Rect)
	}
	for y := 0; y < r.Max.Y; y += blockSide {
		for x := 0; x < r.Max.X; x += blockSide {
			block := image.Rect(x, y, x+blockSide, y+blockSide).Intersect(r)
			sum, ofMean := blockDifference(a, b, block)
			d.mean += sum / float64(r.Dx()*r.Dy())
			d.block = max(d.block, ofMean)
		}
	}
	return d
}

// blockDifference adds up the pixels' differences over a block, averaged over
// the colours, and gives the difference of the block's mean colour.
func blockDifference(a, b *image.RGBA, block image.Rectangle) (sum, ofMean float64) {
	var by [3]int
	apart := 0
	for y := block.Min.Y; y < block.Max.Y; y++ {
		for x := block.Min.X; x < block.Max.X; x++ {
			at := a.PixOffset(x, y)
			for i := range by {
				d := int(a.Pix[at+i]) - int(b.Pix[at+i])
				by[i] += d
				apart += max(d, -d)
			}
		}
	}
	most := 0
	for _, d := range by {
		most = max(most, d, -d)
	}
	return float64(apart) / 3, float64(most) / float64(block.Dx()*block.Dy())
}

// decoded is a PNG picture.
func decoded(t *testing.T, content []byte) *image.RGBA {
	t.Helper()
	img, err := png.Decode(bytes.NewReader(content))
	if err != nil {
		t.Fatal(err)
	}
	out := image.NewRGBA(img.Bounds())
	draw.Draw(out, out.Rect, img, image.Point{}, draw.Src)
	return out
}

// builtIn is a play of the built-in lesson.
func builtIn(t *testing.T, play int, turn canvas.Turn) export.Source {
	t.Helper()
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	r, err := rally.Solve(l, play)
	if err != nil {
		t.Fatal(err)
	}
	return compose.Of(r, l.Venue.Surface(), turn)
}

func TestOtherProgramsDrawTheSamePicture(t *testing.T) {
	at := units.Seconds(1.2)
	for name, c := range map[string]struct {
		src export.Source
		o   export.Options
	}{
		"sampler":               {sampler{}, export.Options{Width: 360, Height: 640}},
		"odd sampler":           {sampler{}, export.Options{Width: 363, Height: 641}},
		"built-in lesson":       {builtIn(t, 0, canvas.Upright), export.Options{Width: 360, Height: 640, At: &at}},
		"built-in lesson, wide": {builtIn(t, 1, canvas.Lying), export.Options{Width: 640, Height: 360, At: &at}},
	} {
		want := decoded(t, writeBytes(t, "PNG", c.src, &c.o))
		for format, render := range renderers {
			got, most := difference(t, render(t, writeBytes(t, format, c.src, &c.o)), want), tolerances[format]
			if got.exceeds(most) {
				t.Errorf("%s as %s differs from the PNG by %+.2f, want at most %+v", name, format, got, most)
			}
		}
	}
}

func (d tolerance) exceeds(most tolerance) bool { return d.mean > most.mean || d.block > most.block }

// without is a sampler that lacks a shape or has it moved to the right.
type without struct {
	sampler
	id    string
	moved units.Feet // 0 to leave it out
}

func (w without) Static(width, height int) *canvas.Scene {
	return w.spoil(w.sampler.Static(width, height))
}

func (w without) Moving(width, height int, t units.Seconds) *canvas.Scene {
	return w.spoil(w.sampler.Moving(width, height, t))
}

func (w without) spoil(s *canvas.Scene) *canvas.Scene {
	for i := range s.Panels[0].Shapes {
		shape := &s.Panels[0].Shapes[i]
		switch {
		case shape.ID != w.id:
		case w.moved == 0:
			shape.Path, shape.Text = nil, nil
		case shape.Text != nil:
			shape.Text.At.X += w.moved
		default:
			for j := range shape.Path {
				for k := range shape.Path[j].P {
					shape.Path[j].P[k].X += w.moved
				}
			}
		}
	}
	return s
}

// The tolerances notice when any one shape is missing, and when one is a pixel
// out of its place.
func TestTolerancesNotice(t *testing.T) {
	o := &export.Options{Width: 360, Height: 640}
	want := decoded(t, writeBytes(t, "PNG", sampler{}, o))
	for _, s := range append(samplerPaths(), samplerTexts()...) {
		if s.Text == nil && s.Style.Fill.A == 0 && s.Style.Width == (canvas.Length{}) {
			continue // draws nothing
		}
		for _, moved := range []units.Feet{0, 0.1} {
			got := difference(t, decoded(t, writeBytes(t, "PNG", without{id: s.ID, moved: moved}, o)), want)
			for format, most := range tolerances {
				if !got.exceeds(most) && (moved == 0 || s.Style.Fill.A > 0) {
					t.Errorf("%s without %q, or with it moved by %v px, differs by %+.2f, which passes as %s", "sampler", s.ID, moved*10, got, format)
				}
			}
		}
	}
}
