package formation

import (
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// Until the return has bounced both servers stay behind the baseline (rulebook
// 2026, 10.A: it must bounce; base positions by common practice).
func TestServersStayBack(t *testing.T) {
	for _, pace := range movement.Presets {
		for _, kind := range Kinds {
			for _, side := range [2]court.Side{court.Right, court.Left} {
				s := plain(kind, true)
				s.pace, s.side = pace, side
				w := s.write(t)
				bounce, _ := w.Rally.TimeOf(lesson.Event{Shot: 1, Moment: lesson.Bounce})
				for i := range 200 {
					f := w.Rally.At(bounce * units.Seconds(i) / 200)
					for _, id := range [2]game.Player{game.Near1, game.Near2} {
						for _, foot := range f.Players[id].Feet {
							if foot.Y > -court.Baseline {
								t.Fatalf("%v, %s: %v has a foot at %v at %.2f s, the return bounces at %.2f s", kind, pace.Key, id, foot, f.T, bounce)
							}
						}
					}
				}
			}
		}
	}
}

// Where each kind begins, by the trade's own description.
func TestPlacesAtTheServe(t *testing.T) {
	for _, c := range []struct {
		kind   Kind
		serves bool
		check  func(lead, mate court.Point) bool
		want   string
	}{
		{lesson.Ordinary, true, func(a, b court.Point) bool { return a.X > 0 && b.X < 0 && a.Y < -22 && b.Y < -22 }, "one in each half, behind the baseline"},
		{lesson.Stacked, true, func(a, b court.Point) bool { return a.X > 0 && a.X < 3 && b.X > a.X+3 && b.Y < -22 }, "the partner outside on the server's side"},
		{lesson.Switched, true, func(a, b court.Point) bool { return a.X > 0 && b.X < 0 }, "ordinary places"},
		{lesson.Ordinary, false, func(a, b court.Point) bool { return a.Y <= -23 && a.Y >= -26 && b.Y <= -7.5 && b.Y >= -8 && b.X < 0 }, "back by 1-4 ft, the partner at the kitchen line"},
		{lesson.Stacked, false, func(a, b court.Point) bool { return a.X > 0 && b.X > 10 && b.Y <= -7.5 && b.Y >= -8 }, "the partner off court on the receiver's side"},
		{lesson.Switched, false, func(a, b court.Point) bool { return a.X > 0 && b.X < 0 && b.Y <= -7.5 }, "ordinary places"},
		{lesson.Stayed, false, func(a, b court.Point) bool { return a.X > 0 && b.X < 0 && b.Y <= -7.5 }, "the look of the switch"},
	} {
		w := plain(c.kind, c.serves).write(t)
		if a, b := w.Contact(game.Near1), w.Contact(game.Near2); !c.check(a, b) {
			t.Errorf("%v, serves %v: near1 at %v and near2 at %v, want %s", c.kind, c.serves, a, b, c.want)
		}
	}
}

// Stay and switch look the same at the serve, to the inch.
func TestSameLook(t *testing.T) {
	for _, serves := range [2]bool{true, false} {
		a, b := plain(lesson.Switched, serves).write(t), plain(lesson.Stayed, serves).write(t)
		for _, id := range game.Players {
			if a.Play.AtServe(id) != b.Play.AtServe(id) {
				t.Errorf("serves %v: %v stands at %v before a switch and at %v before a stay", serves, id, a.Play.AtServe(id), b.Play.AtServe(id))
			}
		}
		if a.Play.Cues[0].Meaning != lesson.Switch || b.Play.Cues[0].Meaning != lesson.Stay || a.Play.Cues[0].Reader != game.Near1 {
			t.Errorf("signals %+v and %+v, want near2 to show a switch and a stay", a.Play.Cues[0], b.Play.Cues[0])
		}
	}
}
