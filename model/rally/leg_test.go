package rally

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// runner is a rally in which one player of a pace follows a track.
func runner(t *testing.T, id game.Player, pace movement.Pace, track ...lesson.Keyframe) (*Rally, Track) {
	t.Helper()
	l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{play(four()[:3]...).WithTrack(id, track)}}
	p := l.Player(id)
	p.Pace = &pace
	r, err := Solve(l.WithPlayer(id, p), 0)
	if err != nil {
		t.Fatal(err)
	}
	return r, r.Tracks[id]
}

// rate is dv/dt = (V - v)/tau from rest, stepped by Euler's rule in steps of
// 1 us until d metres are done: a check that shares nothing with the closed forms.
func steppedThrough(top, tau, d float64) float64 {
	const dt = 1e-6
	v, s, t := 0.0, 0.0, 0.0
	for s < d {
		s += v * dt
		v += (top - v) / tau * dt
		t += dt
	}
	return t
}

// Late by exactly the difference: 19.3 ft straight ahead with 1 s to do it.
func TestLateByExactlyTheDifference(t *testing.T) {
	pace := movement.DefaultPace() // 6 m/s, 1 s
	_, track := runner(t, game.Far2, pace,
		lesson.Keyframe{At: after(0.5), Place: court.Pt(5, 26.3), Facing: 180},
		lesson.Keyframe{At: after(1.5), Place: court.Pt(5, 7), Facing: 180, Through: true},
	)
	want := steppedThrough(6, 1, 19.3*foot) - 1
	if got := float64(track.Stops[1].Late); !near(got, want, 1e-4) {
		t.Errorf("late by %v s, want %v", got, want)
	}
	if got := track.RunAt(1.5).Place; got.Y < 7.5 {
		t.Errorf("at the planned time at %v, want short of the place", got)
	}
	checkPoint(t, "late arrival", track.RunAt(1.5+track.Stops[1].Late).Place, court.Pt(5, 7))
	checkSeconds(t, "leg's end", track.Legs[0].To, 1.5+track.Stops[1].Late)
}

// Who adds what before the first step. near1 serves, far1 returns, near2 strikes
// the third; reaction is 0.23 s and stroke recovery 0.2 s for all.
func TestWhoWaitsForWhat(t *testing.T) {
	bounce := lesson.Event{Shot: 1, Moment: lesson.Bounce}
	for _, c := range []struct {
		name   string
		id     game.Player
		at     lesson.Anchor
		facing units.Degrees
		wait   units.Seconds // after the anchor's event
	}{
		{"server recovers", game.Near1, lesson.At(lesson.ContactOf(0)), 0, 0.2},
		{"server's partner goes with the serve", game.Near2, lesson.At(lesson.ContactOf(0)), 0, 0},
		{"receiver reacts to the serve", game.Far1, lesson.At(lesson.ContactOf(0)), 180, 0.23},
		{"receiver's partner reacts to the serve", game.Far2, lesson.At(lesson.ContactOf(0)), 180, 0.23},
		{"receiver recovers from the return", game.Far1, lesson.At(lesson.ContactOf(1)), 180, 0.2},
		{"receiver's partner hears the return", game.Far2, lesson.At(lesson.ContactOf(1)), 180, 0.23},
		{"receiver's partner looks back and sees it", game.Far2, lesson.At(lesson.ContactOf(1)), 0, 0},
		{"server reacts to the return", game.Near1, lesson.At(lesson.ContactOf(1)), 0, 0.23},
		{"a bounce is seen coming", game.Near1, lesson.At(bounce), 0, 0},
		{"well after the return", game.Near1, lesson.Anchor{Event: lesson.ContactOf(1), Offset: 0.5}, 0, 0.5},
		{"just after the return", game.Near1, lesson.Anchor{Event: lesson.ContactOf(1), Offset: 0.1}, 0, 0.23},
		{"ahead of the return", game.Near1, lesson.Anchor{Event: lesson.ContactOf(1), Offset: -0.1}, 0, -0.1},
	} {
		at := ordinary()[c.id][0].Place
		// The place before is always seconds earlier, so that only the anchor counts.
		r, track := runner(t, c.id, movement.DefaultPace(),
			lesson.Keyframe{At: after(-5), Place: at, Facing: c.facing},
			lesson.Keyframe{At: c.at, Place: at, Facing: c.facing},
			lesson.Keyframe{At: lesson.Anchor{Event: c.at.Event, Offset: 3}, Place: at.Add(court.Pt(1, 0)), Facing: c.facing},
		)
		leg := len(track.Legs) - 1
		for i, s := range track.Stops {
			if s.Index == 1 {
				leg = i
			}
		}
		checkSeconds(t, c.name, track.Legs[leg].From, r.TimeAt(lesson.At(c.at.Event))+c.wait)
	}
}

