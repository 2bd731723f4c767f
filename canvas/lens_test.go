package canvas

import (
	"image/color"
	"math"
	"testing"

	"pgregory.net/rapid"

	"homeside/model/court"
	"homeside/model/units"
)

// filmed is a view through a camera with a focal length and principal point in pixels.
func filmed(t testing.TB, eye, at Vec, focal float64, centre Px) View {
	t.Helper()
	c, ok := LookAt(eye, at)
	if !ok {
		t.Fatalf("LookAt(%v, %v) is no camera", eye, at)
	}
	const distance = 30
	return View{Origin: centre, PxPerFoot: focal / distance, Lens: c.Lens(distance)}
}

var tall = Vec{12.5, -40, 15}

// Pixels from cv2.projectPoints of OpenCV 4.6.0, by scripts/perspective.py, which
// says how the cameras stand; they agree to a millionth of a pixel.
func TestLensAgreesWithOpenCV(t *testing.T) {
	const tolerance = 1e-6 // px
	for _, c := range []struct {
		view View
		want map[Vec]Px
	}{
		{filmed(t, Vec{-4, 33, 8.5}, Vec{-4, 0, 8.5}, 900, Px{640, 260}), map[Vec]Px{
			{-10, 22, 0}:               {1130.909090909, 955.454545455},
			{10, 22, 0}:                {-505.454545455, 955.454545455},
			{10, -22, 0}:               {410.909090909, 399.090909091},
			{-10, -22, 0}:              {738.181818182, 399.090909091},
			{0, 0, 2.8333333333333335}: {530.909090909, 414.545454545},
			{-5, 7, 0}:                 {674.615384615, 554.230769231},
			{11, 0, 3}:                 {230.909090909, 410.000000000},
			{-6.25, -23.5, 5.25}:       {675.840707965, 311.769911504},
		}},
		{filmed(t, tall, Vec{0, 4, 2}, 1100, Px{360, 640}), map[Vec]Px{
			{-10, 22, 0}:               {283.268753433, 581.936390004},
			{10, 22, 0}:                {617.415437168, 603.478691873},
			{10, -22, 0}:               {489.152735294, 1128.442575393},
			{-10, -22, 0}:              {-329.789772799, 970.533731204},
			{0, 0, 2.8333333333333335}: {332.436510481, 646.311819244},
			{-5, 7, 0}:                 {275.905997188, 656.046791095},
			{11, 0, 3}:                 {616.522262094, 664.651224935},
			{-6.25, -23.5, 5.25}:       {-290.872489694, 815.078705479},
		}},
	} {
		for at, want := range c.want {
			if got := c.view.VecToPx(at); !near(got.X, want.X, tolerance) || !near(got.Y, want.Y, tolerance) {
				t.Errorf("VecToPx(%v) = %v, want %v", at, got, want)
			}
		}
	}
}

// A picture of the ground that was taken with a camera is drawn as the camera
// draws the ground.
func TestPlaneIsTheCamerasGround(t *testing.T) {
	v := filmed(t, tall, Vec{0, 4, 2}, 1100, Px{360, 640})
	var h [3][3]float64
	for i, k := range [3]int{0, 1, 3} {
		h[2][i] = v.Lens.W[k]
		h[0][i] = v.PxPerFoot*v.Lens.X[k] + v.Origin.X*v.Lens.W[k]
		h[1][i] = v.PxPerFoot*v.Lens.Y[k] + v.Origin.Y*v.Lens.W[k]
	}
	middle := court.Pt(0, -10)
	lens, scale, ok := Plane(h, middle)
	if !ok {
		t.Fatal("Plane finds no lens")
	}
	p := View{PxPerFoot: scale, Lens: lens}
	for _, at := range []court.Point{{X: -10, Y: 22}, {X: 10, Y: -22}, {}, {X: 3, Y: 7}} {
		if got, want := p.ToPx(at), v.ToPx(at); !near(got.X, want.X, 1e-6) || !near(got.Y, want.Y, 1e-6) {
			t.Errorf("ToPx(%v) = %v, want %v", at, got, want)
		}
	}
	if got := p.PxPerFootAt(Above(middle, 0)); !near(got, scale, 1e-9) {
		t.Errorf("PxPerFootAt(%v) = %v, want %v", middle, got, scale)
	}
	// Off its axis a camera stretches a little: 6 % here.
	if got, want := scale, v.PxPerFootAt(Above(middle, 0)); math.Abs(got/want-1) > 0.06 {
		t.Errorf("the scale at %v is %v px a foot, want the camera's %v within 6 %%", middle, got, want)
	}
	if _, _, ok := Plane([3][3]float64{}, middle); ok {
		t.Error("Plane of zeros finds a lens")
	}
}

