package page

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson/lessontest"
	"homeside/model/rally"
	"homeside/model/units"
)

// between is a flat list of samples at a moment, as the page's script reads it:
// straight between neighbours. It is written again here, so that what is
// written is checked and not what it was made from.
func between(flat []float64, n int, t float64) []float64 {
	i := 0
	for (i+2)*n <= len(flat) && flat[(i+1)*n] <= t {
		i++
	}
	a := flat[i*n : (i+1)*n]
	if (i+1)*n >= len(flat) || t <= a[0] {
		return a[1:]
	}
	b := flat[(i+1)*n : (i+2)*n]
	k := (t - a[0]) / (b[0] - a[0])
	out := make([]float64, 0, n-1)
	for j := 1; j < n; j++ {
		out = append(out, a[j]+(b[j]-a[j])*k)
	}
	return out
}

// Of every sound lesson, at every moment, players and ball are within half an
// inch of the rally's.
func TestMotionStaysWithinHalfAnInch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lessontest.Lessons().Draw(t, "lesson")
		if len(l.Plays) == 0 {
			return
		}
		r, err := rally.Solve(l, rapid.IntRange(0, len(l.Plays)-1).Draw(t, "play"))
		if err != nil {
			t.Fatal(err)
		}
		p := newStage(l, r).play()
		for range 40 {
			at := units.Seconds(rapid.Float64Range(float64(r.From), float64(r.To)).Draw(t, "moment"))
			checkMoment(t, p, r.At(at))
		}
	})
}

func checkMoment(t *rapid.T, p play, f rally.Frame) {
	const most = 0.5 / 12
	for i, id := range game.Players {
		got, want := between(p.People[i].Way, 4, float64(f.T)), f.Players[id].Run
		if off := court.Pt(units.Feet(got[0]), units.Feet(got[1])).Distance(want.Place); float64(off) > most {
			t.Fatalf("at %v %v is at %v, want %v within half an inch", f.T, id, got, want.Place)
		}
	}
	got, want := between(p.Ball, 4, float64(f.T)), f.Ball
	at := want.Ground()
	off := math.Hypot(math.Hypot(got[0]-float64(at.X), got[1]-float64(at.Y)), got[2]-float64(want.Height().Feet()))
	if off > most {
		t.Fatalf("at %v the ball is at %v, want %v, %v high within half an inch", f.T, got, at, want.Height().Feet())
	}
}

// A still thing needs two samples, and a straight one no more.
func TestFewSamples(t *testing.T) {
	still := func(t units.Seconds) Sample { return Sample{T: t, Place: court.Pt(3, 4)} }
	straight := func(t units.Seconds) Sample { return Sample{T: t, Place: court.Pt(units.Feet(t), 0)} }
	bent := func(t units.Seconds) Sample { return Sample{T: t, Place: court.Pt(0, units.Feet(t*t))} }
	for _, c := range []struct {
		name        string
		at          func(units.Seconds) Sample
		least, most int
	}{{"still", still, 2, 2}, {"straight", straight, 2, 2}, {"bent", bent, 8, 80}} {
		if got := len(along([]units.Seconds{0, 4}, c.at)); got < c.least || got > c.most {
			t.Errorf("%s: %d samples, want %d to %d", c.name, got, c.least, c.most)
		}
	}
}

// A facing goes the short way round, whatever is the full turns' number.
func TestFacingGoesTheShortWay(t *testing.T) {
	for _, c := range []struct{ from, to, want units.Degrees }{{350, 10, 370}, {10, 350, -10}, {370, 20, 380}, {0, 180, 180}, {-10, 350, -10}} {
		if got := turnedOn(c.from, c.to); math.Abs(float64(got-c.want)) > 1e-9 && math.Abs(float64(got-c.want)) != 360 {
			t.Errorf("turnedOn(%v, %v) = %v, want %v", c.from, c.to, got, c.want)
		}
	}
}
