package rally

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// The arithmetic below shares nothing with the program but the figures of the
// ball: the parabola of a mechanics text (Goldstein, Classical Mechanics, or any
// other), the bounce of a thin shell after Garwin, Am. J. Phys. 37 (1969) 88,
// and lengths in metres.
const (
	g      = 9.80665
	radius = 0.0371
	foot   = 0.3048
)

// throw is a parabola from a place in metres to an aim on the ground, and the
// parabola after its bounce.
type throw struct {
	x, y, z         float64 // the contact
	toX, toY        float64 // the aim
	up, air         float64 // s to the apex, s to the landing
	apex            float64 // m
	backX, backY    float64 // m/s over the ground after the bounce
	backUp, highest float64 // m/s upward after the bounce; m, its top
}

func newThrow(x, y, z, toX, toY, apex float64) throw {
	p := throw{x: x, y: y, z: z, toX: toX, toY: toY, apex: apex}
	p.up = math.Sqrt(2 * (apex - z) / g)
	p.air = p.up + math.Sqrt(2*(apex-radius)/g)
	vx, vy := (toX-x)/p.air, (toY-y)/p.air
	v, down := math.Hypot(vx, vy), math.Sqrt(2*g*(apex-radius))
	kept := 1 - min(0.45*(1+0.64)*down, 0.4*v)/v // slips or grips; alpha = 2/3
	p.backX, p.backY, p.backUp = kept*vx, kept*vy, 0.64*down
	p.highest = radius + p.backUp*p.backUp/(2*g)
	return p
}

// flying is the ball t seconds after the contact, before the bounce.
func (p throw) flying(t float64) (x, y, z float64) {
	return p.x + (p.toX-p.x)*t/p.air, p.y + (p.toY-p.y)*t/p.air, p.apex - g*(t-p.up)*(t-p.up)/2
}

// back is the ball t seconds after the bounce.
func (p throw) back(t float64) (x, y, z float64) {
	return p.toX + p.backX*t, p.toY + p.backY*t, radius + p.backUp*t - g*t*t/2
}

// through is when the ball is at a height after the bounce, rising and falling.
func (p throw) through(height float64) (rising, falling float64) {
	half := math.Sqrt(2 * (p.highest - height) / g)
	return p.backUp/g - half, p.backUp/g + half
}

func checkBall(t *testing.T, r *Rally, at, x, y, z float64) {
	t.Helper()
	got := r.At(units.Seconds(at)).Ball.At
	if !near(got.X, x, 1e-6) || !near(got.Y, y, 1e-6) || !near(got.Z, z, 1e-6) {
		t.Errorf("At(%.6f s): ball at %.7f, %.7f, %.7f m, want %.7f, %.7f, %.7f", at, got.X, got.Y, got.Z, x, y, z)
	}
}

// Four shots in a vacuum: every event and the ball in between.
func TestVacuumRally(t *testing.T) {
	r := solveIn(t, vacuum(), play(four()...))

	// near1 stands at 5, -23 and faces the net with the paddle in the right hand:
	// the serve is struck 2 ft to the right at 2.6 ft.
	serve := newThrow(7*foot, -23*foot, 2.6*foot, -5*foot, 18*foot, 8*foot)
	met := serve.air + serve.backUp/g // at the top of the bounce
	x, y, z := serve.back(serve.backUp / g)
	back := newThrow(x, y, z, 4*foot, -18*foot, 9*foot)
	_, falling := back.through(1.5 * foot)
	third := met + back.air + falling
	x, y, z = back.back(falling)
	drop := newThrow(x, y, z, -3*foot, 5*foot, 10*foot)
	rising, _ := drop.through(1 * foot)
	fourth := third + drop.air + rising
	x, y, z = drop.back(rising)
	last := newThrow(x, y, z, 2*foot, -6*foot, 6*foot)

	for name, want := range map[string]float64{
		"serve.contact":  0,
		"serve.net":      serve.air * 23 / (23 + 18),
		"serve.bounce":   serve.air,
		"return.contact": met,
		"return.net":     met + back.air*back.y/(back.y-back.toY),
		"return.bounce":  met + back.air,
		"third.contact":  third,
		"third.net":      third + drop.air*drop.y/(drop.y-drop.toY),
		"third.bounce":   third + drop.air,
		"fourth.contact": fourth,
		"fourth.net":     fourth + last.air*last.y/(last.y-last.toY),
		"fourth.bounce":  fourth + last.air,
		"end":            fourth + last.air + 1,
	} {
		checkSeconds(t, name, timeOf(t, r, name), units.Seconds(want))
		if e := eventNamed(t, r, name); !e.Reached || e.At != timeOf(t, r, name) {
			t.Errorf("event %s is %+v, want reached at its time", name, e)
		}
	}
	for i, p := range []struct {
		start, met float64 // s, s after the bounce
		throw
	}{{0, serve.backUp / g, serve}, {met, falling, back}, {third, rising, drop}, {fourth, 0.9, last}} {
		for _, share := range []float64{0, 0.1, 0.5, 0.9, 1} {
			x, y, z := p.flying(share * p.air)
			checkBall(t, r, p.start+share*p.air, x, y, z)
		}
		x, y, z := p.flying(p.up)
		if got := float64(r.Strokes[i].Planned.Top()); !near(got, p.up, 1e-7) || !near(z, p.apex, 1e-12) {
			t.Errorf("%s: apex after %v s, want %v s", lesson.ShotName(i), got, p.up)
		}
		checkBall(t, r, p.start+p.up, x, y, z)
		x, y, z = p.back(p.met / 2)
		checkBall(t, r, p.start+p.air+p.met/2, x, y, z)
	}
	if r.From != -1.5 || r.To != timeOf(t, r, "end") || r.Stopped() != r.To {
		t.Errorf("the rally lasts from %v to %v and stops at %v, want -1.5 to the end", r.From, r.To, r.Stopped())
	}
}

