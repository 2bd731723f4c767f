package compose

import (
	"testing"

	"pgregory.net/rapid"

	"homeside/canvas"
	"homeside/canvas/raster"
	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/units"
)

// Any play a lesson may hold, however far out its places and times, is drawn:
// nothing panics, every shape has an ID of its own, the court is there.
func TestExtremePlaysAreDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := invented()
		l.Plays = []lesson.Play{lessontest.Plays().Draw(t, "play")}
		for i := range l.Plays[0].Shots[1:] {
			l.Plays[0].Shots[i+1].Error = nil // each scatter costs 2,000 flights: the serve's is enough
		}
		l.Venue.BesideSideline = units.Feet(rapid.Float64Range(0, 200).Draw(t, "beside"))
		sight := rapid.SampledFrom(allSights()).Draw(t, "sight")
		w, h := rapid.IntRange(16, 90).Draw(t, "width"), rapid.IntRange(16, 90).Draw(t, "height")
		r, err := rally.Solve(l, 0)
		if err != nil {
			t.Fatal(err)
		}
		p := Of(r, l.Venue.Surface(), canvas.Upright).Seen(sight)
		at := r.From + (r.To-r.From)*units.Seconds(rapid.Float64Range(0, 1).Draw(t, "share"))
		static, moving := p.Static(w, h), p.Moving(w, h, at)
		p.MeasureAt(moving, court.Near, court.Pt(-200, 200))
		strip := Strip{Rally: r, Width: w, Height: h, PxPerPoint: 1}
		img := raster.NewFrames(static).Draw(moving)
		raster.NewFrames(strip.Static()).Draw(strip.Moving(at))
		if got := img.Bounds().Size(); got.X != w || got.Y != h {
			t.Fatalf("the picture is %v, want %d x %d", got, w, h)
		}
		for _, s := range []*canvas.Scene{static, moving, strip.Static()} {
			checkIDs(t, s)
		}
		drawn := extentsOf(static)
		if b := drawn["court/court"]; sight.Behind == Nobody && (b.width() <= 0 || !b.within(w, h)) {
			t.Fatalf("the court is %+v, want inside %d x %d", b, w, h)
		}
	})
}

func checkIDs(t interface {
	Helper()
	Fatalf(string, ...any)
}, s *canvas.Scene) {
	for _, p := range s.Panels {
		seen := map[string]bool{}
		for _, shape := range p.Shapes {
			if shape.ID == "" || seen[shape.ID] {
				t.Fatalf("panel %s: shape %q has no ID of its own", p.Name, shape.ID)
			}
			seen[shape.ID] = true
		}
	}
}