func drawVec(t *rapid.T, name string, reach float64) Vec {
	axis := func(n string) units.Feet {
		return units.Feet(rapid.Float64Range(-reach, reach).Draw(t, name+n))
	}
	return Vec{axis(".x"), axis(".y"), axis(".z")}
}

// drawFilmed is a view through a camera, and where the camera is.
func drawFilmed(t *rapid.T) (View, Vec) {
	eye := drawVec(t, "eye", 60)
	eye.Z = units.Feet(rapid.Float64Range(0, 30).Draw(t, "eye high"))
	at := drawVec(t, "at", 20)
	at.X += 0.01 // not straight below the eye
	c, ok := LookAt(eye, at)
	if !ok {
		t.Fatalf("LookAt(%v, %v) is no camera", eye, at)
	}
	distance := units.Feet(rapid.Float64Range(5, 50).Draw(t, "distance"))
	return View{Origin: Px{300, 200}, PxPerFoot: rapid.Float64Range(1, 100).Draw(t, "scale"), Lens: c.Lens(distance)}, eye
}

// What is in front of a camera on the ground is found again under its pixel.
func TestLensThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v, eye := drawFilmed(t)
		p := drawPoint(t, "p")
		if v.Lens.Depth(Above(p, 0)) < 0.1 || eye.Z < 1 {
			return // behind, or seen at so low an angle that a pixel is many feet
		}
		if back := v.ToCourt(v.ToPx(p)); p.Distance(back) > 1e-5 {
			t.Fatalf("%+v: ToCourt(ToPx(%v)) = %v", v, p, back)
		}
	})
}

// finite is a Surface that looks for places that are no numbers.
type finite struct {
	t     *rapid.T
	drawn int
}

func (f *finite) Path(info Info, path []PxStep, s PxStyle) {
	f.drawn++
	for _, step := range path {
		for _, p := range step.P {
			if !(p.reach() <= farthest) {
				f.t.Fatalf("%s is drawn at %v", info.ID, p)
			}
		}
	}
	if !(s.Width >= 0 && s.Width < 1e9) {
		f.t.Fatalf("%s is %v px wide", info.ID, s.Width)
	}
}

func (f *finite) Image(Info, PxImage) {}

func (f *finite) Text(info Info, x PxText) {
	if !(x.At.reach() <= farthest && x.Size > 0 && x.Size <= farthest) {
		f.t.Fatalf("%s stands at %v, %v px", info.ID, x.At, x.Size)
	}
}

// Whatever stands before, beside or behind a camera is drawn in numbers or not at all.
func TestNothingDrawnIsNaN(t *testing.T) {
	ink := color.NRGBA{A: 255}
	rapid.Check(t, func(t *rapid.T) {
		v, _ := drawFilmed(t)
		at := func(name string) Pos { return At(drawVec(t, name, 80)) }
		style := Style{Fill: ink, Stroke: ink, Width: Length{Feet: 0.2, Points: 1}}
		s := scene(
			Shape{ID: "ground", Path: Box(court.Surface), Style: style},
			Shape{ID: "circle", Path: Circle(at("circle"), Length{Feet: 3, Points: 4}), Style: style},
			Shape{ID: "line", Path: Path{}.Move(at("a")).Line(at("b")).Line(at("c")), Style: style},
			Shape{ID: "text", Text: &Text{At: at("text"), Text: "a", Size: 3, SizeFt: 1}},
		)
		s.Panels[0].View = v
		if rapid.Bool().Draw(t, "clipped") {
			s.Panels[0].Clip = Clip{Max: Px{600, 400}}
		}
		Draw(&finite{t: t}, s)
		for _, px := range []Px{{0, 0}, {300, 200}, {600, 1e9}, {300, -1e9}} {
			if !v.ToCourt(px).Finite() {
				t.Fatalf("%+v: ToCourt(%v) = %v", v, px, v.ToCourt(px))
			}
		}
		if px := v.VecToPx(drawVec(t, "anywhere", 1e4)); math.IsNaN(px.X + px.Y) {
			t.Fatalf("VecToPx is %v", px)
		}
	})
}

func TestLookAtNothing(t *testing.T) {
	for _, c := range [][2]Vec{{{}, {}}, {{Z: 10}, {}}, {{X: units.Feet(math.NaN())}, {}}, {{X: units.Feet(math.Inf(1))}, {}}} {
		if got, ok := LookAt(c[0], c[1]); ok {
			t.Errorf("LookAt(%v, %v) = %+v, want none", c[0], c[1], got)
		}
	}
}
