package cover

import (
	"errors"
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/units"
)

// The net side's left corner comes first, as each team sees it.
func TestCentre(t *testing.T) {
	for _, c := range []struct {
		team court.End
		i    int
		want court.Point
	}{
		{court.Near, 0, court.Pt(-9.75, -0.25)}, {court.Near, 39, court.Pt(9.75, -0.25)}, {court.Near, Cells - 1, court.Pt(9.75, -21.75)},
		{court.Far, 0, court.Pt(9.75, 0.25)}, {court.Far, Cells - 1, court.Pt(-9.75, 21.75)},
	} {
		if got := Centre(c.team, c.i); got != c.want {
			t.Errorf("Centre(%v, %d) = %v, want %v", c.team, c.i, got, c.want)
		}
	}
	if Columns != 40 || Rows != 44 || Cells != 1760 {
		t.Errorf("%d columns, %d rows, %d cells, want 40, 44, 1760", Columns, Rows, Cells)
	}
}

// Eight columns of 44 cells have their centres within 2 ft of the centreline.
func TestInMiddle(t *testing.T) {
	count := 0
	for i := range Cells {
		x := math.Abs(float64(Centre(court.Far, i).X))
		if InMiddle(i) != (x <= 2) {
			t.Errorf("InMiddle(%d) = %v at x = %v", i, InMiddle(i), x)
		}
		if InMiddle(i) {
			count++
		}
	}
	if count != 8*44 {
		t.Errorf("the middle has %d cells, want %d", count, 8*44)
	}
}

// A player who stands on the ball's way within reach has the flight less the
// reaction to spare: 8 ft and 15 ft at 10 m/s without drag.
func TestMarginByHand(t *testing.T) {
	s := setPair()
	s.Model.Ball.Drag = 0
	s.Shot.Drive = 10
	s.From = court.Pt(-4.75, 15)
	m := mustOf(t, s)
	cell := 15*Columns + 10 // (-4.75, -7.75)
	want := 22.75*units.FootInMetres/10 - 0.230
	if got := float64(m.Margin(cell)); math.Abs(got-want) > 1e-12 {
		t.Errorf("Margin at %v = %v s, want %v", m.Centre(cell), got, want)
	}
	if id, forehand := m.Taker(cell); id != game.Near1 || !forehand {
		t.Errorf("Taker at %v = %v, %v, want near1 with the forehand", m.Centre(cell), id, forehand)
	}
	if a, b := m.MarginOf(game.Near1, cell), m.MarginOf(game.Near2, cell); a != m.Margin(cell) || b >= a {
		t.Errorf("MarginOf = %v and %v, want near1's to be the best, %v", a, b, m.Margin(cell))
	}
}

// Of two partners equally early in the middle the one with the forehand there
// takes it; of two such the first-named. The left-hander stands right.
func TestForehandTakesTheMiddle(t *testing.T) {
	s := setPair()
	s.From.X = 0
	s.Players[0].Place, s.Players[1].Place = court.Pt(-2, -8), court.Pt(2, -8)
	middle := 16*Columns + 20 // (0.25, -8.25), within reach of both
	for _, c := range []struct {
		first, second lesson.Hand
		want          game.Player
		forehand      bool
	}{
		{lesson.RightHanded, lesson.RightHanded, game.Near1, true},
		{lesson.LeftHanded, lesson.LeftHanded, game.Near2, true},
		{lesson.RightHanded, lesson.LeftHanded, game.Near1, true},
		{lesson.LeftHanded, lesson.RightHanded, game.Near1, false},
	} {
		s.Players[0].Hand, s.Players[1].Hand = c.first, c.second
		m := mustOf(t, s)
		if a, b := m.MarginOf(game.Near1, middle), m.MarginOf(game.Near2, middle); a != b {
			t.Fatalf("margins %v and %v in the middle, want the same", a, b)
		}
		if id, forehand := m.Taker(middle); id != c.want || forehand != c.forehand {
			t.Errorf("Taker with a %v- and a %v-hander = %v, %v, want %v, %v", c.first, c.second, id, forehand, c.want, c.forehand)
		}
	}
}

