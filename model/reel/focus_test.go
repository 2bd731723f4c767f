package reel_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/reel"
	"homeside/model/units"
)

// A camera that follows a player stays where it may, and does not jerk, whether
// the play runs, slowly or fast, or holds: from one 60th of a second to the next
// its speed changes by no more than the raised cosine allows for the fastest that
// the player is in the clip.
func TestFocusIsSmooth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lesson.Lesson{Plays: []lesson.Play{lessontest.Plays().Draw(t, "play")}}
		take := rapid.Custom(lessontest.Take).Draw(t, "take")
		take.Play, take.Beside = 1, 0
		r := reel.Solve(l, lesson.Reel{Takes: []lesson.Take{take}})
		if len(r.Takes) == 0 {
			return
		}
		id := rapid.SampledFrom(game.Players[:]).Draw(t, "player")
		within := court.RectOf(court.Pt(-9, -25), court.Pt(9, 25))
		const step = 1.0 / 60
		one := r.Length() / units.Seconds(take.Times())
		start := one * units.Seconds(rapid.Float64Range(0, 1).Draw(t, "from"))
		at := func(k int) units.Seconds { return min(start+units.Seconds(k)*step, one*0.999) }
		place := func(t units.Seconds) court.Point {
			p := r.Takes[0].Rally.Tracks[id].RunAt(r.At(min(max(t, 0), one*0.999)).T).Place
			return court.Pt(min(max(p.X, -9), 9), min(max(p.Y, -25), 25))
		}
		const n, fine = 20, 8
		top := 0.0 // ft/s, of the player in the clip, as far as the camera looks
		for k := -60 * fine; k < (60+n)*fine; k++ {
			a := start + units.Seconds(k)*step/fine
			top = max(top, float64(place(a).Distance(place(a+step/fine)))/(step/fine))
		}
		a, b := r.Focus(at(0), r.Takes[0].Rally, id, within), r.Focus(at(1), r.Takes[0].Rally, id, within)
		for k := 2; k < n && at(k) < one*0.99; k++ {
			c := r.Focus(at(k), r.Takes[0].Rally, id, within)
			if c.X < within.Min.X-1e-9 || c.X > within.Max.X+1e-9 || c.Y < within.Min.Y-1e-9 || c.Y > within.Max.Y+1e-9 {
				t.Fatalf("Focus = %v, outside %v", c, within)
			}
			v1, v2 := b.Sub(a).Times(1/step), c.Sub(b).Times(1/step)
			if s := float64(v2.Length()); s > top*1.05+1e-6 {
				t.Fatalf("the camera moves at %.2f ft/s, the player at %.2f at most", s, top)
			}
			if d := float64(v2.Sub(v1).Length()); d > 2*top*2*step/0.8+0.02*top+1e-6 {
				t.Fatalf("the camera's speed changes by %.3f ft/s in a frame; the player runs at %.2f", d, top)
			}
			a, b = b, c
		}
	})
}

func TestFocusOfOneWhoStands(t *testing.T) {
	l := sample()
	r := reel.Solve(l, lesson.Reel{Takes: []lesson.Take{{Play: 1}}})
	want := r.Takes[0].Rally.Tracks[game.Near2].RunAt(0).Place
	got := r.Focus(1.5, r.Takes[0].Rally, game.Near2, court.RectOf(court.Pt(-100, -100), court.Pt(100, 100)))
	if d := got.Distance(want); float64(d) > 1e-9 || math.IsNaN(float64(d)) {
		t.Errorf("Focus on one who stands at %v = %v", want, got)
	}
}
