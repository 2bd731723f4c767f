package cover

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/units"
	"pgregory.net/rapid"
)

// checkGrows fails if a cell that less covers is open in more, or its margin is
// less there.
func checkGrows(t *rapid.T, less, more Map) {
	const rounding = 2 * closeTo
	for i := range less.Len() {
		if less.Covered(i) && !more.Covered(i) {
			t.Fatalf("cell %d at %v: covered (%v s), then open (%v s)", i, less.Centre(i), less.Margin(i), more.Margin(i))
		}
		if more.Margin(i) < less.Margin(i)-rounding {
			t.Fatalf("cell %d at %v: Margin %v s falls to %v s", i, less.Centre(i), less.Margin(i), more.Margin(i))
		}
	}
	if less.Share() > more.Share() {
		t.Fatalf("Share() falls from %v to %v", less.Share(), more.Share())
	}
}

// Cover grows with the time there is: a slower drive, a higher lob, a ball with more drag, a
// quicker reaction.
func TestCoverGrowsWithTime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrike(t)
		later := s
		switch k := drawFloat(t, 1, 2, "more"); rapid.IntRange(0, 2).Draw(t, "by") {
		case 0:
			later.Shot.Drive, later.Shot.Lob = s.Shot.Drive/units.MetresPerSecond(k), s.Shot.Lob*units.Feet(k)
		case 1:
			if s.Shot.Lob == 0 { // a lob with more drag is struck harder and rises sooner
				later.Model.Ball.Drag *= k
			}
		case 2:
			for i := range later.Players {
				later.Players[i].Pace.Reaction /= units.Seconds(k)
			}
		}
		checkGrows(t, mustMap(t, s), mustMap(t, later))
	})
}

// A faster pace never covers less: top speed, a shorter time constant, reach.
func TestFasterPaceNeverCoversLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrike(t)
		faster := s
		p := &faster.Players[rapid.IntRange(0, 1).Draw(t, "who")].Pace
		k := drawFloat(t, 1, 1.6, "more")
		switch rapid.IntRange(0, 2).Draw(t, "by") {
		case 0:
			p.TopSpeed *= units.MetresPerSecond(k)
		case 1:
			p.Tau /= units.Seconds(k)
		case 2:
			p.Lunge += units.Metres(k - 1)
		}
		checkGrows(t, mustMap(t, s), mustMap(t, faster))
	})
}

// Turned half round, the far team sees what the near team saw, cell by cell.
func TestMirroredByTheOtherEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrike(t)
		turned := s
		turned.Team, turned.From = court.Far, s.From.Mirror()
		for i := range turned.Players {
			p := &turned.Players[i]
			p.Place, p.Facing = p.Place.Mirror(), p.Facing+180
		}
		a, b := mustMap(t, s), mustMap(t, turned)
		for i := range a.Len() {
			checkCell(t, a, b, i, i)
			if b.Centre(i) != a.Centre(i).Mirror() {
				t.Fatalf("cell %d at %v and %v, want the mirror", i, a.Centre(i), b.Centre(i))
			}
		}
		da, okA := a.Open()
		db, okB := b.Open()
		if okA != okB || da.Radius != db.Radius || db.Centre != da.Centre.Mirror() {
			t.Fatalf("Open() = %v, %v, turned %v, %v", da, okA, db, okB)
		}
	})
}

// Reflected in the court's long axis, right-handers become left-handers and
// every figure stays.
func TestMirroredLeftAndRight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrike(t)
		other := s
		other.From.X *= -1
		for i := range other.Players {
			p := &other.Players[i]
			p.Place.X, p.Facing, p.Hand = -p.Place.X, -p.Facing, lesson.LeftHanded-p.Hand
		}
		a, b := mustMap(t, s), mustMap(t, other)
		for i := range a.Len() {
			checkCell(t, a, b, i, i+Columns-1-2*(i%Columns))
		}
		if a.Share() != b.Share() || a.ShareForehand() != b.ShareForehand() || a.Middle() != b.Middle() {
			t.Fatalf("shares %v, %v, %v, reflected %v, %v, %v", a.Share(), a.ShareForehand(), a.Middle(), b.Share(), b.ShareForehand(), b.Middle())
		}
		da, _ := a.Open()
		if db, _ := b.Open(); da.Radius != db.Radius {
			t.Fatalf("Open() has radius %v, reflected %v", da.Radius, db.Radius)
		}
	})
}

func checkCell(t *rapid.T, a, b Map, i, j int) {
	whoA, handA := a.Taker(i)
	whoB, handB := b.Taker(j)
	if a.Margin(i) != b.Margin(j) || whoA.Number() != whoB.Number() || handA != handB {
		t.Fatalf("cell %d: %v s by %v, %v; mirrored %d: %v s by %v, %v", i, a.Margin(i), whoA, handA, j, b.Margin(j), whoB, handB)
	}
}

// Whatever the strike, no figure is endless or not a number, and shares fit together.
func TestFiguresAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := mustMap(t, drawStrike(t))
		for i := range m.Len() {
			if v := float64(m.Margin(i)); math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("Margin(%d) = %v", i, v)
			}
		}
		near1, near2 := m.ShareOf(0), m.ShareOf(1)
		if all := m.Share(); all < max(near1, near2) || all > near1+near2+1e-12 || m.ShareForehand() > all {
			t.Fatalf("Share() %v, forehand %v, of each %v and %v", all, m.ShareForehand(), near1, near2)
		}
		mid := m.Middle()
		if sum := mid.Open + mid.Taken[0] + mid.Taken[1]; math.Abs(sum-1) > 1e-12 {
			t.Fatalf("Middle() = %+v adds up to %v, want 1", mid, sum)
		}
		checkDisc(t, m)
	})
}

// checkDisc searches the largest disc cell against cell.
func checkDisc(t *rapid.T, m Map) {
	var covered []court.Point
	for i := range m.Len() {
		if m.Covered(i) {
			covered = append(covered, m.Centre(i))
		}
	}
	want := 0.0
	for i := range m.Len() {
		if !m.Covered(i) {
			want = max(want, freeRadius(m.Team(), covered, m.Centre(i)))
		}
	}
	d, ok := m.Open()
	if ok != (m.Share() < 1) || math.Abs(float64(d.Radius)-want) > 1e-12 {
		t.Fatalf("Open() = %v, %v, want radius %v", d, ok, want)
	}
	if ok && math.Abs(freeRadius(m.Team(), covered, d.Centre)-want) > 1e-12 {
		t.Fatalf("Open() = %v, but round there is %v ft", d, freeRadius(m.Team(), covered, d.Centre))
	}
}

func freeRadius(team court.End, covered []court.Point, at court.Point) float64 {
	half := court.Half(team)
	edge := min(at.X-half.Min.X, half.Max.X-at.X, at.Y-half.Min.Y, half.Max.Y-at.Y)
	free := edge * edge
	for _, c := range covered {
		x, y := c.X-at.X, c.Y-at.Y
		free = min(free, x*x+y*y)
	}
	return math.Sqrt(float64(free))
}

func mustMap(t *rapid.T, s Strike) Map {
	m, err := Of(s)
	if err != nil {
		t.Fatalf("Of(%+v): %v", s, err)
	}
	return m
}
