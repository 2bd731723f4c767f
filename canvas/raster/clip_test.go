package raster_test

import (
	"bytes"
	"fmt"
	"image"
	"testing"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/canvas/raster"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/units"
)

// pictures are the plays of the first built-in lesson.
func pictures(t testing.TB, turn canvas.Turn) []compose.Picture {
	t.Helper()
	return picturesOf(t, assets.FirstLesson, turn)
}

// picturesOf are the plays of a built-in lesson.
func picturesOf(t testing.TB, name string, turn canvas.Turn) []compose.Picture {
	t.Helper()
	data, err := assets.Lessons.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	var out []compose.Picture
	for i := range l.Plays {
		out = append(out, picture(t, l, i, turn))
	}
	return out
}

func picture(t testing.TB, l lesson.Lesson, play int, turn canvas.Turn) compose.Picture {
	t.Helper()
	r, err := rally.Solve(l, play)
	if err != nil {
		t.Fatal(err)
	}
	return compose.Of(r, l.Venue.Surface(), turn)
}

// signalled is the play of the built-in lesson in which a signal is given.
const signalled = 2

// Over whole clips of the built-in lesson, every frame equals a full redraw
// byte for byte, and the changed tiles are those that differ.
func TestClipsEqualFullRedraws(t *testing.T) {
	for _, c := range []struct {
		sight compose.Sight
		w, h  int
	}{{compose.Sight{}, 180, 320}, {compose.Sight{Turn: canvas.Lying}, 481, 271}, {compose.Sight{Behind: compose.TheReceiver}, 320, 180}} {
		for k, p := range pictures(t, canvas.Upright) {
			if p = p.Seen(c.sight); p.Behind != compose.Nobody && k != signalled {
				continue
			}
			if kept := checkClip(t, fmt.Sprint("play ", k+1), p, c.w, c.h, 25); kept < 0.5 {
				t.Errorf("play %d at %dx%d: %.2f of the tiles stay, want half of them at least", k+1, c.w, c.h, kept)
			}
		}
	}
}

// So they do in every play of every other built-in lesson, in both looks.
func TestAllLessonsEqualFullRedraws(t *testing.T) {
	for i, name := range assets.LessonNames {
		for k, p := range picturesOf(t, name, canvas.Turn(i%2)) {
			if p.Look = &look.Daylight; k%2 == 1 {
				p.Look = &look.Night
			}
			checkClip(t, fmt.Sprint(name, " play ", k+1), p, 97, 131, 6)
		}
	}
}

// checkClip compares every frame of a clip with a full redraw, and gives the share
// of the tiles that stayed.
func checkClip(t *testing.T, name string, p compose.Picture, w, h, fps int) (kept float64) {
	t.Helper()
	static := p.Static(w, h)
	base := raster.Scene(static)
	frames, before := raster.NewFrames(static), base
	from, to := p.Span()
	changed, tiles := 0, 0
	for i := 0; from+units.Seconds(i)/units.Seconds(fps) <= to; i++ {
		moving := p.Moving(w, h, from+units.Seconds(i)/units.Seconds(fps))
		want := copied(base)
		raster.New(want).Draw(moving)
		if got := frames.Draw(moving); !bytes.Equal(got.Pix, want.Pix) {
			t.Fatalf("%s at %dx%d, frame %d is not the full redraw", name, w, h, i)
		}
		checkChanged(t, frames.Changed(), before, want)
		tiles += (w + 15) / 16 * ((h + 15) / 16)
		for range frames.Changed().Boxes() {
			changed++
		}
		before = want
	}
	return 1 - float64(changed)/float64(tiles)
}

func copied(img *image.RGBA) *image.RGBA {
	c := image.NewRGBA(img.Rect)
	copy(c.Pix, img.Pix)
	return c
}

func checkChanged(t *testing.T, changed *raster.Tiles, a, b *image.RGBA) {
	t.Helper()
	differs := map[image.Point]bool{}
	for i := range a.Pix {
		if a.Pix[i] != b.Pix[i] {
			differs[image.Pt(i%a.Stride/4/raster.TileSide, i/a.Stride/raster.TileSide)] = true
		}
	}
	for row := range (a.Rect.Dy() + 15) / 16 {
		for column := range (a.Rect.Dx() + 15) / 16 {
			if got, want := changed.Has(column, row), differs[image.Pt(column, row)]; got != want {
				t.Fatalf("Changed().Has(%d, %d) = %v, want %v", column, row, got, want)
			}
		}
	}
}

// frame is a large frame of the built-in lesson in the middle of its first play.
func frame(b *testing.B) (static *canvas.Scene, moving []*canvas.Scene) {
	const w, h = 1920, 1080
	p := pictures(b, canvas.Lying)[0]
	from, to := p.Span()
	for t := from; t < to; t += 1.0 / 30 {
		moving = append(moving, p.Moving(w, h, t))
	}
	return p.Static(w, h), moving
}

// The ways to draw the moving shapes of a frame, side by side: see gg_test.go
// for the one that is not in use.
func BenchmarkMoving(b *testing.B) {
	static, moving := frame(b)
	base := raster.Scene(static)
	overWhole := func(draw func(img *image.RGBA) canvas.Surface) func(*testing.B) {
		return func(b *testing.B) {
			img := copied(base)
			s := draw(img)
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				copy(img.Pix, base.Pix)
				canvas.Draw(s, moving[i%len(moving)])
			}
		}
	}
	b.Run("gg", overWhole(func(img *image.RGBA) canvas.Surface { return newGG(img, false) }))
	b.Run("gg, letters kept", overWhole(func(img *image.RGBA) canvas.Surface { return newGG(img, true) }))
	b.Run("vector", overWhole(func(img *image.RGBA) canvas.Surface { return raster.New(img) }))
	b.Run("vector, changed tiles", func(b *testing.B) {
		f := raster.Over(base)
		b.ReportAllocs()
		for i := 0; b.Loop(); i++ {
			f.Draw(moving[i%len(moving)])
		}
	})
	b.Run("only copy the picture", func(b *testing.B) {
		img := copied(base)
		for b.Loop() {
			copy(img.Pix, base.Pix)
		}
	})
}
