package compose

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"homeside/assets"
	"homeside/canvas"
	"homeside/canvas/record"
	"homeside/model/court"
	"homeside/model/cover"
	"homeside/model/flight"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/rally"
)

// coverMap is the cover of a pair set behind its kitchen line against a shot from
// the far baseline.
func coverMap(t testing.TB, shot cover.Shot) cover.Map {
	t.Helper()
	s := cover.Strike{From: court.Pt(3, 23), Height: 0.8, Model: flight.Default(), Shot: shot}
	s.Players = [2]cover.Player{
		{Place: court.Pt(-5, -8), Pace: movement.DefaultPace()},
		{Place: court.Pt(5, -8), Pace: movement.DefaultPace(), Hand: lesson.LeftHanded},
	}
	m, err := cover.Of(s)
	if err != nil {
		t.Fatalf("cover.Of(%+v): %v", s, err)
	}
	return m
}

// coverScene is a bare court, ten pixels a foot, the net's middle at (150, 300).
func coverScene(turn canvas.Turn) *canvas.Scene {
	return &canvas.Scene{Width: 300, Height: 600, PxPerPoint: 1, Panels: []canvas.Panel{
		{Name: CourtPanel, View: canvas.View{Origin: canvas.Px{X: 150, Y: 300}, PxPerFoot: 10, Turn: turn}},
		{Name: "title"},
	}}
}

// covered is the scene with a map's cover.
func covered(m cover.Map) *canvas.Scene {
	s := coverScene(canvas.Upright)
	Picture{}.Cover(s, m)
	return s
}

// recordedAs is what is drawn under an ID, without panel and ID.
func recordedAs(s *canvas.Scene, id string) string {
	for line := range strings.Lines(record.Scene(s)) {
		if rest, ok := strings.CutPrefix(line, CourtPanel+" "+id+" "); ok {
			return strings.TrimSpace(rest)
		}
	}
	return ""
}

// The ball is struck at (3, 23) ft, the disc is 2 ft 3 in from the baseline and 1.80 ft
// from the nearest covered centre, the words stand 6 ft 6 in behind the baseline; at ten
// pixels a foot from (150, 300).
func TestCoverRecorded(t *testing.T) {
	s := covered(coverMap(t, cover.Shot{Drive: 15}))
	for id, want := range map[string]string{
		"cover.contact": "stroke #16232a 1.4 M 175.0,65.0 L 185.0,75.0 M 175.0,75.0 L 185.0,65.0",
		"cover.disc": "stroke #16232a 1.4 dash 6.0 dash 4.0 M 170.5,497.5 C 170.5,487.5 162.5,479.5 152.5,479.5" +
			" C 142.5,479.5 134.5,487.5 134.5,497.5 C 134.5,507.5 142.5,515.5 152.5,515.5 C 162.5,515.5 170.5,507.5 170.5,497.5 Z",
		"cover.disc.text":        `text 152.5,500.7 size 9.0 "open 3 ft 7 in" #16232a`,
		"cover.text.0":           `text 150.0,579.7 size 9.0 "80 % in time, 39 % forehand" #16232a`,
		"cover.text.1":           `text 150.0,595.7 size 9.0 "the middle near1's" #16232a`,
		"cover.margin.-200.text": `text 152.5,316.1 size 9.0 "-0.2 s" #16232a`,
	} {
		if got := recordedAs(s, id); got != want {
			t.Errorf("%s is drawn as\n%s\nwant\n%s", id, got, want)
		}
	}
	for id, want := range map[string]string{ // the patterns that tell them apart without colour
		"cover.open":        "stroke #566166 0.9 M 50.0,300.0 L 65.0,315.0 M 60.0,300.0 ",
		"cover.margin.-200": "stroke #566166 1.0 dash 4.0 dash 3.0 M ",
		"cover.margin.0":    "stroke #16232a 2.6 M ",
		"cover.margin.200":  "stroke #566166 1.0 M ",
	} {
		if got := recordedAs(s, id); !strings.HasPrefix(got, want) {
			t.Errorf("%s is drawn as\n%s\nwant it to begin\n%s", id, got, want)
		}
	}
}

// The words are within however small a picture.
func TestCoverWordsAreInside(t *testing.T) {
	s := coverScene(canvas.Upright)
	s.Width, s.Height, s.Panels[0].View = 200, 110, canvas.View{Origin: canvas.Px{X: 100, Y: 55}, PxPerFoot: 2}
	Picture{}.Cover(s, coverMap(t, cover.Shot{Drive: 15}))
	boxes := extentsOf(s)
	for _, id := range []string{"court/cover.text.0.plate", "court/cover.text.1.plate"} {
		if b, ok := boxes[id]; !ok || !b.within(200, 110) {
			t.Errorf("%s is %+v (drawn %v), want it within the picture", id, b, ok)
		}
	}
}

