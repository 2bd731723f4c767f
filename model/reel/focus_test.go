package reel_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
)

// A camera that follows a player stays where it may, is never faster than the
// player at the fastest, and does not jerk: from one 60th of a second to the next its speed changes by
// no more than the raised cosine allows, 2 x top speed x 1/60 over half its width.
func TestFocusIsSmooth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lesson.Lesson{Plays: []lesson.Play{lessontest.Plays().Draw(t, "play")}}
		r, err := rally.Solve(l, 0)
		if err != nil {
			t.Fatal(err)
		}
		id := rapid.SampledFrom(game.Players[:]).Draw(t, "player")
		within := court.RectOf(court.Pt(-9, -25), court.Pt(9, 25))
		const step = 1.0 / 60
		top := 0.0 // ft/s, of the player
		for at := r.From; at < r.To; at += step / 4 {
			top = max(top, float64(r.Tracks[id].RunAt(at).Place.Distance(r.Tracks[id].RunAt(at+step/4).Place))/(step/4))
		}
		start := r.From + (r.To-r.From)*units.Seconds(rapid.Float64Range(0, 1).Draw(t, "from"))
		a, b := reel.Focus(r, id, start, within), reel.Focus(r, id, start+step, within)
		for k := 2; k < 40; k++ {
			c := reel.Focus(r, id, start+units.Seconds(k)*step, within)
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
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	want := r.Tracks[game.Near2].RunAt(0).Place
	got := reel.Focus(r, game.Near2, 0, court.RectOf(court.Pt(-100, -100), court.Pt(100, 100)))
	if d := got.Distance(want); float64(d) > 1e-9 || math.IsNaN(float64(d)) {
		t.Errorf("Focus on one who stands at %v = %v", want, got)
	}
}

func TestReceiver(t *testing.T) {
	l := sample()
	if r, _ := rally.Solve(l, 0); reel.Receiver(r) != game.Near1 {
		t.Errorf("Receiver = %v, want near1, who returns", reel.Receiver(r))
	}
	l.Plays[0].Shots = l.Plays[0].Shots[:1]
	for id := range l.Plays[0].Tracks {
		l.Plays[0].Tracks[id] = l.Plays[0].Tracks[id][:1]
	}
	l.Plays[0].Marks, l.Plays[0].Cues = nil, nil
	r, err := rally.Solve(l, 0)
	if err != nil {
		t.Fatal(err)
	}
	if got := reel.Receiver(r); got != game.Near1 {
		t.Errorf("Receiver of a serve alone = %v, want near1, who stands at y -24 and not at -7.5", got)
	}
}
