package gesture

import (
	"testing"

	"homeside/model/court"
)

func TestSnap(t *testing.T) {
	all := Snapping{Lines: true, HalfFeet: true, Mirror: true, Reach: 0.6}
	lines, half, mirror := Snapping{Lines: true, Reach: 0.6}, Snapping{HalfFeet: true, Reach: 0.6}, Snapping{Mirror: true, Reach: 0.6}
	partner := court.Pt(-4.2, -23.3)
	for _, c := range []struct {
		name   string
		snap   Snapping
		at     court.Point
		to     court.Point
		guides []Guide
	}{
		{"nothing", Snapping{Reach: 0.6}, court.Pt(9.9, -22.1), court.Pt(9.9, -22.1), nil},
		{"a corner", lines, court.Pt(9.5, -22.4), court.Pt(10, -22), []Guide{
			{ToLine, court.Pt(10, 0), court.Pt(10, -22)}, {ToLine, court.Pt(-10, -22), court.Pt(10, -22)}}},
		{"out of reach", lines, court.Pt(9.3, -22.7), court.Pt(9.3, -22.7), nil},
		{"a far line", lines, court.Pt(-3, 7.2), court.Pt(-3, 7), []Guide{{ToLine, court.Pt(-10, 7), court.Pt(10, 7)}}},
		{"half feet", half, court.Pt(3.3, -17.7), court.Pt(3.5, -17.5), nil},
		{"the partner's image", mirror, court.Pt(4, -23), court.Pt(4.2, -23.3), []Guide{{ToMirror, partner, court.Pt(4.2, -23.3)}}},
		{"the partner's depth", mirror, court.Pt(1, -23), court.Pt(1, -23.3), []Guide{{ToDepth, partner, court.Pt(1, -23.3)}}},
		{"the nearest wins", all, court.Pt(4, -22.1), court.Pt(4.2, -22), []Guide{
			{ToLine, court.Pt(-10, -22), court.Pt(10, -22)}, {ToMirror, partner, court.Pt(4.2, -22)}}},
		{"half feet where nothing is near", all, court.Pt(6.3, -15.2), court.Pt(6.5, -15), nil},
	} {
		to, guides := c.snap.Place(c.at, &partner)
		if to != c.to || len(guides) != len(c.guides) {
			t.Errorf("%s: Place(%v) = %v, %v, want %v, %v", c.name, c.at, to, guides, c.to, c.guides)
			continue
		}
		for i, want := range c.guides {
			if guides[i] != want {
				t.Errorf("%s: Place(%v) guide %d is %+v, want %+v", c.name, c.at, i, guides[i], want)
			}
		}
	}
	if to, guides := all.Place(court.Pt(4.2, -23.4), nil); to != court.Pt(4, -23.5) || guides != nil {
		t.Errorf("without a partner Place(4.2, -23.4) = %v, %v, want half feet", to, guides)
	}
}
