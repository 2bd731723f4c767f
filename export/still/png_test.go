package still

import (
	"bytes"
	"context"
	"image"
	"image/color"
	"image/png"
	"testing"

	"homeside/export"
	"homeside/export/exporttest"
	"homeside/model/court"
	"homeside/model/units"
)

var play = exporttest.Play{From: -1, To: 3}

func write(t *testing.T, src export.Source, o *export.Options) ([]byte, image.Image) {
	t.Helper()
	var b bytes.Buffer
	if err := WritePNG(context.Background(), &b, src, o); err != nil {
		t.Fatalf("WritePNG(%+v): %v", o, err)
	}
	img, err := png.Decode(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatalf("WritePNG(%+v) is no PNG: %v", o, err)
	}
	return b.Bytes(), img
}

func TestWritePNGShowsTheMomentToScale(t *testing.T) {
	for _, at := range []units.Seconds{-1, 0.5, 3} {
		_, img := write(t, play, &export.Options{Width: 300, Height: 600, At: &at})
		if got, want := img.Bounds(), image.Rect(0, 0, 300, 600); got != want {
			t.Fatalf("bounds %v, want %v", got, want)
		}
		v := exporttest.View(300, 600)
		for _, c := range []struct {
			name string
			at   court.Point
			want color.NRGBA
		}{
			{"court", court.Pt(5, 14), exporttest.Court},
			{"inside the corner", court.Pt(-9.7, 21.7), exporttest.Court},
			{"outside the corner", court.Pt(-10.2, 22.2), exporttest.Paper},
			{"disc", play.Centre(at).Add(court.Pt(0, 1)), exporttest.Disc},
		} {
			px := v.ToPx(c.at)
			if got := color.NRGBAModel.Convert(img.At(int(px.X), int(px.Y))); got != c.want {
				t.Errorf("at %v s, %s at %v: got %v, want %v", at, c.name, px, got, c.want)
			}
		}
	}
}

func TestWritePNGDefaults(t *testing.T) {
	calls := [2]int{}
	a, img := write(t, play, nil)
	b, _ := write(t, play, &export.Options{At: &play.From, Progress: func(done, total int) { calls = [2]int{done, total} }})
	if got, want := img.Bounds(), image.Rect(0, 0, 720, 1280); got != want {
		t.Errorf("bounds %v, want %v", got, want)
	}
	if !bytes.Equal(a, b) {
		t.Error("the default moment is not the start, or two pictures of it differ")
	}
	if calls != [2]int{1, 1} {
		t.Errorf("progress %v, want 1 of 1", calls)
	}
}

func TestWritePNGTransparent(t *testing.T) {
	_, img := write(t, exporttest.Play{To: 1, Transparent: true}, &export.Options{Width: 100, Height: 200})
	if _, _, _, a := img.At(1, 1).RGBA(); a != 0 {
		t.Errorf("corner has alpha %d, want 0", a)
	}
	if _, _, _, a := img.At(70, 60).RGBA(); a != 0xFFFF {
		t.Errorf("court has alpha %d, want 65535", a)
	}
}