// Every shape has the ID that its level or its kind gives it, always in this order.
func TestCoverShapes(t *testing.T) {
	for _, c := range []struct {
		shot cover.Shot
		want []string
	}{
		{cover.Shot{Drive: 15}, []string{
			"cover.open", "cover.disc", "cover.disc.text", "cover.margin.-200", "cover.margin.-200.text", "cover.margin.0", "cover.margin.0.text",
			"cover.margin.200", "cover.margin.200.text", "cover.margin.400", "cover.margin.400.text", "cover.margin.600", "cover.margin.600.text",
			"cover.contact", "cover.text.0", "cover.text.1",
		}},
		{cover.Shot{Lob: 30}, []string{ // nothing is open
			"cover.margin.1400", "cover.margin.1400.text", "cover.margin.1600", "cover.margin.1600.text", "cover.margin.1800", "cover.margin.1800.text",
			"cover.margin.2000", "cover.margin.2000.text", "cover.margin.2200", "cover.margin.2200.text", "cover.margin.2400", "cover.margin.2400.text",
			"cover.contact", "cover.text.0", "cover.text.1",
		}},
	} {
		s := covered(coverMap(t, c.shot))
		if got := shapeIDs(s); !slices.Equal(got, c.want) {
			t.Errorf("%v: shapes %q, want %q", c.shot, got, c.want)
		}
		if n := len(s.Panels[1].Shapes); n != 0 {
			t.Errorf("%v: %d shapes beside the court", c.shot, n)
		}
	}
}

// shapeIDs are the IDs on the court; plates belong to their text.
func shapeIDs(s *canvas.Scene) []string {
	var out []string
	for _, shape := range s.Panels[0].Shapes {
		if !strings.HasSuffix(shape.ID, ".plate") {
			out = append(out, shape.ID)
		}
	}
	return out
}

func TestCoverOfNothing(t *testing.T) {
	s := coverScene(canvas.Upright)
	Picture{}.Cover(s, cover.Map{})
	Picture{}.CoverDifference(s, cover.Difference{})
	if got := record.Scene(s); got != "" {
		t.Errorf("the zero Map draws %q", got)
	}
}

// Strokes run over every open cell of every second diagonal and over no other: in
// each direction of a crosswise hatch.
func TestHatchStrokesTheOpenCells(t *testing.T) {
	m := coverMap(t, cover.Shot{Drive: 20})
	open := func(i int) bool { return !m.Covered(i) }
	for _, l := range []lean{rising, falling} {
		cells := 0
		for i := range m.Len() {
			if open(i) && l.drawn(i) {
				cells++
			}
		}
		path := l.diagonals(nil, m.Team(), open)
		length := 0.0
		for i := 0; i < len(path); i += 2 {
			a, b := path[i].P[0], path[i+1].P[0]
			length += math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y))
			if d := strokeHits(m, a, b); d != "" {
				t.Fatalf("lean %d: the stroke from (%v, %v) to (%v, %v) %s", l, a.X, a.Y, b.X, b.Y, d)
			}
		}
		if want := float64(cells) * math.Sqrt2 / 2; cells == 0 || math.Abs(length-want) > 1e-9 {
			t.Errorf("lean %d: strokes are %v ft long, want %v for %d cells", l, length, want, cells)
		}
	}
}

// strokeHits says what is wrong with a stroke: a covered cell's centre on it.
func strokeHits(m cover.Map, a, b canvas.Pos) string {
	from, to := court.Pt(a.X, a.Y), court.Pt(b.X, b.Y)
	for i := range m.Len() {
		c := m.Centre(i)
		if m.Covered(i) && from.Distance(c)+c.Distance(to) < from.Distance(to)+1e-9 {
			return "crosses a covered cell"
		}
	}
	return ""
}

// Tags on the court hide neither one another nor a player, upright and lying.
func TestCoverTagsKeepApart(t *testing.T) {
	for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
		for _, shot := range cover.Shots {
			s := coverScene(turn)
			Picture{Sight: Sight{Turn: turn}}.Cover(s, coverMap(t, shot))
			plates := platesOf(s)
			if len(plates) < 2 {
				t.Errorf("%v, %v: %d tags, want at least 2", turn, shot, len(plates))
			}
			for i, a := range plates {
				for _, b := range plates[:i] {
					if apart(a, b) < -1e-6 { // px, for rounding
						t.Errorf("%v, %v: the tags %v and %v overlap", turn, shot, a, b)
					}
				}
			}
		}
	}
}

