package clip

import (
	"bytes"
	"context"
	"image"
	"image/color"
	"image/png"
	"io"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
)

// The standard library reads every numbered picture exactly as it was drawn,
// clear and opaque, of odd size; a picture on paper has no alpha.
func TestPNGsEqualTheDrawing(t *testing.T) {
	for _, clear := range []bool{false, true} {
		o := export.Options{Width: 181, Height: 113, FPS: 9, Ground: export.Ground{Clear: clear}}
		f, err := clearFilm(builtIn(t), &o, "", export.MaxFPS)
		if err != nil {
			t.Fatal(err)
		}
		c, i := f.camera(), 0
		put := func(name string, write func(io.Writer) error) error {
			var b bytes.Buffer
			if err := write(&b); err != nil {
				return err
			}
			img, err := png.Decode(&b)
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			drawn, _ := c.frame(i)
			checkStraight(t, name, img, drawn, clear)
			if i++; name != pngName(i-1) || !OwnPNG(name) {
				t.Errorf("frame %d is called %s", i-1, name)
			}
			return nil
		}
		if err := FillPNGs(context.Background(), put, builtIn(t), &o); err != nil || i != f.times.Count {
			t.Errorf("FillPNGs: %v after %d pictures, want %d", err, i, f.times.Count)
		}
	}
}

// checkStraight compares a picture of straight colours with a drawn one, to the
// one step that taking the alpha out and putting it in again may cost.
func checkStraight(t *testing.T, name string, got image.Image, drawn *image.RGBA, clear bool) {
	t.Helper()
	if _, straight := got.(*image.NRGBA); straight != clear || got.Bounds() != drawn.Rect {
		t.Fatalf("%s is %T of %v, and clear is %v", name, got, got.Bounds(), clear)
	}
	for y := range drawn.Rect.Dy() {
		for x := range drawn.Rect.Dx() {
			p, q := drawn.RGBAAt(x, y), color.RGBAModel.Convert(got.At(x, y)).(color.RGBA)
			if p.A != q.A || !near(p.R, q.R, 1) || !near(p.G, q.G, 1) || !near(p.B, q.B, 1) || !clear && p != q {
				t.Fatalf("%s at %d, %d is %v, want %v", name, x, y, q, p)
			}
		}
	}
}

func TestOwnPNG(t *testing.T) {
	for name, want := range map[string]bool{"000001.png": true, "099999.png": true, "1.png": false, "000001.PNG": false, "x000001.png": false, "000001.png.bak": false, "": false} {
		if got := OwnPNG(name); got != want {
			t.Errorf("OwnPNG(%q) = %v, want %v", name, got, want)
		}
	}
}

// FFmpeg reads the pictures as editors of films do, by their numbers.
func TestPNGsReadByFFmpeg(t *testing.T) {
	folder := t.TempDir()
	err := export.SaveFolder(context.Background(), folder, OwnPNG, func(put export.Put) error { return FillPNGs(context.Background(), put, play, small()) })
	if err != nil {
		t.Fatal(err)
	}
	if got := exporttest.Probe(t, folder+"/%06d.png"); got.Codec != "png" || got.Width != 180 || got.Height != 320 || got.Frames != 20 {
		t.Errorf("ffprobe reads %+v, want 20 PNGs of 180 x 320", got)
	}
}
