package film_test

import (
	"bytes"
	"testing"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/film"
	"homeside/canvas/look"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/lessonfile"
	"homeside/model/reel"
	"homeside/model/units"
)

// sizes are pictures of the shapes that clips have, small ones and 4K among them.
var sizes = [][2]int{{1080, 1920}, {1920, 1080}, {1080, 1080}, {1080, 1350}, {3840, 2160}, {720, 1280}, {360, 640}, {1000, 300}}

func builtIn(t testing.TB) lesson.Lesson {
	t.Helper()
	data, err := assets.Lessons.ReadFile(assets.FirstLesson)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lessonfile.Read(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	l.Logo = lessontest.SampleLogo()
	return l
}

// cameras are one of each kind.
var cameras = []lesson.Camera{
	{}, {Kind: lesson.HalfCourt}, {Kind: lesson.Follow, Player: game.Far1}, {Kind: lesson.PushIn, Player: game.Near2, Width: 14}, {Kind: lesson.BehindReceiver},
}

// taught is a reel of the first play with a camera, the second beside it if asked for.
func taught(t testing.TB, l lesson.Lesson, c lesson.Camera, beside int) lesson.Reel {
	t.Helper()
	f, err := reel.Fit(l, 0, 25, reel.FitOptions{Camera: c, Beside: beside})
	if err != nil {
		t.Fatal(err)
	}
	f.Reel.End = lesson.Card{Heading: "Now on the court", Text: "Slowly first."}
	f.Reel.Logo = lesson.TopRight
	return f.Reel
}

// reels are films of all cameras, of one play and of two.
func reels(t testing.TB) map[string]*film.Film {
	t.Helper()
	l := builtIn(t)
	all := map[string]*film.Film{}
	for _, c := range cameras {
		for beside, name := range []string{"", "", " beside another play"} {
			if name != "" || beside == 0 {
				r := taught(t, l, c, beside)
				all[c.Kind.String()+name] = film.Of(l, reel.Solve(l, r))
			}
		}
	}
	return all
}

// moments are some times of a clip, its ends among them.
func moments(f *film.Film, n int) (all []units.Seconds) {
	_, to := f.Span()
	for i := range n + 1 {
		all = append(all, to*units.Seconds(i)/units.Seconds(n))
	}
	return all
}

// extents is a Surface that keeps where words and logo are, in pixels.
type extents map[string][2]canvas.Px

func (e extents) Path(canvas.Info, []canvas.PxStep, canvas.PxStyle) {}

func (e extents) Text(info canvas.Info, t canvas.PxText) {
	w := look.Width(t.Text, t.Bold) * t.Size
	left := t.Start(w)
	e[info.Panel+"/"+info.ID] = [2]canvas.Px{{X: left, Y: t.At.Y - 0.75*t.Size}, {X: left + w, Y: t.At.Y + 0.25*t.Size}}
}

func (e extents) Image(info canvas.Info, g canvas.PxImage) {
	e[info.Panel+"/"+info.ID] = [2]canvas.Px{g.Min, g.Max}
}

func extentsOf(s *canvas.Scene) extents {
	e := extents{}
	canvas.Draw(e, s)
	return e
}