// Volleys in a vacuum: taken in the air falling through the asked height beyond
// the net; the bounce keeps its planned time and is not reached.
func TestVacuumVolley(t *testing.T) {
	shots := four()[:2]
	shots[0].Meet = lesson.Meet{How: lesson.OnVolley, Height: 4}
	r := solveIn(t, vacuum(), play(shots...))
	serve := newThrow(7*foot, -23*foot, 2.6*foot, -5*foot, 18*foot, 8*foot)
	at := serve.up + math.Sqrt(2*(8-4)*foot/g)
	checkSeconds(t, "return.contact", timeOf(t, r, "return.contact"), units.Seconds(at))
	x, y, _ := serve.flying(at)
	checkBall(t, r, at, x, y, 4*foot)
	checkSeconds(t, "serve.bounce", timeOf(t, r, "serve.bounce"), units.Seconds(serve.air))
	if e := eventNamed(t, r, "serve.bounce"); e.Reached {
		t.Error("the bounce of a volleyed serve is reached, want not")
	}
	if e := eventNamed(t, r, "return.bounce"); !e.Reached || !r.Strokes[0].Volleyed || r.Strokes[1].Volleyed {
		t.Error("the return is volleyed or does not bounce, want only the serve volleyed")
	}
}

// A volley asked for above the whole flight is taken 1.5 ft behind the kitchen
// line, our assumption; by the far team that is y = 8.5 ft.
func TestVolleyBehindTheKitchenLine(t *testing.T) {
	for _, c := range []struct {
		height units.Feet
		want   float64 // y in ft
	}{{90, 8.5}, {8.1, 8.5}, {3, 0}} {
		shots := four()[:2]
		shots[0].Meet = lesson.Meet{How: lesson.OnVolley, Height: c.height}
		r := solveIn(t, vacuum(), play(shots...))
		got := r.Strokes[1].From.Y / foot
		if c.want == 0 { // comes through the height: no matter where
			if z := r.Strokes[1].From.Z / foot; !near(z, float64(c.height), 1e-6) {
				t.Errorf("volley at %v ft is taken at %v ft", c.height, z)
			}
		} else if !near(got, c.want, 1e-6) {
			t.Errorf("volley at %v ft, above the flight, is taken at y = %v ft, want %v", c.height, got, c.want)
		}
	}
}

// A ball that falls through the height before the net is not volleyed there.
func TestVolleyOnlyBeyondTheNet(t *testing.T) {
	shots := []lesson.Shot{
		{By: game.Near1, Aim: court.Pt(-5, 4), Intent: lesson.Apex(12), Meet: lesson.Meet{How: lesson.OnVolley, Height: 11.9}},
		{By: game.Far1, Aim: court.Pt(4, -18), Intent: lesson.Apex(9)},
	}
	r := solveIn(t, vacuum(), play(shots...))
	if !r.Strokes[0].Volleyed && r.Strokes[1].At < r.Strokes[0].Planned.Duration {
		t.Error("a ball that is not volleyed is met before it bounces")
	}
	if y := r.Strokes[1].From.Y; y < 0 {
		t.Errorf("the far team meets the ball at y = %v m, want beyond the net", y)
	}
}

// A ball that never rises to the height is met at the top of its bounce.
func TestMeetAboveTheBounce(t *testing.T) {
	top := solveIn(t, vacuum(), play(four()[:2]...))
	for _, how := range []lesson.MeetHow{lesson.Rising, lesson.Falling} {
		shots := four()[:2]
		shots[0].Meet = lesson.Meet{How: how, Height: 20}
		r := solveIn(t, vacuum(), play(shots...))
		if got, want := r.Strokes[1].At, top.Strokes[1].At; got != want {
			t.Errorf("meet %v at 20 ft: contact at %v s, want %v s, the top of the bounce", how, got, want)
		}
	}
}