func TestMiddleOwner(t *testing.T) {
	s := setPair()
	s.Players[1].Place.X = 2
	if id, ok := mustOf(t, s).MiddleOwner(); !ok || id != game.Near2 {
		t.Errorf("MiddleOwner() = %v, %v, want near2, who stands nearer", id, ok)
	}
	s.Players[0].Place.X = -1
	if id, ok := mustOf(t, s).MiddleOwner(); !ok || id != game.Near1 {
		t.Errorf("MiddleOwner() = %v, %v, want near1, who stands nearer", id, ok)
	}
	open := uniform(func(int, int) units.Seconds { return -1 })
	if id, ok := open.MiddleOwner(); ok {
		t.Errorf("MiddleOwner() with all open = %v, want nobody", id)
	}
	if got := open.Middle(); got.Open != 1 {
		t.Errorf("Middle() with all open = %+v", got)
	}
}

// All open, the disc is bounded by net and sidelines, a quarter foot off the
// middle; one covered cell halves it; all covered, there is none.
func TestOpen(t *testing.T) {
	for _, c := range []struct {
		name    string
		covered func(column, row int) bool
		want    Disc
		open    bool
	}{
		{"all open", func(_, _ int) bool { return false }, Disc{court.Pt(-0.25, -9.75), 9.75}, true},
		{"all covered", func(_, _ int) bool { return true }, Disc{}, false},
		{"kitchen open", func(_, r int) bool { return r >= 14 }, Disc{court.Pt(-6.25, -3.75), 3.5}, true},
		{"a corner cell open", func(c, r int) bool { return c > 0 || r > 0 }, Disc{court.Pt(-9.75, -0.25), 0.25}, true},
		{"a cell open", func(c, r int) bool { return c != 20 || r != 20 }, Disc{court.Pt(0.25, -10.25), 0.5}, true},
		{"one covered behind", func(c, r int) bool { return c == 20 && r == 40 }, Disc{court.Pt(-0.25, -9.75), 9.75}, true},
		{"the back open but for two cells", func(c, r int) bool { return r < 30 || (c == 10 || c == 30) && r == 37 },
			Disc{court.Pt(-1.25, -18.25), 3.5}, true},
		{"an L of open court", func(c, r int) bool { return c >= 6 && r >= 6 }, Disc{court.Pt(-8.25, -1.75), 1.75}, true},
	} {
		m := uniform(func(column, row int) units.Seconds {
			if c.covered(column, row) {
				return 1
			}
			return -1
		})
		got, ok := m.Open()
		if c.name == "kitchen open" { // many are as large: only the size is one
			got.Centre = c.want.Centre
		}
		if ok != c.open || math.Abs(float64(got.Radius-c.want.Radius)) > 1e-12 || got.Centre != c.want.Centre {
			t.Errorf("%s: Open() = %v, %v, want %v, %v", c.name, got, ok, c.want, c.open)
		}
	}
}

func TestZeroMap(t *testing.T) {
	var m Map
	if _, ok := m.Open(); ok || m.Share() != 0 || m.ShareForehand() != 0 || m.Middle() != (Middle{}) || m.Levels() != nil || m.Contours(0) != nil {
		t.Errorf("the zero Map: open %v, share %v, middle %v, levels %v", ok, m.Share(), m.Middle(), m.Levels())
	}
}