// No tag of the cover touches a player who stands where the ball is struck, notch and
// paddle included, in any built-in lesson, however small the picture.
func TestCoverTagsTouchNobody(t *testing.T) {
	for _, name := range assets.LessonNames {
		l := builtInAt(t, name)
		for i := range l.Plays {
			r, err := rally.Solve(l, i)
			if err != nil {
				t.Fatal(err)
			}
			for _, team := range court.Ends {
				for _, e := range cover.Strikes(r, team) {
					for _, shot := range cover.Shots {
						touchNobody(t, fmt.Sprintf("%s, play %d, %v, %v", name, i+1, e, shot), r, e, team, shot)
					}
				}
			}
		}
	}
}

func touchNobody(t *testing.T, name string, r *rally.Rally, e lesson.Event, team court.End, shot cover.Shot) {
	t.Helper()
	strike, err := cover.StrikeAt(r, e, team, shot)
	if err != nil {
		t.Fatal(err)
	}
	m, err := cover.Of(strike)
	if err != nil {
		t.Fatal(err)
	}
	for _, width := range []int{300, 720} {
		p := Of(r, court.Surface, canvas.Upright)
		p.Show.Cover = m
		s := p.Static(width, width*3/2)
		for id, tag := range extentsOf(s) {
			if !strings.HasPrefix(id, CourtPanel+"/cover.margin") && !strings.HasPrefix(id, CourtPanel+"/cover.disc") || !strings.HasSuffix(id, ".plate") {
				continue
			}
			for shape, part := range extentsOf(p.Moving(width, width*3/2, r.Strokes[e.Shot].At)) {
				if strings.HasPrefix(shape, CourtPanel+"/player.") && tag.overlaps(part) {
					t.Errorf("%s, %d wide: %s at %+v touches %s at %+v", name, width, id, tag, shape, part)
				}
			}
		}
	}
}

// plates is a Surface that keeps the tags' plates, in pixels.
type plates []court.Rect

// Path implements canvas.Surface.
func (p *plates) Path(info canvas.Info, path []canvas.PxStep, _ canvas.PxStyle) {
	if strings.HasSuffix(info.ID, ".plate") {
		a, b := path[0].P[0], path[2].P[0]
		*p = append(*p, court.RectOf(court.Pt(feet(a.X), feet(a.Y)), court.Pt(feet(b.X), feet(b.Y))))
	}
}

// Text implements canvas.Surface.
func (p *plates) Text(canvas.Info, canvas.PxText) {}

// Image implements canvas.Surface.
func (p *plates) Image(canvas.Info, canvas.PxImage) {}

func platesOf(s *canvas.Scene) plates {
	var p plates
	canvas.Draw(&p, s)
	return p
}

func TestCoverDifference(t *testing.T) {
	slow, fast := coverMap(t, cover.Shot{Drive: 12}), coverMap(t, cover.Shot{Drive: 18})
	for _, c := range []struct {
		d    cover.Difference
		want []string
	}{
		{cover.Difference{Before: slow, After: fast}, []string{"cover.lost", "cover.lost.text", "cover.text.0"}},
		{cover.Difference{Before: fast, After: slow}, []string{"cover.gained", "cover.gained.text", "cover.text.0"}},
		{cover.Difference{Before: slow, After: slow}, []string{"cover.text.0"}},
	} {
		s := coverScene(canvas.Upright)
		Picture{}.CoverDifference(s, c.d)
		if got := shapeIDs(s); !slices.Equal(got, c.want) {
			t.Errorf("from %v to %v: shapes %q, want %q", c.d.Before.Share(), c.d.After.Share(), got, c.want)
		}
	}
}

func TestMidst(t *testing.T) {
	at, ok := midst(court.Near, func(i int) bool { return i < 3 })
	if want := cover.Centre(court.Near, 1); !ok || at != want {
		t.Errorf("midst of cells 0 to 2 = %v, %v, want %v", at, ok, want)
	}
	if at, ok := midst(court.Far, func(int) bool { return false }); ok {
		t.Errorf("midst of no cells = %v", at)
	}
}

func BenchmarkCover(b *testing.B) {
	m := coverMap(b, cover.Shot{Drive: 15})
	for b.Loop() {
		covered(m)
	}
}
