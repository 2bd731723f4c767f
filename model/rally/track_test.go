package rally

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

func after(t units.Seconds) lesson.Anchor { return lesson.Anchor{Offset: t} }

// walk is a rally in which far2, who hits nothing, follows a track.
func walk(t *testing.T, track ...lesson.Keyframe) Track {
	t.Helper()
	r := solved(t, play(four()[:3]...).WithTrack(game.Far2, track))
	return r.Tracks[game.Far2]
}

// A quarter of the time takes a player 0.103515625 of the way, and halfway the
// speed is 1.875 times the mean (Flash & Hogan, J. Neurosci. 5 (1985) 1688).
func TestMinimumJerkAlongAStraightWay(t *testing.T) {
	track := walk(t, lesson.Keyframe{Place: court.Pt(-3, 24)}, lesson.Keyframe{At: after(2), Place: court.Pt(5, 9)})
	for _, c := range []struct {
		at    units.Seconds
		share float64
	}{{-1, 0}, {0, 0}, {0.5, 0.103515625}, {1, 0.5}, {1.5, 0.896484375}, {2, 1}, {3, 1}} {
		got := track.At(c.at).Place
		want := court.Pt(-3+units.Feet(8*c.share), 24-units.Feet(15*c.share))
		if got.Distance(want) > 1e-12 {
			t.Errorf("At(%v s) = %v, want %v, %v of the way", c.at, got, want, c.share)
		}
	}
	if got, want := track.At(1).Speed, 1.875*17*0.3048/2; !near(float64(got), want, 1e-9) { // sqrt(8^2 + 15^2) = 17 ft
		t.Errorf("speed halfway %v m/s, want %v", got, want)
	}
	for _, still := range []units.Seconds{-1, 0, 2, 3} {
		if got := track.At(still).Speed; got != 0 {
			t.Errorf("speed at %v s is %v, want 0", still, got)
		}
	}
}

// On a bent way the share is of its length: measured here along a fine polyline
// of the parabola (1-u)^2 a + 2u(1-u) h + u^2 b through via at u = 1/2.
func TestMinimumJerkAlongABend(t *testing.T) {
	via := court.Pt(10, 20)
	track := walk(t, lesson.Keyframe{Place: court.Pt(-3, 24)}, lesson.Keyframe{At: after(2), Place: court.Pt(5, 9), Via: &via})
	x := func(u float64) float64 { return (1-u)*(1-u)*-3 + 2*u*(1-u)*(2*10-(-3+5)/2) + u*u*5 }
	y := func(u float64) float64 { return (1-u)*(1-u)*24 + 2*u*(1-u)*(2*20-(24.0+9)/2) + u*u*9 }
	const n = 100_000
	var lengths [n + 1]float64
	for i := 1; i <= n; i++ {
		a, b := float64(i-1)/n, float64(i)/n
		lengths[i] = lengths[i-1] + math.Hypot(x(b)-x(a), y(b)-y(a))
	}
	inch := units.Inches(1)
	for _, c := range []struct {
		at    units.Seconds
		share float64
	}{{0.5, 0.103515625}, {1, 0.5}, {1.5, 0.896484375}} {
		i := 0
		for lengths[i] < c.share*lengths[n] {
			i++
		}
		u := float64(i) / n
		got, want := track.At(c.at).Place, court.Pt(units.Feet(x(u)), units.Feet(y(u)))
		if got.Distance(want) > inch/4 {
			t.Errorf("At(%v s) = %v, want %v, %v of the length", c.at, got, want, c.share)
		}
	}
}

func TestLeave(t *testing.T) {
	from, to := court.Pt(-3, 24), court.Pt(5, 9)
	for _, c := range []struct {
		name        string
		leave       lesson.Anchor
		leaves      units.Seconds
		middle      units.Seconds // when half the way is done
		still, runs units.Seconds
	}{
		{"later than the place before", after(1), 1, 1.5, 0.99, 1.4},
		{"earlier than the place before", after(-5), 0, 1, -0.5, 0.5},
	} {
		track := walk(t, lesson.Keyframe{Place: from}, lesson.Keyframe{At: after(2), Place: to, Leave: &c.leave})
		if got := track.Runs[0]; got.From != c.leaves || got.To != 2 {
			t.Errorf("leave %s: runs from %v to %v s, want %v to 2", c.name, got.From, got.To, c.leaves)
		}
		checkPoint(t, "leave "+c.name+": half time", track.At(c.middle).Place, from.Toward(to, 0.5))
		checkPoint(t, "leave "+c.name+": before", track.At(c.still).Place, from)
		if track.At(c.runs).Place == from {
			t.Errorf("leave %s: stands still at %v s, want on the way", c.name, c.runs)
		}
	}
	// One who leaves after the arrival stands until then and is there at once.
	late := after(5)
	track := walk(t, lesson.Keyframe{Place: from}, lesson.Keyframe{At: after(2), Place: to, Leave: &late})
	checkPoint(t, "leave after the arrival: just before it", track.At(1.999).Place, from)
	checkPoint(t, "leave after the arrival: at it", track.At(2).Place, to)
}