func TestDifference(t *testing.T) {
	slow, fast := setPair(), setPair()
	slow.Players[0].Pace.TopSpeed, fast.Shot.Drive = 4, 14
	d := Difference{Before: mustOf(t, slow), After: mustOf(t, fast)}
	back := Difference{Before: d.After, After: d.Before}
	turned := map[Change]Change{StaysOpen: StaysOpen, StaysCovered: StaysCovered, Gained: Lost, Lost: Gained}
	sum := 0.0
	for c, opposite := range turned {
		sum += d.Share(c)
		if d.Share(c) != back.Share(opposite) {
			t.Errorf("Share(%v) = %v, the other way round Share(%v) = %v", c, d.Share(c), opposite, back.Share(opposite))
		}
	}
	if math.Abs(sum-1) > 1e-12 || d.Share(Gained) == 0 || d.Share(Lost) != 0 {
		t.Errorf("gained %v, lost %v, all shares %v, want some, none, 1", d.Share(Gained), d.Share(Lost), sum)
	}
	if got, want := d.Share(Gained), d.After.Share()-d.Before.Share(); math.Abs(got-want) > 1e-12 {
		t.Errorf("Share(Gained) = %v, want %v", got, want)
	}
	for i := range d.Len() {
		if got, want := d.Margin(i), d.After.Margin(i)-d.Before.Margin(i); got != want || got <= 0 {
			t.Fatalf("Margin(%d) = %v, want %v and more than 0", i, got, want)
		}
	}
	if (Difference{}).Share(Gained) != 0 {
		t.Error("the zero Difference gains something")
	}
}

// Every figure that could put a NaN or an endless time into a map is refused.
func TestValidate(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, spoil := range map[string]func(*Strike){
		"contact NaN":         func(s *Strike) { s.From.X = units.Feet(nan) },
		"contact far away":    func(s *Strike) { s.From.Y = 1001 },
		"contact below":       func(s *Strike) { s.Height = -1 },
		"height NaN":          func(s *Strike) { s.Height = units.Metres(nan) },
		"drive NaN":           func(s *Strike) { s.Shot.Drive = units.MetresPerSecond(nan) },
		"drive endless":       func(s *Strike) { s.Shot.Drive = units.MetresPerSecond(inf) },
		"drive backward":      func(s *Strike) { s.Shot.Drive = -15 },
		"drive too slow":      func(s *Strike) { s.Shot.Drive = 0.5 },
		"drive and lob":       func(s *Strike) { s.Shot.Lob = 20 },
		"lob below":           func(s *Strike) { s.Shot = Shot{Lob: 2} },
		"lob NaN":             func(s *Strike) { s.Shot = Shot{Lob: units.Feet(nan)} },
		"lob into the sky":    func(s *Strike) { s.Shot = Shot{Lob: 101} },
		"ball without mass":   func(s *Strike) { s.Model.Ball.Mass = 0 },
		"ball like a curtain": func(s *Strike) { s.Model.Ball.Drag = 20 },
		"ball of size NaN":    func(s *Strike) { s.Model.Ball.Diameter = units.Metres(nan) },
		"place NaN":           func(s *Strike) { s.Players[1].Place.Y = units.Feet(nan) },
		"facing endless":      func(s *Strike) { s.Players[0].Facing = units.Degrees(inf) },
		"no pace":             func(s *Strike) { s.Players[1].Pace = movement.Pace{} },
	} {
		s := setPair()
		spoil(&s)
		_, err := Of(s)
		if want := ErrStrike; name == "no pace" && !errors.Is(err, movement.ErrPace) || name != "no pace" && !errors.Is(err, want) {
			t.Errorf("%s: Of error = %v", name, err)
		}
	}
	if err := setPair().Validate(); err != nil {
		t.Errorf("Validate() of a sound strike: %v", err)
	}
}

func BenchmarkOf(b *testing.B) {
	b.ReportAllocs()
	s := setPair()
	for b.Loop() {
		if _, err := Of(s); err != nil {
			b.Fatal(err)
		}
	}
}

// All that an overlay asks of a map.
func BenchmarkRead(b *testing.B) {
	m := mustOf(b, setPair())
	for b.Loop() {
		m.Share()
		m.Middle()
		m.Open()
		for _, l := range m.Levels() {
			m.Contours(l)
		}
	}
}
