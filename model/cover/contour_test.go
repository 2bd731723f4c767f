package cover

import (
	"math"
	"testing"

	"homeside/model/court"
	"homeside/model/units"
	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
)

// A margin that grows evenly away from the net has straight lines from sideline
// to sideline.
func TestContourStraight(t *testing.T) {
	m := uniform(func(_, row int) units.Seconds { return units.Seconds(row) / 10 })
	got := m.Contours(1.25)
	if len(got) != 1 || got[0].Closed || len(got[0].Points) != nodeColumns {
		t.Fatalf("Contours(1.25) = %v, want one open line", got)
	}
	points := got[0].Points
	for _, p := range points {
		if math.Abs(float64(p.Y+6.5)) > 1e-12 { // row 12 at 6.25 ft, row 13 at 6.75 ft
			t.Errorf("Contours(1.25) passes %v, want y = -6.5", p)
		}
	}
	a, b := points[0].X, points[len(points)-1].X
	if min(a, b) != -10 || max(a, b) != 10 {
		t.Errorf("Contours(1.25) goes from x = %v to %v, want sideline to sideline", a, b)
	}
}

// A cone has circles: closed, at their radius to within the half feet.
func TestContourRound(t *testing.T) {
	centre := court.Pt(0.25, -10.25)
	m := uniform(func(column, row int) units.Seconds {
		return units.Seconds(5 - Centre(court.Near, row*Columns+column).Distance(centre))
	})
	got := m.Contours(0)
	if len(got) != 1 || !got[0].Closed {
		t.Fatalf("Contours(0) = %v, want one closed line", got)
	}
	for _, p := range got[0].Points {
		if r := float64(p.Distance(centre)); math.Abs(r-5) > 0.02 {
			t.Errorf("Contours(0) passes %v, %v ft from the middle, want 5", p, r)
		}
	}
}

// Two hills whose feet touch at one corner: together if the middle is above, else apart.
func TestContourSaddle(t *testing.T) {
	for _, c := range []struct {
		low  units.Seconds
		want int
	}{{-0.5, 1}, {-2, 2}} {
		m := uniform(func(column, row int) units.Seconds {
			if (column < 20) == (row < 20) && column > 10 && column < 30 && row > 10 && row < 30 {
				return 1
			}
			return c.low
		})
		if got := m.Contours(0); len(got) != c.want {
			t.Errorf("Contours(0) over %v = %d lines, want %d", c.low, len(got), c.want)
		}
	}
}

// Every side between neighbours of which one is above a level is crossed once, by
// lines that are closed or end at the edge.
func TestContoursSeparate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := mustMap(t, drawStrike(t))
		level := units.Seconds(drawFloat(t, -0.5, 0.5, "level"))
		points := 0
		for _, c := range m.Contours(level) {
			points += len(c.Points)
			if len(c.Points) < 2 {
				t.Fatalf("a line of %d points", len(c.Points))
			}
			for _, p := range []court.Point{c.Points[0], c.Points[len(c.Points)-1]} {
				if !c.Closed && !onEdge(p) {
					t.Fatalf("a line ends at %v, within the court", p)
				}
			}
		}
		if want := crossings(m, level); points != want {
			t.Fatalf("Contours(%v) have %d points, want %d", level, points, want)
		}
	})
}

func onEdge(p court.Point) bool {
	return p.X == -10 || p.X == 10 || p.Y == 0 || p.Y == -22
}

// crossings counts the sides of the grid that the level lies across.
func crossings(m Map, level units.Seconds) int {
	above := func(c, r int) bool { return carried(m, c, r)-level >= 0 }
	count := 0
	for r := -1; r <= Rows; r++ {
		for c := -1; c <= Columns; c++ {
			if c < Columns && above(c, r) != above(c+1, r) {
				count++
			}
			if r < Rows && above(c, r) != above(c, r+1) {
				count++
			}
		}
	}
	return count
}

// carried is the margin at a cell, or carried on half a cell beyond the outer ones.
func carried(m Map, c, r int) units.Seconds {
	on := func(a, b units.Seconds) units.Seconds { return a + (a-b)/2 }
	switch {
	case r < 0:
		return on(carried(m, c, 0), carried(m, c, 1))
	case r == Rows:
		return on(carried(m, c, Rows-1), carried(m, c, Rows-2))
	case c < 0:
		return on(m.Margin(r*Columns), m.Margin(r*Columns+1))
	case c == Columns:
		return on(m.Margin(r*Columns+Columns-1), m.Margin(r*Columns+Columns-2))
	}
	return m.Margin(r*Columns + c)
}

func TestLevels(t *testing.T) {
	for _, c := range []struct {
		lo, hi float64
		want   []units.Seconds
	}{
		{-0.25, 0.32, []units.Seconds{-0.2, -0.1, 0, 0.1, 0.2, 0.3}},
		{-0.5, 0.5, []units.Seconds{-0.4, -0.2, 0, 0.2, 0.4}},
		{-1.7, 1.2, []units.Seconds{-1.5, -1, -0.5, 0, 0.5, 1}},
		{0.31, 0.39, nil},
		{0.5, 0.5, []units.Seconds{0.5}},
		{-90, 900, []units.Seconds{0, 200, 400, 600, 800}},
	} {
		m := uniform(func(_, row int) units.Seconds { return units.Seconds(c.lo + (c.hi-c.lo)*float64(row)/float64(Rows-1)) })
		got := m.Levels()
		if len(got) != len(c.want) {
			t.Errorf("Levels() from %v to %v = %v, want %v", c.lo, c.hi, got, c.want)
			continue
		}
		for i := range got {
			if math.Abs(float64(got[i]-c.want[i])) > 1e-12 || math.Signbit(float64(got[i])) != (c.want[i] < 0) {
				t.Errorf("Levels() from %v to %v = %v, want %v", c.lo, c.hi, got, c.want)
			}
		}
	}
}

func TestContoursOfNoLevel(t *testing.T) {
	m := mustOf(t, setPair())
	for _, level := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e9} {
		if got := m.Contours(units.Seconds(level)); len(got) != 0 {
			t.Errorf("Contours(%v) = %v, want none", level, got)
		}
	}
}
