package compose

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/lesson"
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

// edged is a play with words at the edges of the surface and more to say than usual.
func edged() lesson.Lesson {
	l := invented()
	p := &l.Plays[0]
	p.Title = strings.Repeat("Slide after the serve and hold the line ", 3)
	for _, at := range []court.Point{court.Pt(-15, -30), court.Pt(15, 30), court.Pt(-15, 30), court.Pt(15, -30), court.Pt(0, 29.5)} {
		p.Marks = append(p.Marks, lesson.Mark{Span: p.Marks[0].Span, Place: at, Text: "from here"})
	}
	p.Marks = append(p.Marks, lesson.Mark{Kind: lesson.ConeMark, Span: p.Marks[0].Span, Place: court.Pt(5, -29.5), Text: "cone"})
	p.Cues[0].Text = strings.Repeat("Watch the left-hander. ", 5)
	return l
}

// No word of an export is nearer to the picture's edges than is safe, in an upright one
// none where players of clips lay their own over it; the editor's presenter keeps all
// its room.
func TestWordsOfExportsAreSafe(t *testing.T) {
	for name, l := range map[string]lesson.Lesson{"built in": builtIn(t), "edged": edged()} {
		for _, sight := range append(allSights(), Sight{Large: true}, Sight{Turn: canvas.Lying, Large: true}) {
			p := pictureOf(t, l, 0, sight.Turn).Seen(sight)
			for _, size := range [][2]int{{720, 1280}, {540, 1170}, {720, 720}, {720, 900}, {1280, 720}, {320, 240}} {
				seen := 0
				for at := p.Rally.From; at < p.Rally.To; at += 0.8 {
					seen += checkSafe(t, fmt.Sprintf("%s, %+v, %.1f s", name, sight, float64(at)), p.Static(size[0], size[1]), p.Moving(size[0], size[1], at))
				}
				if seen < 20 {
					t.Errorf("%s, %+v, %v: only %d words were seen", name, sight, size, seen)
				}
			}
			if l := p.ForScreen(1080, 1920); l.Title.Min.Y != 0 || l.Caption.Max.Y != 1920 || !l.Words.Empty() {
				t.Errorf("%+v: on a screen the words go from %v to %v, in %v, want all of it", sight, l.Title.Min, l.Caption.Max, l.Words)
			}
		}
	}
}

// checkSafe wants the labels of scenes in the safe part and counts them.
func checkSafe(t *testing.T, name string, scenes ...*canvas.Scene) (seen int) {
	t.Helper()
	for _, s := range scenes {
		safe, drawn := areaBox(Safe(s.Width, s.Height)), extentsOf(s)
		for id, shape := range shapesOf(s) {
			b, ok := drawn[id]
			if !ok || shape.Text == nil || shape.Layer != canvas.Labels {
				continue
			}
			seen++
			const px = 1e-6
			if b.left < safe.left-px || b.right > safe.right+px || b.top < safe.top-px || b.bottom > safe.bottom+px {
				t.Errorf("%s, %dx%d: %s is %+v, want it within %+v", name, s.Width, s.Height, id, b, safe)
			}
		}
	}
	return seen
}

// A tag at the edge of the surface is not hidden by title or caption, and hides not what
// it stands under.
func TestTagsAreNotCovered(t *testing.T) {
	p := pictureOf(t, edged(), 0, canvas.Upright)
	for _, size := range [][2]int{{720, 1280}, {720, 720}, {720, 900}} {
		l, seen := p.ForExport(size[0], size[1]), 0
		drawn := extentsOf(p.Moving(size[0], size[1], 0))
		if cone, tag := drawn["court/mark.7"], drawn["court/mark.7.text.plate"]; cone.width() == 0 || tag.overlaps(cone) {
			t.Errorf("%v: the cone's tag is %+v, the cone %+v", size, tag, cone)
		}
		for id, b := range drawn {
			if strings.HasPrefix(id, "court/mark.") && strings.HasSuffix(id, ".text.plate") {
				seen++
				if b.top < l.Title.Max.Y || b.bottom > l.Caption.Min.Y {
					t.Errorf("%v: %s is %+v, want it from %v to %v", size, id, b, l.Title.Max.Y, l.Caption.Min.Y)
				}
			}
		}
		if seen < 8 {
			t.Errorf("%v: only %d tags were seen", size, seen)
		}
	}
}

// What is kept free round the words costs the court little: of its height on a screen,
// whose words go to the edges, it has 95 % in square and 4:5, all in 16:9.
func TestSafeWordsLeaveTheCourtItsSize(t *testing.T) {
	for size, want := range map[[2]int]float64{{1080, 1080}: 0.95, {1080, 1350}: 0.95, {1920, 1080}: 1} {
		p := pictureOf(t, builtIn(t), 0, canvas.Upright)
		if got := p.ForExport(size[0], size[1]).Court.PxPerFoot / p.ForScreen(size[0], size[1]).Court.PxPerFoot; got < want {
			t.Errorf("%v: the court has %.3f of its height on a screen, want %v", size, got, want)
		}
	}
}

// A label goes into the part where words stand with what is under it; what is not seen
// is not pulled in.
func TestKeepWords(t *testing.T) {
	words := Area{canvas.Px{X: 20, Y: 20}, canvas.Px{X: 380, Y: 180}}
	at := func(x, y float64) box {
		g := canvas.Panel{Name: "g", View: paper(canvas.Px{})}
		Picture{}.tag(&g, "tag", canvas.On(court.Pt(units.Feet(x), units.Feet(-y))), tagDown, "here")
		s := &canvas.Scene{Width: 400, Height: 200, PxPerPoint: 1, Panels: []canvas.Panel{g}}
		Layout{Words: words}.keepWords(s)
		drawn := extentsOf(s)
		if text, plate := drawn["g/tag"], drawn["g/tag.plate"]; text.left-plate.left > 4 || plate.right-text.right > 4 || text.top < plate.top || text.bottom > plate.bottom {
			t.Errorf("at %v, %v: the words are %+v on the plate %+v", x, y, text, plate)
		}
		return drawn["g/tag"]
	}
	for _, from := range [][2]float64{{1, 1}, {399, 199}, {1, 199}, {200, 3}} {
		if b := at(from[0], from[1]); b.left < 20-1e-6 || b.top < 20-1e-6 || b.right > 380+1e-6 || b.bottom > 180+1e-6 {
			t.Errorf("a tag at %v is drawn at %+v, want it within %v", from, b, words)
		}
	}
	if b := at(200, 100); b.left+b.right != 400 || b.top < 100 {
		t.Errorf("a tag in the middle is drawn at %+v, want it below the middle", b)
	}
	if b := at(-30, 100); b.right >= 20 {
		t.Errorf("a tag outside the picture is drawn at %+v, want it outside", b)
	}
}