// leave hangs the departure on its own anchor.
func TestLeaveReactsToo(t *testing.T) {
	contact := lesson.At(lesson.ContactOf(1))
	r, track := runner(t, game.Near1, movement.DefaultPace(),
		lesson.Keyframe{Place: court.Pt(5, -23)},
		lesson.Keyframe{At: lesson.Anchor{Event: lesson.ContactOf(1), Offset: 2}, Place: court.Pt(5, -15), Leave: &contact},
	)
	checkSeconds(t, "leaves", track.Legs[0].From, r.TimeAt(contact)+0.23)
	checkPoint(t, "on time", track.RunAt(track.Stops[1].At).Place, court.Pt(5, -15))
}

func TestGaits(t *testing.T) {
	pace := movement.DefaultPace()
	for _, c := range []struct {
		name    string
		facing  units.Degrees
		way     court.Point
		gait    Gait
		top     units.MetresPerSecond
		turnsTo units.Degrees
	}{
		{"to the net", 180, court.Pt(0, -10), Forward, 6, 180},
		{"to the far half of the kitchen line", 180, court.Pt(10, -16), Forward, 6, 180},
		{"along the line", 180, court.Pt(10, 0), Sideways, 6 * 0.67, 180},
		{"back, facing the net", 180, court.Pt(0, 10), Backward, 6 * 0.7, 180},
		{"back, turned round", 0, court.Pt(0, 10), Forward, 6, 0},
		{"along the line, turning to it", 90, court.Pt(10, 0), Forward, 6, 90},
		{"along the line, turning on the way", 180, court.Pt(10, 0), Forward, 6, 90},
	} {
		from := court.Pt(0, 14)
		_, track := runner(t, game.Far2, pace,
			lesson.Keyframe{At: after(0.5), Place: from, Facing: c.facing},
			lesson.Keyframe{At: after(0.6), Place: from.Add(c.way), Facing: c.turnsTo, Through: true},
		)
		leg := track.Legs[0]
		if leg.Gait != c.gait {
			t.Errorf("%s: %v, want %v", c.name, leg.Gait, c.gait)
		}
		want := steppedThrough(float64(c.top), 1, float64(c.way.Length().Metres())) - 0.1
		if got := float64(track.Stops[1].Late); !near(got, want, 1e-4) {
			t.Errorf("%s: late by %v s, want %v at %v m/s", c.name, got, want, c.top)
		}
	}
}

// A chair turns before it pushes off: a quarter turn of one that needs 0.8 s for
// half a turn.
func TestChairTurnsFirst(t *testing.T) {
	chair, _ := movement.PresetByKey("wheelchair")
	for _, c := range []struct {
		way  court.Point
		want units.Seconds
	}{{court.Pt(0, -8), 0}, {court.Pt(8, 0), 0.4}, {court.Pt(0, 8), 0}, {court.Pt(8, 8), 0.2}} {
		_, track := runner(t, game.Far2, chair.Pace,
			lesson.Keyframe{At: after(0.5), Place: court.Pt(0, 14), Facing: 180},
			lesson.Keyframe{At: after(4), Place: court.Pt(0, 14).Add(c.way), Facing: 180},
		)
		checkSeconds(t, "pushes off", track.Legs[0].Push(), 0.5+c.want)
		if half := track.RunAt(0.5 + c.want/2); half.Place != court.Pt(0, 14) {
			t.Errorf("at %v while turning, want still at the start", half.Place)
		}
	}
}

