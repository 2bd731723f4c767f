package homography

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	_ "homeside/internal/fixedseed"
	"homeside/model/court"
	"homeside/model/units"
)

func pair(x, y units.Feet, u, v float64) Pair { return Pair{court.Pt(x, y), Px{u, v}} }

// The invented pictures of scripts/homography.py.
var (
	four = []Pair{pair(-10, -22, 212.5, 1021.25), pair(10, -22, 1711, 1034.5), pair(10, 7, 1302.75, 498), pair(-10, 7, 601.5, 491.25)}
	six  = []Pair{
		pair(-10, -7, 402, 688), pair(10, -7, 1518, 700), pair(10, 7, 1303, 497), pair(-10, 7, 600, 492),
		pair(-10, 22, 690, 408), pair(10, 22, 1214, 411),
	}
)

func fit(t *testing.T, pairs []Pair) Map {
	t.Helper()
	m, err := Fit(pairs)
	if err != nil {
		t.Fatalf("Fit: %v", err)
	}
	return m
}

// Pixels by cv2.findHomography of OpenCV 4.6.0 and by numpy 1.24's SVD, from
// scripts/homography.py.
func TestFitAgreesWithOpenCV(t *testing.T) {
	for _, c := range []struct {
		name      string
		pairs     []Pair
		tolerance float64 // px
		want      map[court.Point]Px
	}{
		{"four points, OpenCV", four, 1e-6, map[court.Point]Px{
			{X: 0, Y: -15}: {958.418586484, 812.053639714}, {X: -10, Y: 0}: {551.111398876, 559.902849860}, {X: 4.5, Y: 20}: {1077.939746053, 405.547459727},
		}},
		{"six points, SVD", six, 1e-6, map[court.Point]Px{
			{X: 0, Y: -15}: {951.254717092, 934.299654900}, {X: -10, Y: 0}: {519.710234866, 570.479818671}, {X: 4.5, Y: 20}: {1070.783544252, 417.209812651},
		}},
		// OpenCV goes on to the least squares in the picture: among the points it
		// differs by a pixel or two.
		{"six points, OpenCV", six, 2, map[court.Point]Px{
			{X: -10, Y: 0}: {520.874537917, 571.306816587}, {X: 4.5, Y: 20}: {1069.595364078, 415.653083704},
		}},
	} {
		m := fit(t, c.pairs)
		for p, want := range c.want {
			got, ok := m.ToPx(p)
			if !ok || math.Hypot(got.X-want.X, got.Y-want.Y) > c.tolerance {
				t.Errorf("%s: ToPx(%v) = %v, %v, want %v within %v px", c.name, p, got, ok, want, c.tolerance)
			}
		}
	}
}

// Four points fit exactly; of more the residuals say how well.
func TestResiduals(t *testing.T) {
	m := fit(t, four)
	for _, p := range four {
		ft, ok := m.Residual(p)
		px, on := m.InPicture(p)
		if !ok || !on || ft.Inches() > 1e-6 || px > 1e-6 {
			t.Errorf("the residual at %v is %v in, %v px, want none", p.Court, ft.Inches(), px)
		}
	}
	m = fit(t, six)
	most := 0.0
	for _, p := range six {
		ft, _ := m.Residual(p)
		px, _ := m.InPicture(p)
		most = max(most, ft.Inches())
		if px == 0 || px > 12 {
			t.Errorf("six points that do not quite fit: %v px at %v, want a few", px, p.Court)
		}
	}
	if most < 0.5 || most > 24 {
		t.Errorf("the largest residual is %v in, want some inches", most)
	}
}

