package canvas

import (
	"image/color"
	"math"
	"testing"

	"homeside/model/court"
)

// drawing keeps what is drawn.
type drawing struct {
	paths [][]PxStep
	style []PxStyle
	texts []PxText
}

func (d *drawing) Path(_ Info, path []PxStep, s PxStyle) {
	d.paths, d.style = append(d.paths, append([]PxStep{}, path...)), append(d.style, s)
}
func (d *drawing) Text(_ Info, t PxText) { d.texts = append(d.texts, t) }

func (d *drawing) Image(Info, PxImage) {}

// drawnBy draws shapes at 10 px a foot about 50, 50, or through a view.
func drawnBy(v View, c Clip, shapes ...Shape) *drawing {
	s := scene(shapes...)
	s.Panels[0].View, s.Panels[0].Clip = v, c
	var d drawing
	Draw(&d, s)
	return &d
}

var (
	black = color.NRGBA{A: 255}
	tenPx = View{Origin: Px{50, 50}, PxPerFoot: 10}
	left  = Clip{Min: Px{0, 0}, Max: Px{50, 100}} // left of x = 0
)

// ends are the first and the last place of an open path, and whether it is closed.
func ends(path []PxStep) (from, to Px, closed bool) {
	last := path[len(path)-1]
	if last.Op == Close {
		last, closed = path[len(path)-2], true
	}
	return path[0].P[0], last.P[0], closed
}

// A fill is closed along the clip's edge, a stroke is not.
func TestClipCutsFillAndStroke(t *testing.T) {
	box := Box(court.RectOf(court.Pt(-2, -2), court.Pt(2, 2)))
	d := drawnBy(tenPx, left, Shape{ID: "box", Path: box, Style: Style{Fill: black, Stroke: black, Width: Pts(1)}})
	if len(d.paths) != 2 {
		t.Fatalf("drawn in %d paths, want a fill and a stroke", len(d.paths))
	}
	if area(d.paths[0]) != 20*40 || d.style[0].Stroke.A != 0 {
		t.Errorf("the fill is %v px² with %+v, want 800 without a stroke", area(d.paths[0]), d.style[0])
	}
	from, to, closed := ends(d.paths[1])
	if d.style[1].Fill.A != 0 || closed || from.X != 50 && to.X != 50 {
		t.Errorf("the stroke goes from %v to %v, closed %v, want open ends on x = 50", from, to, closed)
	}
}

// area is that of a closed path of straight lines, by the shoelace formula.
func area(path []PxStep) float64 {
	sum := 0.0
	for i, s := range path {
		next := path[(i+1)%len(path)]
		if next.Op == Close {
			next = path[0]
		}
		if s.Op != Close {
			sum += s.P[0].X*next.P[0].Y - next.P[0].X*s.P[0].Y
		}
	}
	return math.Abs(sum) / 2
}

// What is inside is drawn as it is without a clip, curves and all; what is
// outside is not drawn.
func TestClipHoldsOrDrops(t *testing.T) {
	at := func(x float64) Pos { return On(court.Pt(0, 0)).Shift(Points(x/2), 0) } // 2 px a point
	style := Style{Fill: black}
	inside := drawnBy(tenPx, left, Shape{Path: Circle(at(-20), Ft(1)), Style: style})
	free := drawnBy(tenPx, Clip{}, Shape{Path: Circle(at(-20), Ft(1)), Style: style})
	if len(inside.paths) != 1 || len(inside.paths[0]) != len(free.paths[0]) || inside.paths[0][1].Op != Curve {
		t.Errorf("a circle inside is drawn as %v, want %v", inside.paths, free.paths)
	}
	if out := drawnBy(tenPx, left, Shape{Path: Circle(at(30), Ft(1)), Style: style}); len(out.paths) != 0 {
		t.Errorf("a circle outside is drawn as %v", out.paths)
	}
	half := drawnBy(tenPx, left, Shape{Path: Circle(at(0), Ft(1)), Style: style})
	if got, want := area(half.paths[0]), math.Pi*100/2; math.Abs(got/want-1) > 0.01 {
		t.Errorf("half a circle has %v px², want %v", got, want)
	}
	words := drawnBy(tenPx, left, Shape{Text: &Text{At: at(-1), Text: "in", Size: 5}}, Shape{Text: &Text{At: at(1), Text: "out", Size: 5}})
	if len(words.texts) != 1 || words.texts[0].Text != "in" {
		t.Errorf("texts %+v, want the one inside", words.texts)
	}
}

