package film_test

import (
	"slices"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/canvas/film"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/reel"
	"homeside/model/units"
)

// said are the words of a panel in their order.
func said(s *canvas.Scene, panel string) string {
	p, _ := panelOf(s, panel)
	var all []string
	for _, shape := range p.Shapes {
		if shape.Text != nil {
			all = append(all, shape.Text.Text)
		}
	}
	return strings.Join(all, " ")
}

// caption is what stands below a moment of a take.
func caption(t *testing.T, take lesson.Take, at units.Seconds) string {
	t.Helper()
	l := builtIn(t)
	return said(film.Of(l, reel.Solve(l, lesson.Reel{Takes: []lesson.Take{take}})).Moving(1080, 1080, at), "caption")
}

func TestCaptions(t *testing.T) {
	hold := []lesson.Freeze{{At: lesson.Anchor{Offset: 1}, Length: 2, Caption: "Look here."}}
	for _, c := range []struct {
		take lesson.Take
		at   units.Seconds
		want string
	}{
		{lesson.Take{Play: 1}, 0.5, "Four is even: Ines, who started, belongs on the right. So Tobin serves from the left."},
		{lesson.Take{Play: 1, Caption: "Slowly"}, 0.5, "Four is even: Ines, who started, belongs on the right. So Tobin serves from the left. Slowly"},
		{lesson.Take{Play: 1, Beside: 2, Caption: "Slowly"}, 0.5, "Slowly"},
		{lesson.Take{Play: 1, Beside: 2, Caption: "Slowly", Freezes: hold}, 3, "Look here."},
		{lesson.Take{Play: 1, Beside: 2}, 0.5, ""},
	} {
		if got := caption(t, c.take, c.at); got != c.want {
			t.Errorf("caption of %+v at %v = %q, want %q", c.take, c.at, got, c.want)
		}
	}
}

// A caption is cut where it has no room, and says so.
func TestLongCaptions(t *testing.T) {
	got := caption(t, lesson.Take{Play: 1, Beside: 2, Caption: strings.Repeat("many words ", 40)}, 1)
	if !strings.HasSuffix(got, "…") || len(got) > 150 {
		t.Errorf("a caption of 440 letters stands there as %q, want three lines that end in …", got)
	}
}

// Where two captions share the lines, what is cut says so, and the second has a line.
func TestTwoLongCaptions(t *testing.T) {
	got := caption(t, lesson.Take{Play: 1, Caption: strings.Repeat("many words ", 40)}, 0.5)
	if !strings.HasPrefix(got, "Four is even") || !strings.Contains(got, "many words") || !strings.HasSuffix(got, "…") {
		t.Errorf("with the play's own caption one of 440 letters stands there as %q, want both, the second cut", got)
	}
}

func TestSpeedAndLabels(t *testing.T) {
	l := builtIn(t)
	f := film.Of(l, reel.Solve(l, lesson.Reel{Takes: []lesson.Take{{Play: 1, Beside: 2, Speed: 0.25}, {Play: 1}}}))
	slow, match := f.Moving(1080, 1920, 1), f.Moving(1080, 1920, f.Reel.Takes[1].Start+1)
	if got := said(slow, "speed"); got != "0.25×" {
		t.Errorf("at a quarter of match speed it says %q, want 0.25×", got)
	}
	if got := said(match, "speed"); got != "" {
		t.Errorf("at match speed it says %q, want nothing", got)
	}
	if got, want := said(slow, "labels"), l.Plays[0].Title+" "+l.Plays[1].Title; got != want {
		t.Errorf("two plays are called %q, want %q", got, want)
	}
}

func TestCards(t *testing.T) {
	l := builtIn(t)
	for _, c := range []lesson.Card{
		{Heading: "Short"}, {Text: "Only a line"}, {Heading: "Both", Text: "of them"},
		{Heading: strings.Repeat("Unbelievably long heading ", 8), Text: strings.Repeat("and a text that is just as long ", 15)},
		{Heading: strings.Repeat("x", 200)},
	} {
		f := film.Of(l, reel.Solve(l, lesson.Reel{Title: c}))
		for _, size := range sizes {
			s := f.Moving(size[0], size[1], 1)
			got := strings.TrimSpace(said(s, "card"))
			if c.Heading != "" && len(c.Heading) < 20 && !strings.HasPrefix(got, c.Heading) || len(c.Text) < 20 && !strings.HasSuffix(got, c.Text) || got == "" {
				t.Errorf("card %+v at %v says %q", c, size, got)
			}
			for id, box := range extentsOf(s) {
				if safe := film.Safe(size[0], size[1]); box[0].X < safe.Min.X-1 || box[1].X > safe.Max.X+1 || box[0].Y < 0 || box[1].Y > float64(size[1]) {
					t.Errorf("card %.30q at %v: %s from %.0f to %.0f is outside", c.Heading, size, id, box[0], box[1])
				}
			}
		}
	}
}

func TestLogoInItsCorner(t *testing.T) {
	l := builtIn(t)
	for _, corner := range lesson.Corners {
		r := taught(t, l, lesson.Camera{}, 0)
		r.Logo = corner
		f := film.Of(l, reel.Solve(l, r))
		for _, at := range moments(f, 10) {
			box, there := extentsOf(f.Moving(1080, 1920, at))["logo/logo"]
			if there != (corner != lesson.NoCorner) {
				t.Fatalf("logo %v at %v is there: %v", corner, at, there)
			}
			x, y := (box[0].X+box[1].X)/2, (box[0].Y+box[1].Y)/2
			if there && ((x > 540) != corner.Right() || (y > 960) != corner.Bottom()) {
				t.Errorf("logo %v is at %.0f, %.0f of 1080x1920", corner, x, y)
			}
			if ratio := (box[1].X - box[0].X) / (box[1].Y - box[0].Y); there && (ratio < 1.99 || ratio > 2.01) {
				t.Errorf("a logo of 2 x 1 px is drawn %.2f times as wide as tall", ratio)
			}
		}
	}
}

// A logo that is no whole PNG picture is left out, and it is said why.
func TestBrokenLogos(t *testing.T) {
	png := lessontest.SampleLogo().PNG
	for _, c := range []struct{ png, want string }{
		{png[:len(png)-20], "read the logo"}, {"GIF89a", "the logo is not a PNG picture"}, {png[:16] + "\x00\x01\x00\x00" + png[20:], "the logo is too large"},
	} {
		g := lesson.Logo{PNG: c.png}
		if _, err := film.DecodeLogo(g); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("DecodeLogo(%.12q) = %v, want %q", c.png, err, c.want)
		}
		l := builtIn(t)
		l.Logo = g
		r := taught(t, l, lesson.Camera{}, 0)
		if _, there := extentsOf(film.Of(l, reel.Solve(l, r)).Moving(360, 640, 1))["logo/logo"]; there {
			t.Errorf("a logo %.12q is drawn", c.png)
		}
	}
	img, err := film.DecodeLogo(lessontest.SampleLogo())
	if err != nil || !slices.Equal(img.Pix, []byte{0x00, 0x72, 0xb2, 0xff, 0xe6, 0x9f, 0x00, 0x80}) {
		t.Errorf("DecodeLogo(sample) = %v, %v; want the two pixels as they are", img, err)
	}
}