// A bend caps the speed once, at sqrt(3 m/s2 x least radius): of the parabola
// y = x^2/(2p) the radius at the vertex is p.
func TestBendCapsTheSpeed(t *testing.T) {
	via := court.Pt(4, 16)
	_, track := runner(t, game.Far2, movement.DefaultPace(),
		lesson.Keyframe{At: after(0.5), Place: court.Pt(0, 20), Facing: 90},
		lesson.Keyframe{At: after(0.6), Place: court.Pt(8, 20), Facing: 90, Via: &via, Through: true},
	)
	radius := 4 * 4 / (2 * 4.0) * foot // 4 ft deep, 4 ft to either side
	want := math.Sqrt(3 * radius)
	leg := track.Legs[0]
	if got := float64(leg.Profile.Peak()); !near(got, want, 1e-9) {
		t.Errorf("fastest in the bend %v m/s, want %v", got, want)
	}
	checkPoint(t, "halfway", leg.Way.At(0.5), via)
}

// One who runs through a place arrives with speed, carries it into the next run
// and does not wait to react.
func TestRunningThrough(t *testing.T) {
	third := lesson.At(lesson.ContactOf(2))
	track := func(through bool) (*Rally, Track) {
		return runner(t, game.Far2, movement.DefaultPace(),
			lesson.Keyframe{Place: court.Pt(5, 24), Facing: 180},
			lesson.Keyframe{At: third, Place: court.Pt(5, 15), Facing: 180, Through: through, Leave: &lesson.Anchor{Event: lesson.ContactOf(2), Offset: -2}},
			lesson.Keyframe{At: lesson.Anchor{Event: lesson.ContactOf(2), Offset: 0.9}, Place: court.Pt(5, 7.5), Facing: 180},
		)
	}
	r, through := track(true)
	at := r.TimeAt(third)
	checkSeconds(t, "runs on", through.Legs[1].From, at)
	if v := through.RunAt(at).Speed; v < 2 {
		t.Errorf("passes at %v m/s, want more than 2", v)
	}
	if got := through.Legs[1].Run.Start; got != through.Legs[0].Profile.Arrival() {
		t.Errorf("starts the next run at %v m/s, want %v carried straight on", got, through.Legs[0].Profile.Arrival())
	}
	_, stopping := track(false)
	checkSeconds(t, "reacts", stopping.Legs[1].From, at+0.23)
	if v := stopping.RunAt(at).Speed; v > 1e-9 {
		t.Errorf("stops and still runs at %v m/s", v)
	}
	if through.Stops[2].Late >= stopping.Stops[2].Late {
		t.Errorf("late by %v s running through and by %v stopping, want less running through", through.Stops[2].Late, stopping.Stops[2].Late)
	}
}

// A late player starts the next run from where he or she is, with the speed that
// is left after the turn.
func TestLatePlayerTurnsAwayFromWhereHeIs(t *testing.T) {
	_, track := runner(t, game.Far2, movement.DefaultPace(),
		lesson.Keyframe{At: after(0.5), Place: court.Pt(5, 26), Facing: 180},
		lesson.Keyframe{At: after(1.5), Place: court.Pt(5, 7), Facing: 180},
		lesson.Keyframe{At: after(4), Place: court.Pt(-5, 12), Facing: 180},
	)
	at := track.RunAt(1.5)
	if from, _ := track.Legs[1].Way.Ends(); from != at.Place || at.Place.Y < 10 {
		t.Errorf("the next run starts at %v, the player is at %v, want the same and short of y = 7", from, at.Place)
	}
	way := court.Pt(-5, 12).Sub(at.Place)
	cos := float64(-way.Y / way.Length()) // came straight down the court
	_, speed := track.Legs[0].Profile.At(1)
	if got, want := float64(track.Legs[1].Run.Start), float64(speed)*cos; !near(got, want, 1e-9) {
		t.Errorf("carries %v m/s, want %v", got, want)
	}
	if track.Stops[1].Late <= 0 || track.Stops[2].Late != 0 {
		t.Errorf("late by %v and %v s, want late and then on time", track.Stops[1].Late, track.Stops[2].Late)
	}
	checkPoint(t, "on time again", track.RunAt(4).Place, court.Pt(-5, 12))
}

func BenchmarkRunTracks(b *testing.B) {
	l := lesson.Lesson{Teams: teams(), Plays: []lesson.Play{play(four()...)}}
	r, err := Solve(l, 0)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		for _, id := range game.Players {
			if err := r.runTrack(id, &r.Tracks[id]); err != nil {
				b.Fatal(err)
			}
		}
	}
}