// Several pieces of one line, and a line that leaves and comes back.
func TestClipLeavesPieces(t *testing.T) {
	path := Polyline(court.Pt(-3, 3), court.Pt(3, 3), court.Pt(3, 0), court.Pt(-3, 0))
	d := drawnBy(tenPx, left, Shape{Path: path, Style: Style{Stroke: black, Width: Pts(1)}})
	moves := 0
	for _, s := range d.paths[0] {
		if s.Op == Move {
			moves++
		}
	}
	if len(d.paths) != 1 || moves != 2 {
		t.Errorf("drawn as %v, want one path of two pieces", d.paths)
	}
}

// A floor on which the camera stands fills the picture's foot, and a line that
// passes below the camera ends at the foot instead of flying off through the sky.
func TestFloorUnderTheCamera(t *testing.T) {
	v := filmed(t, Vec{0, -20, 8}, Vec{0, 0, 8}, 500, Px{200, 100})
	d := drawnBy(v, Clip{Max: Px{400, 400}},
		Shape{Path: Box(court.Surface), Style: Style{Fill: black}},
		Shape{Path: Polyline(court.Pt(0, 25), court.Pt(0, -30)), Style: Style{Stroke: black, Width: Pts(1)}},
	)
	if len(d.paths) != 2 {
		t.Fatalf("drawn in %d paths, want 2", len(d.paths))
	}
	from, to, _ := ends(d.paths[1])
	if want := 100 + 500*8.0/45; !near(from.Y, want, 1e-6) || !near(to.Y, 400, 1e-6) || !near(to.X, 200, 1e-6) {
		t.Errorf("the line goes from %v to %v, want from y = %v down to 200, 400", from, to, want)
	}
	// 15 ft to each side of the eye are 200 px at 37.5 ft, 500 * 8 / 37.5 px below
	// the horizon; from there down the floor is as wide as the picture. Above it
	// narrows to 150 px at its end, 50 ft away and 80 px below the horizon.
	full := 500 * 8 / 37.5
	if got, want := area(d.paths[0]), 400*(300-full)+(full-80)*(400+300)/2; !near(got, want, 1e-6) {
		t.Errorf("the floor has %v px², want %v", got, want)
	}
}

// A circle that faces a camera has its radius to scale; one twice as far is half
// as large, and so are strokes and letters to scale.
func TestSizesToScaleShrinkWithDistance(t *testing.T) {
	v := filmed(t, Vec{0, -20, 0}, Vec{0, 0, 0}, 500, Px{200, 100})
	c, _ := LookAt(Vec{0, -20, 0}, Vec{})
	at := func(y court.Point) Shape {
		return Shape{Path: Path{}.Move(At(c.Facing(Above(y, 0), -1, 0))).Line(At(c.Facing(Above(y, 0), 1, 0))), Style: Style{Stroke: black, Width: Ft(0.5)}}
	}
	word := func(y court.Point) Shape { return Shape{Text: &Text{At: On(y), Text: "a", SizeFt: 1}} }
	near, far := court.Pt(0, -10), court.Pt(0, 0)
	d := drawnBy(v, Clip{}, at(near), at(far), word(near), word(far))
	for i, want := range []float64{50, 25} {
		from, to, _ := ends(d.paths[i])
		if got := to.X - from.X; math.Abs(got-2*want) > 1e-9 {
			t.Errorf("2 ft are %v px, want %v", got, 2*want)
		}
		if got := d.style[i].Width; math.Abs(got-want/2) > 1e-9 {
			t.Errorf("a stroke of 6 in is %v px wide, want %v", got, want/2)
		}
		if got := d.texts[i].Size; math.Abs(got-want) > 1e-9 {
			t.Errorf("letters of 1 ft are %v px, want %v", got, want)
		}
	}
}
