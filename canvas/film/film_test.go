package film_test

import (
	"bytes"
	"image"
	"math"
	"strings"
	"sync"
	"testing"

	"homeside/canvas"
	"homeside/canvas/film"
	"homeside/canvas/raster"
	"homeside/canvas/record"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/reel"
	"homeside/model/units"
)

// panelOf is a panel of a scene by its name.
func panelOf(s *canvas.Scene, name string) (canvas.Panel, bool) {
	for _, p := range s.Panels {
		if p.Name == name {
			return p, true
		}
	}
	return canvas.Panel{}, false
}

// Within a take a camera never jumps: from one 60th of a second to the next no
// point of the court moves by more than a 50th of the picture's shorter side, and
// its way does not bend sharply: the second difference stays below a 500th.
func TestCamerasAreSmooth(t *testing.T) {
	const w, h, fps = 1080, 1920, 60
	corners := []court.Point{court.Pt(-10, -22), court.Pt(10, 22), court.Pt(0, 0)}
	all := reels(t)
	for _, name := range []string{"follow", "push-in", "follow beside another play"} {
		f := all[name]
		for _, take := range f.Reel.Takes {
			var before, last []canvas.Px
			for at := take.Start; at < take.End-1.0/fps; at += 1.0 / fps {
				p, ok := panelOf(f.Moving(w, h, at), "court")
				if !ok {
					t.Fatalf("%s at %v has no court", name, at)
				}
				var now []canvas.Px
				for i, c := range corners {
					px := p.View.ToPx(c)
					now = append(now, px)
					if last != nil && math.Hypot(px.X-last[i].X, px.Y-last[i].Y) > w/50 {
						t.Fatalf("%s: %v moves from %v to %v in a frame at %.2f s", name, c, last[i], px, float64(at))
					}
					if before != nil && math.Hypot(px.X-2*last[i].X+before[i].X, px.Y-2*last[i].Y+before[i].Y) > w/500.0 {
						t.Fatalf("%s: %v jerks at %.2f s: %v, %v, %v", name, c, float64(at), before[i], last[i], px)
					}
				}
				before, last = last, now
			}
		}
	}
}

// The camera of the whole court shows every player all the time, clear of captions.
func TestWholeCourtShowsEverybody(t *testing.T) {
	f := reels(t)["court"]
	for _, size := range sizes {
		for _, at := range moments(f, 40) {
			m := f.Reel.At(at)
			if m.Card != nil {
				continue
			}
			s := f.Moving(size[0], size[1], at)
			p, _ := panelOf(s, "moving.court")
			floor := float64(size[1])
			for id, box := range extentsOf(s) {
				if strings.HasPrefix(id, "caption/") {
					floor = min(floor, box[0].Y)
				}
			}
			for _, id := range game.Players {
				px := p.View.ToPx(f.Reel.Takes[m.Take].Rally.At(m.T).Players[id].Run.Place)
				if px.X < 0 || px.Y < 0 || px.X > float64(size[0]) || px.Y > floor {
					t.Errorf("at %dx%d, %.1f s %v is at %.0f, want in the picture and above the caption at %.0f", size[0], size[1], float64(at), id, px, floor)
				}
			}
		}
	}
}

// The camera of half the court shows that half up to the net, clear of captions, and
// nothing of the other half beside or below them.
func TestHalfTheCourt(t *testing.T) {
	l := builtIn(t)
	for _, end := range court.Ends {
		f := film.Of(l, reel.Solve(l, lesson.Reel{Takes: []lesson.Take{{Play: 1, Camera: lesson.Camera{Kind: lesson.HalfCourt, End: end}}}}))
		for _, size := range sizes {
			s := f.Moving(size[0], size[1], 1)
			p, _ := panelOf(s, "court")
			floor := float64(size[1])
			for id, box := range extentsOf(s) {
				if strings.HasPrefix(id, "caption/") {
					floor = min(floor, box[0].Y)
				}
			}
			base := court.Bounds.Max.Y
			if end == court.Near {
				base = -base
			}
			for _, at := range []court.Point{court.Pt(-10, base), court.Pt(10, base), court.Pt(-10, 0), court.Pt(10, 0)} {
				if px := p.View.ToPx(at); px.X < 0 || px.Y < 0 || px.X > float64(size[0]) || px.Y > floor {
					t.Errorf("%v half at %dx%d: %v is at %.0f, want in the picture and above the caption at %.0f", end, size[0], size[1], at, px, floor)
				}
			}
			if floor == float64(size[1]) || p.Clip.Max.Y > floor {
				t.Errorf("%v half at %dx%d is drawn down to %.0f, the caption begins at %.0f", end, size[0], size[1], p.Clip.Max.Y, floor)
			}
		}
	}
}

