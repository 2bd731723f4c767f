package still

import (
	"bytes"
	"image"
	"image/color"
	"testing"

	"homeside/canvas"
	"homeside/export"
	"homeside/model/units"
)

// logoed is the sampler under an image with a hole and parts that shine through,
// a pixel of it for one of the picture.
type logoed struct {
	sampler
	logo *image.NRGBA
}

func (l logoed) Moving(width, height int, t units.Seconds) *canvas.Scene {
	s := l.sampler.Moving(width, height, t)
	at := func(x, y int) canvas.Pos { return canvas.Pos{Right: canvas.Points(x), Down: canvas.Points(y)} }
	s.Panels = append(s.Panels, canvas.Panel{Name: "logo", View: canvas.View{PxPerFoot: 1}, Shapes: []canvas.Shape{{
		ID: "logo", Label: "a club's logo", Image: &canvas.Image{Min: at(24, 104), Max: at(104, 152), Pix: l.logo},
	}}})
	return s
}

func testLogo() *image.NRGBA {
	img := image.NewNRGBA(image.Rect(0, 0, 80, 48))
	for y := range 48 {
		for x := range 80 {
			c := color.NRGBA{R: 0xD5, G: 0x5E, A: 255}
			switch {
			case x >= 32 && x < 48 && y >= 16 && y < 32:
				c.A = 0
			case x >= 56:
				c = color.NRGBA{B: 0xB2, G: 0x72, A: uint8(255 - 3*y)}
			}
			img.SetNRGBA(x, y, c)
		}
	}
	return img
}

func TestOtherProgramsDrawTheSameImage(t *testing.T) {
	src, o := logoed{logo: testLogo()}, &export.Options{Width: 360, Height: 640}
	want := decoded(t, writeBytes(t, "PNG", src, o))
	if got := difference(t, decoded(t, writeBytes(t, "PNG", sampler{}, o)), want); got.block < 30 {
		t.Errorf("a picture without the logo differs by %+.2f only: the logo is not there", got)
	}
	for format, render := range renderers {
		got, most := difference(t, render(t, writeBytes(t, format, src, o)), want), tolerances[format]
		if got.exceeds(most) {
			t.Errorf("a logo as %s differs from the PNG by %+.2f, want at most %+v", format, got, most)
		}
	}
	if svg := writeBytes(t, "SVG", src, o); !bytes.Contains(svg, []byte(`aria-label="a club&#39;s logo"`)) {
		t.Error("the SVG does not say what the logo is")
	}
	if a, b := writeBytes(t, "PDF", src, o), writeBytes(t, "PDF", src, o); !bytes.Equal(a, b) {
		t.Error("the same picture with a logo gives two different PDFs")
	}
}