// Points that say nothing are refused with the reason.
func TestFitRefuses(t *testing.T) {
	turned := []Pair{four[0], four[2], four[1], four[3]}
	for i := range turned {
		turned[i].Px = four[i].Px
	}
	mirrored := append([]Pair{}, four...)
	for i, k := range []int{1, 0, 3, 2} {
		mirrored[i].Px = four[k].Px
	}
	lined := append([]Pair{}, six...)
	for i := range lined {
		lined[i].Court = court.Pt(units.Feet(i), units.Feet(2*i))
	}
	for name, c := range map[string]struct {
		pairs []Pair
		want  Reason
	}{
		"none":                         {nil, TooFew},
		"three":                        {four[:3], TooFew},
		"three in line on court":       {[]Pair{four[0], four[1], pair(0, -22, 900, 600), four[3]}, InLine},
		"three in line in the picture": {[]Pair{pair(-10, -22, 100, 100), pair(10, -22, 200, 200), pair(10, 7, 300, 300), pair(-10, 7, 600, 100)}, InLine},
		"one place":                    {[]Pair{pair(-10, -22, 5, 5), pair(10, -22, 5, 5), pair(10, 7, 5, 5), pair(-10, 7, 5, 5)}, InLine},
		"six in line":                  {lined, InLine},
		"two exchanged":                {turned, NotOneCourt},
		"left and right":               {mirrored, Mirrored},
		"NaN":                          {[]Pair{four[0], four[1], four[2], pair(-10, 7, math.NaN(), 1)}, NoNumber},
		"infinite":                     {[]Pair{four[0], four[1], four[2], pair(-10, units.Feet(math.Inf(1)), 1, 1)}, NoNumber},
	} {
		m, err := Fit(c.pairs)
		var e Error
		if !errors.As(err, &e) || e.Reason != c.want || m != (Map{}) {
			t.Errorf("%s: Fit = %v, %v, want %v", name, m, err, reasons[c.want])
		}
	}
	var e Error
	if _, err := Fit([]Pair{four[0], four[1], pair(0, -22, 900, 600), four[3]}); !errors.As(err, &e) || len(e.Points) != 3 || e.Points[2] != 2 {
		t.Errorf("three on a line: %v, want the points 0, 1, 2", err)
	}
}

// What is not in the picture, and the map of nothing, say so.
func TestOutsideThePicture(t *testing.T) {
	m := fit(t, four)
	if px, ok := m.ToPx(court.Pt(0, -200)); ok {
		t.Errorf("a point behind the camera is at %v", px)
	}
	if p, ok := m.ToCourt(Px{900, -400}); ok {
		t.Errorf("above the horizon there is %v", p)
	}
	if _, ok := (Map{}).ToPx(court.Pt(1, 1)); ok {
		t.Error("the zero Map maps")
	}
	if _, ok := (Map{}).ToCourt(Px{1, 1}); ok {
		t.Error("the zero Map maps back")
	}
}

// Wherever a camera stands above the court, four points it sees give its own
// picture of the ground, there and back.
func TestFitFindsTheCamera(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := drawCamera(t)
		var pairs []Pair
		corners := []court.Point{{X: -10, Y: -7}, {X: 10, Y: -7}, {X: 10, Y: 7}, {X: -10, Y: 7}, {X: 0, Y: 22}}
		for _, p := range corners[:rapid.IntRange(4, 5).Draw(t, "points")] {
			px, ok := m.ToPx(p)
			if !ok {
				t.Fatalf("the camera does not see %v", p)
			}
			pairs = append(pairs, Pair{p, px})
		}
		got, err := Fit(pairs)
		if err != nil {
			t.Fatalf("Fit(%v): %v", pairs, err)
		}
		p := court.Pt(units.Feet(rapid.Float64Range(-12, 12).Draw(t, "x")), units.Feet(rapid.Float64Range(-20, 25).Draw(t, "y")))
		want, _ := m.ToPx(p)
		px, ok := got.ToPx(p)
		if !ok || math.Hypot(px.X-want.X, px.Y-want.Y) > 1e-5 {
			t.Fatalf("ToPx(%v) = %v, %v, want %v", p, px, ok, want)
		}
		if back, ok := got.ToCourt(px); !ok || back.Distance(p) > 1e-6 {
			t.Fatalf("ToCourt(ToPx(%v)) = %v, %v", p, back, ok)
		}
	})
}

// drawCamera is a level camera behind the near baseline that looks along y.
func drawCamera(t *rapid.T) Map {
	x, y, z := rapid.Float64Range(-15, 15).Draw(t, "eye x"), rapid.Float64Range(-60, -30).Draw(t, "eye y"), rapid.Float64Range(5, 25).Draw(t, "eye high")
	f := rapid.Float64Range(500, 3000).Draw(t, "focal length")
	const cx, cy = 960, 400
	m := Map{{f, cx, -f*x - cx*y}, {0, cy, f*z - cy*y}, {0, 1, -y}}
	return m.scaled(1 / -y)
}
