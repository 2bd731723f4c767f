package compose

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/units"
)

// sizes are those of a phone, a wide and a square picture and a small one.
var sizes = [][2]int{{1080, 1920}, {1280, 720}, {720, 720}, {320, 240}}

// eachLayout walks the layouts of exports and of the window.
func eachLayout(do func(name string, l Layout, turn canvas.Turn)) {
	for _, s := range sizes {
		for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
			name := fmt.Sprintf("%dx%d %v", s[0], s[1], turn)
			do(name+" export", Sight{Turn: turn}.forExport(s[0], s[1], court.Surface, 12), turn)
			do(name+" window", ForWindow(s[0], s[1], turn, court.Surface, 12, 0.75), turn)
			do(name+" bare", Bare(s[0], s[1], turn, court.Surface, 1), turn)
		}
	}
}

func areaBox(a Area) box { return box{a.Min.X, a.Min.Y, a.Max.X, a.Max.Y} }

func courtBox(v canvas.View, r court.Rect) box {
	a, b := v.ToPx(r.Min), v.ToPx(r.Max)
	return box{min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y)}
}

func TestAreasAreInsideAndApart(t *testing.T) {
	eachLayout(func(name string, l Layout, turn canvas.Turn) {
		areas := map[string]box{"court": courtBox(l.Court, court.Surface.Grow(margin))}
		if !l.Title.Empty() {
			areas["title"] = areaBox(l.Title)
		}
		if !l.Caption.Empty() {
			areas["caption"] = areaBox(l.Caption)
		}
		if l.RiseTop > 0 {
			up := l.RiseTop * l.up()
			areas["height strip"] = courtBox(l.Rise, court.RectOf(court.Pt(0, -30), court.Pt(up, 30)))
		}
		for a, one := range areas {
			if !one.within(l.Width, l.Height) {
				t.Errorf("%s: %s %+v is not inside", name, a, one)
			}
			for b, other := range areas {
				if shrunk := (box{other.left + 1e-6, other.top + 1e-6, other.right - 1e-6, other.bottom - 1e-6}); a != b && one.overlaps(shrunk) {
					t.Errorf("%s: %s %+v overlaps %s %+v", name, a, one, b, other)
				}
			}
		}
	})
}

// The court is to scale in every layout: 20 x 44 ft with lines 2 in wide (USA
// Pickleball Official Rulebook 2026, 3.A.1 and 3.A.4.e), turned or not.
func TestCourtIsToScale(t *testing.T) {
	eachLayout(func(name string, l Layout, turn canvas.Turn) {
		scale := l.Court.PxPerFoot
		drawn := extentsOf(pictureOf(t, invented(), 0, turn).StaticIn(l))
		checkSize(t, name, "the court", drawn["court/court"], 20*scale, 44*scale, turn)
		checkSize(t, name, "the near kitchen", drawn["court/kitchen.near"], 20*scale, 7*scale, turn)
		lines := 0
		for id, b := range drawn {
			if !strings.HasPrefix(id, "court/line.") {
				continue
			}
			lines++
			if got, want := min(b.width(), b.height()), 2.0/12*scale; math.Abs(got-want) > 1e-6 {
				t.Errorf("%s: %s is %v px wide, want 2 in = %v px", name, id, got, want)
			}
		}
		// two baselines, two kitchen lines, two sidelines, two centrelines
		if lines < 8 {
			t.Errorf("%s: %d lines, want at least 8", name, lines)
		}
	})
}

func checkSize(t *testing.T, name, what string, b box, across, along float64, turn canvas.Turn) {
	t.Helper()
	if turn == canvas.Lying {
		across, along = along, across
	}
	if math.Abs(b.width()-across) > 1e-6 || math.Abs(b.height()-along) > 1e-6 {
		t.Errorf("%s: %s is %v x %v px, want %v x %v", name, what, b.width(), b.height(), across, along)
	}
}

// The height strip has the court's own scale and its own y: a foot of height is
// as long as a foot of court, and a ball stands level with its place.
func TestHeightStripSharesTheCourtsScale(t *testing.T) {
	eachLayout(func(name string, l Layout, turn canvas.Turn) {
		if l.RiseTop <= 0 {
			return
		}
		for _, y := range []units.Feet{-22, 0, 15} {
			ground, high := l.Rise.ToPx(court.Pt(0, y)), l.Rise.ToPx(court.Pt(l.up()*10, y))
			on := l.Court.ToPx(court.Pt(0, y))
			if got := math.Hypot(high.X-ground.X, high.Y-ground.Y); math.Abs(got-10*l.Court.PxPerFoot) > 1e-6 {
				t.Errorf("%s: 10 ft of height are %v px, want %v", name, got, 10*l.Court.PxPerFoot)
			}
			if level := on.Y == ground.Y && turn == canvas.Upright || on.X == ground.X && turn == canvas.Lying; !level {
				t.Errorf("%s: y = %v ft is at %v on the strip and at %v on the court", name, y, ground, on)
			}
			if turn == canvas.Lying && high.Y >= ground.Y {
				t.Errorf("%s: up is down the page", name)
			}
		}
	})
}

// A venue larger than the court's own surface stays inside too.
func TestLayoutOfALargeVenue(t *testing.T) {
	wide := court.RectOf(court.Pt(-110, -60), court.Pt(110, 60))
	for _, s := range sizes {
		for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
			l := Sight{Turn: turn}.forExport(s[0], s[1], wide, 12)
			if b := courtBox(l.Court, wide); !b.within(s[0], s[1]) || b.width() <= 0 {
				t.Errorf("%dx%d %v: the surface is %+v, want inside", s[0], s[1], turn, b)
			}
		}
	}
}

// In an upright export no word is where players of clips lay their own over it; the
// editor's presenter and wide pictures keep all their room.
func TestWordsOfUprightExportsAreSafe(t *testing.T) {
	for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
		p := pictureOf(t, builtIn(t), 0, turn)
		for _, size := range [][2]int{{1080, 1920}, {720, 1280}, {540, 1170}} {
			safe, seen := areaBox(Safe(size[0], size[1])), 0
			still := extentsOf(p.Static(size[0], size[1]))
			for at := p.Rally.From; at < p.Rally.To; at += 0.5 {
				drawn := extentsOf(p.Moving(size[0], size[1], at))
				for id, b := range still {
					drawn[id] = b
				}
				for id, b := range drawn {
					if panel, part, _ := strings.Cut(id, "/"); panel == "court" || panel == "height" || part == "plate" {
						continue
					}
					seen++
					if b.left < safe.left || b.right > safe.right || b.top < safe.top || b.bottom > safe.bottom {
						t.Errorf("%v, %v, %.1f s: %s is %+v, want it within %+v", turn, size, float64(at), id, b, safe)
					}
				}
			}
			if seen < 20 {
				t.Errorf("%v, %v: only %d words were seen", turn, size, seen)
			}
		}
		if l := p.ForScreen(1080, 1920); l.Title.Min.Y != 0 || l.Caption.Max.Y != 1920 {
			t.Errorf("%v: on a screen the words go from %v to %v, want all of it", turn, l.Title.Min, l.Caption.Max)
		}
	}
}
