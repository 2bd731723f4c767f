package compose

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// eachStrip walks strips of several widths and scales over several plays.
func eachStrip(t *testing.T, do func(name string, s Strip)) {
	long := invented()
	for i := range 20 { // a rally of many short shots
		by := game.Near1
		if i%2 == 1 {
			by = game.Far2
		}
		long.Plays[0].Shots = append(long.Plays[0].Shots, lesson.Shot{By: by, Aim: court.Pt(2, -5*by.Team().Sign()), Intent: lesson.Apex(5)})
	}
	late := builtIn(t)
	for id := range late.Plays[0].Tracks { // as far off at the end as nobody runs
		track := late.Plays[0].Tracks[id]
		track[len(track)-1].At = lesson.At(lesson.TheEnd)
		track[len(track)-1].Place = court.Pt(-9, game.Player(id).Team().Sign()*2)
	}
	for name, l := range map[string]lesson.Lesson{"built in": builtIn(t), "short": invented(), "long": long, "late": late} {
		for i := range l.Plays {
			r := pictureOf(t, l, i, canvas.Upright).Rally
			for _, w := range []int{240, 700, 1600} {
				for _, pt := range []float64{0.8, 1.25, 2.5} {
					do(fmt.Sprintf("%s, play %d, %d px, %v px/pt", name, i+1, w, pt), Strip{Rally: r, Width: w, Height: int(150 * pt), PxPerPoint: pt})
				}
			}
		}
	}
}

// TimeAt is the inverse of where a time is drawn, held within the rally.
func TestStripTimeAt(t *testing.T) {
	eachStrip(t, func(name string, s Strip) {
		r := s.Rally
		for i := range 11 {
			at := r.From + (r.To-r.From)*units.Seconds(i)/10
			head := extentsOf(s.Moving(at))["strip/head"]
			if got := s.TimeAt(head.left); math.Abs(float64(got-at)) > 1e-9*float64(r.To-r.From) {
				t.Errorf("%s: TimeAt(where %v s is) = %v", name, at, got)
			}
		}
		if got := s.TimeAt(-1000); got != r.From {
			t.Errorf("%s: left of everything is %v, want the start at %v", name, got, r.From)
		}
		if got := s.TimeAt(1e6); got != r.To {
			t.Errorf("%s: right of everything is %v, want the end at %v", name, got, r.To)
		}
	})
}

func TestStripLabelsDoNotOverlap(t *testing.T) {
	eachStrip(t, func(name string, s Strip) {
		var labels []box
		for id, b := range extentsOf(s.Static()) {
			if strings.HasPrefix(id, "strip/label.") {
				labels = append(labels, b)
			}
		}
		if len(labels) == 0 {
			t.Errorf("%s: no labels", name)
		}
		for i, a := range labels {
			for _, b := range labels[:i] {
				if a.overlaps(b) {
					t.Errorf("%s: labels %+v and %+v overlap", name, a, b)
				}
			}
		}
	})
}

// All of the strip is inside its picture, at every moment.
func TestStripIsInside(t *testing.T) {
	eachStrip(t, func(name string, s Strip) {
		if s.Width < 500 { // narrower, a label is as wide as the axis
			return
		}
		scenes := []*canvas.Scene{s.Static()}
		for i := range 11 {
			scenes = append(scenes, s.Moving(s.Rally.From+(s.Rally.To-s.Rally.From)*units.Seconds(i)/10))
		}
		for _, scene := range scenes {
			for id, b := range extentsOf(scene) {
				if !b.within(s.Width, s.Height) {
					t.Errorf("%s: %s is %+v, not in %d x %d", name, id, b, s.Width, s.Height)
				}
			}
		}
	})
}

// Every event has its line at its time, every shape its own ID.
func TestStripEvents(t *testing.T) {
	eachStrip(t, func(name string, s Strip) {
		scene := s.Static()
		shapes, drawn := shapesOf(scene), extentsOf(scene)
		if want := len(scene.Panels[0].Shapes) + len(scene.Panels[1].Shapes); len(shapes) != want {
			t.Errorf("%s: %d shapes have %d IDs", name, want, len(shapes))
		}
		for _, e := range s.Rally.Events {
			b, ok := drawn["strip/event."+e.Name.String()]
			if !ok || math.Abs(float64(s.TimeAt(b.left)-min(e.At, s.Rally.To))) > 1e-9 {
				t.Errorf("%s: %v at %v is drawn (%v) at %+v", name, e.Name, e.At, ok, b)
			}
		}
		for _, id := range game.Players {
			for i, stop := range s.Rally.Tracks[id].Stops {
				b := drawn[fmt.Sprintf("strip/stop.%v.%d", id, i)]
				if want := min(max(stop.At, s.Rally.From), s.Rally.To); stop.At == want && math.Abs(float64(s.TimeAt(centre(b).X)-want)) > 1e-9 {
					t.Errorf("%s: stop %d of %v at %v is drawn at %+v", name, i, id, stop.At, b)
				}
			}
		}
	})
}

// A low strip has one row of labels and leaves its lanes the room.
func TestLowStrip(t *testing.T) {
	r := pictureOf(t, invented(), 0, canvas.Upright).Rally
	low, tall := Strip{Rally: r, Width: 900, Height: 90, PxPerPoint: 1}, Strip{Rally: r, Width: 900, Height: 131, PxPerPoint: 1}
	if low.head() >= tall.head() || low.laneHeight() < 6 {
		t.Errorf("a strip 90 points high has its lanes at %v, %v high; one of 131 at %v, %v high", low.head(), low.laneHeight(), tall.head(), tall.laneHeight())
	}
	for id, b := range extentsOf(low.Static()) {
		if !b.within(low.Width, low.Height) {
			t.Errorf("%s is %+v, not in %d x %d", id, b, low.Width, low.Height)
		}
	}
}

// Lanes lie below one another: the ball, then the players in their order.
func TestStripLanes(t *testing.T) {
	s := Strip{Rally: pictureOf(t, invented(), 0, canvas.Upright).Rally, Width: 800, Height: 190, PxPerPoint: 1.25}
	scene := s.Static()
	shapes, drawn := shapesOf(scene), extentsOf(scene)
	last := 0.0
	for i, want := range []string{"ball", "Rua", "Lev", "Ada", "Bo", "captions", "signals"} {
		id := fmt.Sprintf("names/name.%d", i)
		if got := shapes[id].Text.Text; got != want {
			t.Errorf("lane %d is called %q, want %q", i, got, want)
		}
		if y := drawn[id].top; y <= last {
			t.Errorf("lane %d is at %v px, want below the one before at %v", i, y, last)
		} else {
			last = y
		}
	}
	if bar := drawn["strip/bar.near2.0"]; math.Abs(float64(s.TimeAt(bar.left))) > 1e-9 || math.Abs(float64(s.TimeAt(bar.right)-2.25)) > 1e-9 {
		t.Errorf("the bar of near2 goes from %v to %v s, want 0 to 2.25", s.TimeAt(bar.left), s.TimeAt(bar.right))
	}
}
