package canvas

import (
	"image/color"
	"math"
	"slices"
	"testing"

	"homeside/model/court"
	"homeside/model/units"
)

// listing notes what is drawn.
type listing struct {
	ids    []string
	styles []PxStyle
}

func (l *listing) Path(info Info, _ []PxStep, s PxStyle) {
	s.Dash = slices.Clone(s.Dash)
	l.ids, l.styles = append(l.ids, info.ID), append(l.styles, s)
}
func (l *listing) Text(info Info, _ PxText) { l.ids = append(l.ids, info.ID) }

func (l *listing) Image(info Info, _ PxImage) { l.ids = append(l.ids, info.ID) }

func scene(shapes ...Shape) *Scene {
	return &Scene{Width: 100, Height: 100, PxPerPoint: 2, Panels: []Panel{{Name: "court", View: View{PxPerFoot: 1}, Shapes: shapes}}}
}

var square = Box(court.RectOf(court.Pt(0, 0), court.Pt(1, 1)))

// Layers stand above the order of a panel's list, and panels above layers.
func TestDrawOrder(t *testing.T) {
	s := scene(
		Shape{ID: "label", Layer: Labels, Path: square},
		Shape{ID: "player", Layer: Players, Path: square},
		Shape{ID: "ground 1", Path: square},
		Shape{ID: "ground 2", Path: square},
	)
	s.Panels = append(s.Panels, Panel{View: View{PxPerFoot: 1}, Shapes: []Shape{{ID: "second panel", Path: square}}})
	var got listing
	Draw(&got, s)
	if want := []string{"ground 1", "ground 2", "player", "label", "second panel"}; !slices.Equal(got.ids, want) {
		t.Errorf("drawn %v, want %v", got.ids, want)
	}
}

func TestEveryLayerIsDrawn(t *testing.T) {
	for layer := range layerCount {
		var got listing
		Draw(&got, scene(Shape{ID: "x", Layer: layer, Path: square}))
		if len(got.ids) != 1 {
			t.Errorf("layer %d: drawn %v, want x", layer, got.ids)
		}
	}
}

// What has no place is left out, and the rest is drawn.
func TestDrawSkipsWhatHasNoPlace(t *testing.T) {
	nan, inf := units.Feet(math.NaN()), units.Feet(math.Inf(1))
	text := func(at Pos, size Points, words string) *Text { return &Text{At: at, Size: size, Text: words} }
	bad := []Shape{
		{ID: "empty path"},
		{ID: "NaN", Path: Polyline(court.Pt(0, 0), court.Pt(nan, 1))},
		{ID: "infinite", Path: Polyline(court.Pt(0, 0), court.Pt(1, inf))},
		{ID: "both infinities", Path: Polyline(court.Pt(inf, 0), court.Pt(-inf, 0))},
		{ID: "NaN handle", Path: Path{}.Move(Pos{}).Curve(Pos{U: Points(nan)}, Pos{}, Pos{})},
		{ID: "too far", Path: Polyline(court.Pt(0, 0), court.Pt(2e6, 0))},
		{ID: "no words", Text: text(Pos{}, 10, "")},
		{ID: "no size", Text: text(Pos{}, 0, "a")},
		{ID: "NaN size", Text: text(Pos{}, Points(nan), "a")},
		{ID: "infinite size", Text: text(Pos{}, Points(inf), "a")},
		{ID: "text nowhere", Text: text(Pos{Y: nan}, 10, "a")},
	}
	good := Shape{ID: "good", Path: square}
	for _, s := range bad {
		var got listing
		Draw(&got, scene(good, s, good))
		if want := []string{"good", "good"}; !slices.Equal(got.ids, want) {
			t.Errorf("with %q: drawn %v, want %v", s.ID, got.ids, want)
		}
	}
}

func TestStyleInPixels(t *testing.T) {
	ink := color.NRGBA{1, 2, 3, 255}
	for _, c := range []struct {
		style Style
		want  PxStyle
	}{
		{Style{Fill: ink}, PxStyle{Fill: ink}},
		{Style{Stroke: ink, Width: Length{Feet: 3, Points: 4}, Round: true}, PxStyle{Stroke: ink, Width: 11, Round: true}},
		{Style{Stroke: ink, Dash: []Points{1, 2}}, PxStyle{Stroke: ink, Dash: []float64{2, 4}}},
		{Style{Stroke: ink, Dash: []Points{0, 0}}, PxStyle{Stroke: ink}}, // would never end
		{Style{Stroke: ink, Dash: []Points{Points(math.NaN()), 2}}, PxStyle{Stroke: ink}},
	} {
		var got listing
		Draw(&got, scene(Shape{Path: square, Style: c.style}))
		s := got.styles[0]
		if s.Fill != c.want.Fill || s.Stroke != c.want.Stroke || s.Width != c.want.Width || s.Round != c.want.Round || !slices.Equal(s.Dash, c.want.Dash) {
			t.Errorf("%+v in pixels is %+v, want %+v", c.style, s, c.want)
		}
	}
}

func TestPanelAdd(t *testing.T) {
	var p Panel
	p.Add(Shape{ID: "a"}, Shape{ID: "b"})
	p.Add(Shape{ID: "c"})
	if len(p.Shapes) != 3 || p.Shapes[2].ID != "c" {
		t.Errorf("shapes %v, want a, b, c", p.Shapes)
	}
}
