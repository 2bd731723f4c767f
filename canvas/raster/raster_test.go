package raster

import (
	"image"
	"image/color"
	"math"
	"testing"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/units"
)

var (
	white = color.NRGBA{255, 255, 255, 255}
	black = color.NRGBA{0, 0, 0, 255}
	blue  = look.Blue
)

// scene is 120 x 100 px with the origin in the middle, 10 px/ft and 2 px/pt.
func scene(shapes ...canvas.Shape) *canvas.Scene {
	return &canvas.Scene{Width: 120, Height: 100, PxPerPoint: 2, Background: white, Panels: []canvas.Panel{
		{Name: "court", View: canvas.View{Origin: canvas.Px{X: 60, Y: 50}, PxPerFoot: 10}, Shapes: shapes},
	}}
}

func at(img *image.RGBA, x, y int) color.NRGBA {
	return color.NRGBAModel.Convert(img.At(x, y)).(color.NRGBA)
}

type pixel struct {
	x, y int
	want color.NRGBA
}

func checkPixels(t *testing.T, name string, img *image.RGBA, pixels []pixel) {
	t.Helper()
	for _, p := range pixels {
		if got := at(img, p.x, p.y); got != p.want {
			t.Errorf("%s: pixel %d, %d is %v, want %v", name, p.x, p.y, got, p.want)
		}
	}
}

// Every pixel up to the edge that scale says has the shape's colour, and the
// next one has not.
func TestShapesStandToScale(t *testing.T) {
	box := canvas.Box(court.RectOf(court.Pt(-1, -2), court.Pt(3, 1))) // 50..90 by 40..70 px
	for _, c := range []struct {
		name   string
		shape  canvas.Shape
		pixels []pixel
	}{
		{"filled box", canvas.Shape{Path: box, Style: canvas.Style{Fill: blue}},
			[]pixel{{50, 40, blue}, {89, 69, blue}, {49, 50, white}, {90, 50, white}, {60, 39, white}, {60, 70, white}}},
		{"line of true width", canvas.Shape{Path: canvas.Polyline(court.Pt(-2, 0), court.Pt(2, 0)), Style: canvas.Style{Stroke: black, Width: canvas.Ft(1)}},
			[]pixel{{40, 45, black}, {79, 54, black}, {39, 50, white}, {80, 50, white}, {60, 44, white}, {60, 55, white}}},
		{"line in points, round", canvas.Shape{Path: canvas.Polyline(court.Pt(-2, 0), court.Pt(2, 0)), Style: canvas.Style{Stroke: black, Width: canvas.Pts(5), Round: true}},
			[]pixel{{37, 50, black}, {82, 49, black}, {33, 50, white}, {60, 44, white}, {60, 45, black}}},
		{"circle", canvas.Shape{Path: canvas.Circle(canvas.On(court.Pt(0, 0)), canvas.Ft(3)), Style: canvas.Style{Fill: blue}},
			[]pixel{{60, 50, blue}, {31, 50, blue}, {60, 21, blue}, {80, 70, blue}, {28, 50, white}, {82, 72, white}}},
		{"fill and stroke", canvas.Shape{Path: box, Style: canvas.Style{Fill: blue, Stroke: black, Width: canvas.Pts(2)}},
			[]pixel{{53, 50, blue}, {51, 50, black}, {49, 50, black}, {47, 50, white}}},
		{"dashes of 5 and 10 px", canvas.Shape{Path: canvas.Polyline(court.Pt(-4, 0), court.Pt(4, 0)), Style: canvas.Style{Stroke: black, Width: canvas.Pts(3), Dash: []canvas.Points{2.5, 5}}},
			[]pixel{{20, 50, black}, {24, 50, black}, {25, 50, white}, {34, 50, white}, {35, 50, black}, {39, 50, black}, {40, 50, white}}},
		{"nothing for alpha 0", canvas.Shape{Path: box, Style: canvas.Style{Fill: color.NRGBA{R: 255}, Stroke: color.NRGBA{G: 255}, Width: canvas.Pts(2)}},
			[]pixel{{60, 50, white}, {50, 50, white}}},
		{"no width", canvas.Shape{Path: box, Style: canvas.Style{Stroke: black}},
			[]pixel{{50, 50, white}}},
		{"half a black", canvas.Shape{Path: box, Style: canvas.Style{Fill: color.NRGBA{0, 0, 0, 0x80}}},
			[]pixel{{60, 50, color.NRGBA{127, 127, 127, 255}}}},
	} {
		checkPixels(t, c.name, Scene(scene(c.shape)), c.pixels)
	}
}

// A closed outline has all its corners, of which gg bevels the tips, and no
// seam; with dashes it begins at its first corner.
func TestClosedOutlines(t *testing.T) {
	box := canvas.Box(court.RectOf(court.Pt(-3, -3), court.Pt(3, 3))) // 30..90 by 20..80 px
	img := Scene(scene(canvas.Shape{Path: box, Style: canvas.Style{Stroke: black, Width: canvas.Pts(6)}}))
	checkPixels(t, "corners", img, []pixel{
		{27, 18, black}, {92, 18, black}, {92, 81, black}, {27, 81, black},
		{25, 15, white}, {94, 15, white}, {94, 84, white}, {25, 84, white},
	})
	for x := 37; x < 83; x++ {
		checkPixels(t, "bottom", img, []pixel{{x, 73, white}, {x, 74, black}, {x, 85, black}, {x, 86, white}})
	}
	dashed := Scene(scene(canvas.Shape{Path: box, Style: canvas.Style{Stroke: black, Width: canvas.Pts(3), Dash: []canvas.Points{5, 5}}}))
	checkPixels(t, "dashed", dashed, []pixel{{34, 80, black}, {39, 80, black}, {41, 80, white}, {49, 80, white}, {51, 80, black}})
}