// List order wins, the later keyframe is clamped.
func TestKeyframesOutOfOrderAreClamped(t *testing.T) {
	track := walk(t,
		lesson.Keyframe{At: after(1), Place: court.Pt(0, 20)},
		lesson.Keyframe{At: after(0.5), Place: court.Pt(2, 20)},
		lesson.Keyframe{At: after(0.8), Place: court.Pt(4, 20)},
		lesson.Keyframe{At: after(2), Place: court.Pt(6, 20)},
	)
	for i, want := range []struct {
		at      units.Seconds
		clamped bool
	}{{1, false}, {1, true}, {1, true}, {2, false}} {
		if got := track.Stops[i]; got.At != want.at || got.Clamped != want.clamped || got.Index != i {
			t.Errorf("stop %d is keyframe %d at %v, clamped %v, want %d at %v, %v", i, got.Index, got.At, got.Clamped, i, want.at, want.clamped)
		}
	}
	checkPoint(t, "before", track.At(0.9).Place, court.Pt(0, 20))
	checkPoint(t, "at the clamped time", track.At(1).Place, court.Pt(4, 20))
	checkPoint(t, "after", track.At(2).Place, court.Pt(6, 20))
}

func TestTurnsTheShorterWay(t *testing.T) {
	for _, c := range []struct{ from, to, half units.Degrees }{
		{350, 10, 0}, {10, 350, 0}, {0, 90, 45}, {90, -90, 180}, {-30, 30, 0}, {0, 720, 0}, {170, 200, 185},
	} {
		track := walk(t, lesson.Keyframe{Place: court.Pt(0, 20), Facing: c.from}, lesson.Keyframe{At: after(1), Place: court.Pt(1, 20), Facing: c.to})
		if got := track.At(0.5).Facing; !near(float64((got - c.half + 180).Normal()), 180, 1e-9) {
			t.Errorf("from %v to %v degrees: halfway %v, want %v", c.from, c.to, got, c.half)
		}
		if got := track.At(1).Facing; !near(float64((got-c.to+180).Normal()), 180, 1e-9) || got < 0 || got >= 360 {
			t.Errorf("from %v to %v degrees: ends at %v", c.from, c.to, got)
		}
	}
}

// A hitter without a keyframe at the contact stands so that the ball is 2 ft to
// the forehand side, facing the net. Right of a near player is +x, of a far one
// -x; the second of each team is left-handed.
func TestImpliedPlaces(t *testing.T) {
	want := map[game.Player]units.Feet{game.Near1: -2, game.Near2: 2, game.Far1: 2, game.Far2: -2}
	for hitter, aside := range want {
		server := hitter.Partner() ^ 2 // of the other team
		p := play(
			lesson.Shot{By: server, Aim: court.Pt(3, 16*hitter.Team().Sign()), Intent: lesson.Apex(8)},
			lesson.Shot{By: hitter, Aim: court.Pt(3, -16*hitter.Team().Sign()), Intent: lesson.Apex(8)},
		)
		p.Tracks[server][0].Place = court.Pt(2, 23*server.Team().Sign())
		r := solved(t, p)
		contact := timeOf(t, r, "return.contact")
		ball := r.At(contact).Ball.Ground()
		pose := r.At(contact).Players[hitter].Drawn
		checkPoint(t, hitter.String()+" at the return", pose.Place, court.Pt(ball.X+aside, ball.Y))
		if pose.Facing != hitter.Team().Facing() {
			t.Errorf("%v faces %v at the return, want the net", hitter, pose.Facing)
		}
		stops := r.Tracks[hitter].Stops
		if len(stops) != 2 || stops[1].Index != Implied || stops[1].At != contact {
			t.Errorf("%v has stops %+v, want an implied one at %v", hitter, stops, contact)
		}
		if got := r.Tracks[hitter].Runs[0].Index; got != Implied {
			t.Errorf("%v runs to keyframe %d, want Implied", hitter, got)
		}

		// A keyframe at the contact takes its place.
		stated := lesson.Keyframe{At: lesson.At(lesson.ContactOf(1)), Place: court.Pt(0, 20*hitter.Team().Sign())}
		r = solved(t, p.WithTrack(hitter, append(p.Tracks[hitter][:1:1], stated)))
		checkPoint(t, hitter.String()+" with a keyframe", r.At(contact).Players[hitter].Drawn.Place, stated.Place)
	}
}