// Who is followed stays in the picture, and the camera that follows looks beyond
// the playing surface only where more than the surface fits into the picture.
func TestFollowing(t *testing.T) {
	l := builtIn(t)
	surface := l.Venue.Surface()
	for _, id := range game.Players {
		r := lesson.Reel{Takes: []lesson.Take{{Play: 1, Camera: lesson.Camera{Kind: lesson.Follow, Player: id, Width: 15}}}}
		l.Plays[0].Cues = nil
		f := film.Of(l, reel.Solve(l, r))
		for _, at := range moments(f, 50) {
			p, _ := panelOf(f.Moving(1080, 1080, at), "moving.court")
			m := f.Reel.At(at)
			px := p.View.ToPx(f.Reel.Takes[0].Rally.At(m.T).Players[id].Run.Place)
			if px.X < 50 || px.X > 1030 || px.Y < 50 || px.Y > 1030 {
				t.Errorf("%v is at %.0f at %.1f s, want well in the picture", id, px, float64(at))
			}
			seen := court.RectOf(p.View.ToCourt(canvas.Px{Y: 1080}), p.View.ToCourt(canvas.Px{X: 1080}))
			a, b := seen.Min, seen.Max
			const beyond = 2.01 // ft, round a player who stands at the edge
			if a.X < surface.Min.X-beyond || a.Y < surface.Min.Y-beyond || b.X > surface.Max.X+beyond || b.Y > surface.Max.Y+beyond {
				t.Errorf("the camera on %v shows %v to %v at %.1f s, beyond the surface %v", id, a, b, float64(at), surface)
			}
		}
	}
}

// Two courts side by side do not lie over each other.
func TestTwoCourtsStayApart(t *testing.T) {
	for name, f := range reels(t) {
		if !strings.Contains(name, "beside") {
			continue
		}
		for _, size := range sizes {
			for _, at := range moments(f, 10) {
				s := f.Moving(size[0], size[1], at)
				left, ok := panelOf(s, "court")
				right, _ := panelOf(s, "beside.court")
				if !ok {
					continue // a card
				}
				a, b := left.Clip, right.Clip
				if a.Max.X > b.Min.X && a.Max.Y > b.Min.Y || a.Max.X < 1 || b.Max.X < 1 {
					t.Errorf("%s at %dx%d: the courts are drawn on %v and %v, want them apart", name, size[0], size[1], a, b)
				}
			}
		}
	}
}

// Over a whole reel, cards, freezes and cuts included, every frame equals a full
// redraw byte for byte.
func TestReelsEqualFullRedraws(t *testing.T) {
	const w, h, fps = 90, 160, 4
	for name, f := range reels(t) {
		static := f.Static(w, h)
		frames := raster.NewFrames(static)
		base := raster.Scene(static)
		_, to := f.Span()
		for i := 0; units.Seconds(i)/fps <= to; i++ {
			moving := f.Moving(w, h, units.Seconds(i)/fps)
			want := image.NewRGBA(base.Rect)
			copy(want.Pix, base.Pix)
			raster.New(want).Draw(moving)
			if got := frames.Draw(moving); !bytes.Equal(got.Pix, want.Pix) {
				t.Fatalf("%s: the frame at %.2f s is not the full redraw", name, float64(i)/fps)
			}
		}
	}
}

// The same moment gives the same scene, also to several at once.
func TestFilmIsASnapshot(t *testing.T) {
	f := reels(t)["push-in"]
	all := moments(f, 16)
	want := make([]string, len(all))
	for i, at := range all {
		want[i] = record.Scene(f.Moving(360, 640, at))
	}
	fresh := reels(t)["push-in"]
	var wait sync.WaitGroup
	for range 4 {
		wait.Go(func() {
			for i, at := range all {
				if got := record.Scene(fresh.Moving(360, 640, at)); got != want[i] {
					t.Errorf("at %v another goroutine sees\n%s\nwant\n%s", at, got, want[i])
				}
			}
		})
	}
	wait.Wait()
}

// A reel of nothing is a picture of nothing.
func TestEmptyReel(t *testing.T) {
	l := builtIn(t)
	f := film.Of(l, reel.Solve(l, lesson.Reel{}))
	if from, to := f.Span(); from != 0 || to != 0 {
		t.Errorf("Span = %v, %v, want 0, 0", from, to)
	}
	for _, at := range []units.Seconds{0, 5, units.Seconds(math.NaN())} {
		if e := extentsOf(f.Moving(360, 640, at)); len(e) > 0 {
			t.Errorf("at %v an empty reel has words: %v", at, e)
		}
	}
}