// Two outlines in one path stay two, open or closed.
func TestOutlinesInOnePath(t *testing.T) {
	bar := func(y units.Feet) canvas.Path { return canvas.Box(court.RectOf(court.Pt(-2, y), court.Pt(2, y+1))) }
	path := append(bar(1), bar(-2)...)
	path = append(path, canvas.Polyline(court.Pt(-4, -4), court.Pt(4, -4))...)
	img := Scene(scene(canvas.Shape{Path: path, Style: canvas.Style{Fill: blue, Stroke: black, Width: canvas.Pts(1)}}))
	checkPixels(t, "bars", img, []pixel{{60, 35, blue}, {60, 65, blue}, {60, 50, white}, {60, 39, black}, {60, 90, black}, {25, 89, black}, {60, 80, white}})
}

// A shape without a place does not blank the others.
func TestBadShapesAreSkipped(t *testing.T) {
	good := canvas.Shape{Path: canvas.Box(court.RectOf(court.Pt(-1, -1), court.Pt(1, 1))), Style: canvas.Style{Fill: blue}}
	want := Scene(scene(good))
	nan := units.Feet(math.NaN())
	for name, bad := range map[string]canvas.Shape{
		"NaN place":   {Path: canvas.Polyline(court.Pt(0, 0), court.Pt(nan, 3)), Style: canvas.Style{Fill: black, Stroke: black, Width: canvas.Pts(2)}},
		"NaN radius":  {Path: canvas.Circle(canvas.Pos{}, canvas.Ft(nan)), Style: canvas.Style{Fill: black}},
		"NaN text":    {Text: &canvas.Text{At: canvas.Pos{X: nan}, Text: "x", Size: 9, Colour: black}},
		"NaN width":   {Path: canvas.Box(court.Bounds), Style: canvas.Style{Stroke: black, Width: canvas.Ft(nan)}},
		"huge":        {Path: canvas.Polyline(court.Pt(0, 0), court.Pt(1e9, 3)), Style: canvas.Style{Stroke: black, Width: canvas.Pts(2), Dash: []canvas.Points{1, 1}}},
		"empty":       {},
		"zero dashes": {Path: canvas.Polyline(court.Pt(20, 20), court.Pt(30, 20)), Style: canvas.Style{Stroke: black, Width: canvas.Pts(1), Dash: []canvas.Points{0, 0}}},
	} {
		for _, s := range []*canvas.Scene{scene(bad, good), scene(good, bad)} {
			if got := Scene(s); !same(got, want) {
				t.Errorf("with %s the picture is not that of the good shape", name)
			}
		}
	}
}

func same(a, b *image.RGBA) bool { return a.Rect == b.Rect && string(a.Pix) == string(b.Pix) }

func text(words string, a canvas.Align) canvas.Shape {
	return canvas.Shape{Text: &canvas.Text{Text: words, Size: 10, Align: a, Colour: black}}
}

// inked is the box round what is not white.
func inked(img *image.RGBA) image.Rectangle {
	var r image.Rectangle
	for y := range img.Rect.Dy() {
		for x := range img.Rect.Dx() {
			if at(img, x, y) != white {
				r = r.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return r
}

// A text stands on its baseline, about its anchor as it is aligned, as wide as
// look says, and upright in both views.
func TestText(t *testing.T) {
	for _, turn := range []canvas.Turn{canvas.Upright, canvas.Lying} {
		for a, left := range map[canvas.Align]float64{canvas.Start: 0, canvas.Centre: 0.5, canvas.Finish: 1} {
			s := scene(text("HH", a))
			s.Panels[0].View.Turn = turn
			width := look.Width("HH", false) * 20
			got, want := inked(Scene(s)), 60-left*width
			if got.Max.Y != 50 || got.Dy() < 13 || got.Dy() > 16 { // the height of capitals is 0.714 em
				t.Errorf("%v, align %d: ink %v, want it from about 36 to the baseline at 50", turn, a, got)
			}
			if l, r := float64(got.Min.X)-want, want+width-float64(got.Max.X); l < 0 || l > 3 || r < 0 || r > 3 {
				t.Errorf("%v, align %d: ink %v, want it in %.1f to %.1f", turn, a, got, want, want+width)
			}
		}
	}
}

func TestBoldIsBlacker(t *testing.T) {
	ink := func(bold bool) (sum int) {
		s := text("serve", canvas.Centre)
		s.Text.Bold = bold
		img := Scene(scene(s))
		for i := 0; i < len(img.Pix); i += 4 {
			sum += 255 - int(img.Pix[i])
		}
		return sum
	}
	if regular, bold := ink(false), ink(true); regular == 0 || bold <= regular {
		t.Errorf("ink %d regular and %d bold", regular, bold)
	}
}

// Letters move by fractions of a pixel, so that they do not jitter.
func TestTextMovesByFractions(t *testing.T) {
	a, b := text("H", canvas.Start), text("H", canvas.Start)
	b.Text.At.Right, b.Text.At.Down = 0.2, 0.2
	if same(Scene(scene(a)), Scene(scene(b))) {
		t.Error("moved by 0.4 px, a letter looks the same")
	}
}

func TestBackground(t *testing.T) {
	s := scene()
	s.Background = color.NRGBA{}
	if got := at(Scene(s), 3, 3); got.A != 0 {
		t.Errorf("no background gives %v, want transparent", got)
	}
	s.Background = blue
	img := Scene(s)
	checkPixels(t, "background", img, []pixel{{0, 0, blue}, {119, 99, blue}})
	if got, want := img.Rect, image.Rect(0, 0, 120, 100); got != want {
		t.Errorf("bounds %v, want %v", got, want)
	}
}