// An implied place comes in the order of time between keyframes.
func TestImpliedPlacesAreInOrder(t *testing.T) {
	p := play(four()...)
	p.Tracks[game.Far1] = []lesson.Keyframe{
		{Place: court.Pt(-5, 24)},
		{At: after(0.5), Place: court.Pt(-5, 23)},
		{At: lesson.Anchor{Event: lesson.ContactOf(1), Offset: 0.5}, Place: court.Pt(-4, 12)},
	}
	var got []int
	for _, s := range solved(t, p).Tracks[game.Far1].Stops {
		got = append(got, s.Index)
	}
	if len(got) != 4 || got[0] != 0 || got[1] != 1 || got[2] != Implied || got[3] != 2 {
		t.Errorf("stops are keyframes %v, want 0, 1, implied, 2", got)
	}
}

// The serve leaves 2 ft to the paddle side of the server at 2.6 ft, both hands,
// both ends, whatever the facing.
func TestServeContact(t *testing.T) {
	for _, c := range []struct {
		server game.Player
		facing units.Degrees
		aside  court.Point // ft
	}{
		{game.Near1, 0, court.Pt(2, 0)},
		{game.Near2, 0, court.Pt(-2, 0)},
		{game.Far1, 180, court.Pt(-2, 0)},
		{game.Far2, 180, court.Pt(2, 0)},
		{game.Near1, 90, court.Pt(0, -2)}, // looks to +x: the right hand is toward the own baseline
		{game.Near2, 90, court.Pt(0, 2)},
		{game.Near1, -30, court.Pt(2*units.Feet(math.Cos(math.Pi/6)), 1)},
	} {
		at := court.Pt(3, 23*c.server.Team().Sign())
		p := play(lesson.Shot{By: c.server, Aim: court.Pt(3, -16*c.server.Team().Sign()), Intent: lesson.Apex(8)})
		p.Tracks[c.server] = []lesson.Keyframe{{Place: at, Facing: c.facing}}
		ball := solved(t, p).At(0).Ball
		checkPoint(t, "serve of "+c.server.String(), ball.Ground(), at.Add(c.aside))
		if got := ball.Height(); !near(float64(got), 2.6*foot, 1e-12) {
			t.Errorf("serve of %v at %v m, want 2.6 ft", c.server, got)
		}
	}
}

func TestServeFromAStatedPlace(t *testing.T) {
	p := play(four()...)
	p.Shots[0].From = &lesson.Place{Point: court.Pt(1, -24), Height: 3}
	ball := solved(t, p).At(0).Ball
	checkPoint(t, "stated serve", ball.Ground(), court.Pt(1, -24))
	if got := ball.Height().Feet(); !near(float64(got), 3, 1e-9) {
		t.Errorf("stated serve at %v ft, want 3", got)
	}
}

// The server's place is the last keyframe on the serve's contact that is not
// after it; the server then is there at the serve and leaves only after it.
func TestServerStandsAtTheServe(t *testing.T) {
	a, b, c := court.Pt(1, -25), court.Pt(4, -23), court.Pt(-5, -20)
	for _, test := range []struct {
		name  string
		track []lesson.Keyframe
		want  court.Point
	}{
		{"at the contact", []lesson.Keyframe{{At: after(-1.5), Place: a}, {Place: b}, {At: after(1), Place: c}}, b},
		{"before the contact", []lesson.Keyframe{{At: after(-1.5), Place: a}, {At: after(-0.5), Place: b}, {At: after(1), Place: c}}, b},
		{"only after it", []lesson.Keyframe{{At: after(0.5), Place: b}, {At: after(1), Place: c}}, b},
	} {
		r := solved(t, play(four()...).WithTrack(game.Near1, test.track))
		checkPoint(t, test.name+": server", r.At(0).Players[game.Near1].Drawn.Place, test.want)
		checkPoint(t, test.name+": ball", r.At(0).Ball.Ground(), test.want.Add(court.Pt(2, 0)))
	}
}
