package compose

import (
	"math"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/units"
)

// runPicture is a picture in which far2, who hits nothing, does one run.
func runPicture(t *testing.T, from, to units.Seconds, leave *lesson.Anchor, via *court.Point) Picture {
	t.Helper()
	l := invented()
	l.Plays[0].Lead = 3
	l.Plays[0].Tracks[game.Far2] = []lesson.Keyframe{
		{At: lesson.Anchor{Offset: from}, Place: court.Pt(5, 7.5)},
		{At: lesson.Anchor{Offset: to}, Place: court.Pt(-5, 7.5), Leave: leave, Via: via},
	}
	return pictureOf(t, l, 0, canvas.Upright)
}

// A tick stands at every half second of the rally's clock strictly between
// leaving and arriving: for whole halves at both ends, two a second less one.
func TestTicksCountHalfSeconds(t *testing.T) {
	for _, c := range []struct {
		from, to units.Seconds
		leave    *lesson.Anchor
		want     int
	}{
		{0, 2, nil, 3},
		{0, 0.5, nil, 0},
		{0.1, 0.45, nil, 0},
		{0.1, 0.55, nil, 1},
		{0.25, 2.25, nil, 4},
		{-1, 1, nil, 3},
		{-0.75, 0.25, nil, 2}, // -0.5 and 0
		{0, 2, &lesson.Anchor{Offset: 1.2}, 1},
	} {
		p := runPicture(t, c.from, c.to, c.leave, nil)
		ticks := shapesOf(p.Static(360, 640))["court/run.far2.0.ticks"]
		if got := len(ticks.Path) / 2; got != c.want { // a move and a line each
			t.Errorf("a run from %v to %v s (leave %v) has %d ticks, want %d", c.from, c.to, c.leave, got, c.want)
		}
	}
}

// Each tick is where the player is at its time, square to the run.
func TestTicksStandOnTheWay(t *testing.T) {
	via := court.Pt(0, 14)
	for _, bend := range []*court.Point{nil, &via} {
		p := runPicture(t, 0, 2, nil, bend)
		ticks := shapesOf(p.Static(360, 640))["court/run.far2.0.ticks"].Path
		if len(ticks) != 6 {
			t.Fatalf("%d steps of ticks, want 6", len(ticks))
		}
		for i := range 3 {
			at := units.Seconds(0.5 * float64(i+1))
			a, b := ticks[2*i].P[0], ticks[2*i+1].P[0]
			want := p.Rally.Tracks[game.Far2].At(at).Place
			if got := court.Pt(a.X, a.Y); got.Distance(want) > 1e-9 || a.X != b.X || a.Y != b.Y {
				t.Errorf("tick %d is at %v, want %v", i, got, want)
			}
			before, after := p.Rally.Tracks[game.Far2].At(at-0.001).Place, p.Rally.Tracks[game.Far2].At(at+0.001).Place
			way, _ := after.Sub(before).Unit()
			along := float64(a.U-b.U)*float64(way.X) + float64(a.V-b.V)*float64(way.Y)
			if long := math.Hypot(float64(a.U-b.U), float64(a.V-b.V)); math.Abs(long-6) > 1e-9 || math.Abs(along) > 0.2 {
				t.Errorf("tick %d is %v points long and leans %v along the way, want 6 and 0", i, long, along)
			}
		}
	}
}

// A run shorter than half a foot is a step on the spot and not drawn.
func TestShortRunsAreNotDrawn(t *testing.T) {
	for x, want := range map[units.Feet]bool{0.49: false, 0.51: true} {
		l := invented()
		l.Plays[0].Tracks[game.Far2] = []lesson.Keyframe{{Place: court.Pt(5, 7.5)}, {At: lesson.Anchor{Offset: 2}, Place: court.Pt(5+x, 7.5)}}
		shapes := shapesOf(pictureOf(t, l, 0, canvas.Upright).Static(360, 640))
		if _, got := shapes["court/run.far2.0"]; got != want {
			t.Errorf("a run of %v ft is drawn: %v, want %v", float64(x), got, want)
		}
	}
}

// An arrow ends at the keyframe and points along the last of the way.
func TestArrowHeads(t *testing.T) {
	for _, c := range []struct {
		way  court.Curve
		want court.Point // direction
	}{
		{court.StraightCurve(court.Pt(0, 0), court.Pt(0, 5)), court.Pt(0, 1)},
		{court.StraightCurve(court.Pt(3, 0), court.Pt(-2, 0)), court.Pt(-1, 0)},
		{court.BentCurve(court.Pt(0, 0), court.Pt(2.5, 2.5), court.Pt(0, 5)), court.Pt(-0.8944, 0.4472)}, // from the handle at 5, 2.5
	} {
		head := arrowHead(c.way, 10)
		_, end := c.way.Ends()
		base := court.Pt(units.Feet(head[1].P[0].U+head[2].P[0].U)/2, units.Feet(head[1].P[0].V+head[2].P[0].V)/2) // points
		if tip := head[0].P[0]; tip != canvas.On(end) {
			t.Errorf("the arrow of %v has its tip at %+v, want %v", c.way, tip, end)
		}
		if got := base.Times(-0.1); got.Distance(c.want) > 0.1 {
			t.Errorf("the arrow to %v points to %v, want %v", end, got, c.want)
		}
	}
	if head := arrowHead(court.StraightCurve(court.Pt(1, 1), court.Pt(1, 1)), 10); head != nil {
		t.Errorf("a way without a length has the head %v, want none", head)
	}
}

// A bent run is drawn on its own curve: the cubic's middle is the point passed.
func TestBentRunsPassTheirPoint(t *testing.T) {
	via := court.Pt(1, 13)
	path := shapesOf(runPicture(t, 0, 2, nil, &via).Static(360, 640))["court/run.far2.0"].Path
	from, c := path[0].P[0], path[1].P
	x := (from.X + 3*c[0].X + 3*c[1].X + c[2].X) / 8
	y := (from.Y + 3*c[0].Y + 3*c[1].Y + c[2].Y) / 8
	if got := court.Pt(x, y); got.Distance(via) > 1e-9 {
		t.Errorf("the run's middle is at %v, want %v", got, via)
	}
}
