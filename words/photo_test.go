package words

import (
	"errors"
	"strings"
	"testing"

	"homeside/model/court"
	"homeside/model/homography"
	"homeside/model/units"
)

// The landmarks are different places on lines of the court with different names.
func TestLandmarks(t *testing.T) {
	names, places := map[string]bool{}, map[court.Point]bool{}
	for _, l := range Landmarks() {
		if names[l.Name] || places[l.At] || !court.Bounds.Contains(l.At) {
			t.Errorf("%q at %v is there twice or off the court", l.Name, l.At)
		}
		if left := strings.Contains(l.Name, "left"); left != (l.At.X < 0) || strings.Contains(l.Name, "right") != (l.At.X > 0) {
			t.Errorf("%q is at %v", l.Name, l.At)
		}
		if far := strings.Contains(l.Name, "far"); far != (l.At.Y > 0) {
			t.Errorf("%q is at %v", l.Name, l.At)
		}
		names[l.Name], places[l.At] = true, true
	}
}

// Every reason has a sentence of its own, and three points are counted from 1.
func TestPhotoReason(t *testing.T) {
	said := map[string]bool{}
	for _, r := range []homography.Reason{homography.TooFew, homography.NoNumber, homography.InLine, homography.NotOneCourt, homography.Mirrored} {
		text := PhotoReason(homography.Error{Reason: r})
		if said[text] || !strings.HasSuffix(text, ".") {
			t.Errorf("PhotoReason(%v) = %q, want a sentence of its own", r, text)
		}
		said[text] = true
	}
	if got, want := PhotoReason(homography.Error{Reason: homography.InLine, Points: []int{0, 1, 3}}), "Points 1, 2 and 4 lie on one line"; !strings.HasPrefix(got, want) {
		t.Errorf("PhotoReason of three in line = %q, want %q", got, want)
	}
	if got := PhotoReason(errors.New("else")); got == "" {
		t.Error("another error is not said")
	}
}

func TestSmallLength(t *testing.T) {
	defer MeasureBy(Measured())
	for _, c := range []struct {
		l          units.Feet
		ft, metric string
	}{{units.Inches(1.26), "1.3 in", "3 cm"}, {0, "0.0 in", "0 cm"}, {4, "4 ft", "1.22 m"}} {
		MeasureBy(FeetAndInches)
		if got := SmallLength(c.l); got != c.ft {
			t.Errorf("SmallLength(%v) = %q, want %q", c.l, got, c.ft)
		}
		MeasureBy(Metric)
		if got := SmallLength(c.l); got != c.metric {
			t.Errorf("SmallLength(%v) = %q, want %q", c.l, got, c.metric)
		}
	}
}

func TestFits(t *testing.T) {
	if got := Fits(4, 0); !strings.Contains(got, "fifth") {
		t.Errorf("Fits(4) = %q, want it to ask for a fifth point", got)
	}
	if got := Fits(5, units.Inches(2)); !strings.Contains(got, "2.0 in") {
		t.Errorf("Fits(5, 2 in) = %q", got)
	}
}
