package still

import (
	"bytes"
	"context"
	"errors"
	"image"
	"image/color"
	"image/png"
	"io"
	"strings"
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

func TestWritePNGErrors(t *testing.T) {
	late := units.Seconds(4)
	for _, c := range []struct {
		o    export.Options
		want string
	}{
		{export.Options{At: &late}, "at 4 s is outside the -1 to 3 s of the play"},
		{export.Options{Width: 9000, Height: 100}, "width 9000 px is outside"},
	} {
		if err := WritePNG(context.Background(), io.Discard, play, &c.o); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("WritePNG(%+v) = %v, want %q", c.o, err, c.want)
		}
	}
	broken := errors.New("broken")
	if err := WritePNG(context.Background(), failing{broken}, play, nil); !errors.Is(err, broken) || !strings.Contains(err.Error(), "write the PNG") {
		t.Errorf("WritePNG to a broken writer = %v, want %v", err, broken)
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

// cancelling cancels when the first bytes come and then takes everything.
type cancelling struct {
	cancel context.CancelFunc
	writes int
}

func (c *cancelling) Write(p []byte) (int, error) { c.cancel(); c.writes++; return len(p), nil }

func TestWritePNGCancel(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	w := &cancelling{cancel: cancel}
	for range 2 { // in the middle, then before it begins
		if err := WritePNG(ctx, w, play, nil); !errors.Is(err, context.Canceled) || w.writes != 1 {
			t.Errorf("cancelled: got %v after %d writes, want %v after 1", err, w.writes, context.Canceled)
		}
	}
}
