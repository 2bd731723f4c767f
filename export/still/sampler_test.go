package still

import (
	"image/color"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/units"
)

// sampler is a picture of everything that a scene can hold.
type sampler struct{ transparent bool }

func (sampler) Span() (from, to units.Seconds) { return 0, 1 }

var (
	ink   = look.Daylight.Ink
	glass = color.NRGBA{0xD5, 0x5E, 0x00, 0x80}
)

// Static is 36 x 64 ft at 1 px/pt if 360 x 640 px are asked for.
func (s sampler) Static(width, height int) *canvas.Scene {
	k := float64(width) / 36
	scene := &canvas.Scene{Width: width, Height: height, PxPerPoint: float64(width) / 360, Background: look.Daylight.Surface, Title: `One <of> "each" & more`}
	if s.transparent {
		scene.Background = color.NRGBA{}
	}
	p := canvas.Panel{Name: "sampler", View: canvas.View{Origin: canvas.Px{Y: float64(height)}, PxPerFoot: k}}
	p.Add(samplerPaths()...)
	scene.Panels = []canvas.Panel{p}
	return scene
}

// Moving holds the texts.
func (s sampler) Moving(width, height int, _ units.Seconds) *canvas.Scene {
	scene := s.Static(width, height)
	scene.Panels[0].Shapes = samplerTexts()
	return scene
}

func box(x, y, w, h units.Feet) canvas.Path {
	return canvas.Box(court.RectOf(court.Pt(x, y), court.Pt(x+w, y+h)))
}

func samplerPaths() []canvas.Shape {
	bend := canvas.Path{}.Move(canvas.Pos{X: 2, Y: 20}).Curve(canvas.Pos{X: 10, Y: 34}, canvas.Pos{X: 22, Y: 6}, canvas.Pos{X: 33, Y: 20})
	ring := append(box(24, 44, 10, 10), canvas.Polyline(court.Pt(26, 46), court.Pt(26, 52), court.Pt(32, 52), court.Pt(32, 46)).Close()...)
	return []canvas.Shape{
		{ID: "box", Label: "box", Path: box(2, 44, 9, 9), Style: canvas.Style{Fill: look.Sky}},
		{ID: "glass", Label: "glass over the box", Path: box(7, 48, 9, 9), Style: canvas.Style{Fill: glass, Stroke: glass, Width: canvas.Pts(10)}},
		{ID: "ring", Label: `ring with a "hole" & <more>`, Path: ring, Style: canvas.Style{Fill: look.Green, Stroke: ink, Width: canvas.Ft(0.5)}},
		{ID: "disc", Label: "disc", Path: canvas.Circle(canvas.Pos{X: 20, Y: 38}, canvas.Ft(4)), Style: canvas.Style{Fill: look.Yellow, Stroke: ink, Width: canvas.Pts(3), Round: true}},
		{ID: "corner", Path: canvas.Polyline(court.Pt(3, 32), court.Pt(8, 41), court.Pt(13, 32)), Style: canvas.Style{Stroke: look.Blue, Width: canvas.Pts(14)}},
		{ID: "round", Path: canvas.Polyline(court.Pt(26, 32), court.Pt(30, 41), court.Pt(34, 32)), Style: canvas.Style{Stroke: look.Rust, Width: canvas.Pts(14), Round: true}},
		{ID: "bend", Label: "bend", Path: bend, Style: canvas.Style{Stroke: look.Mauve, Width: canvas.Pts(6)}},
		{ID: "dashes", Path: canvas.Polyline(court.Pt(2, 28), court.Pt(34, 28)), Style: canvas.Style{Stroke: ink, Width: canvas.Pts(4), Dash: []canvas.Points{14, 7}}},
		{ID: "dots", Path: canvas.Polyline(court.Pt(2, 26), court.Pt(34, 26)), Style: canvas.Style{Stroke: ink, Width: canvas.Pts(5), Dash: []canvas.Points{0.5, 10}, Round: true}},
		{ID: "unseen", Label: "unseen", Path: box(0, 0, 36, 64), Style: canvas.Style{}},
		{ID: "no width", Path: box(0, 0, 36, 64), Style: canvas.Style{Stroke: ink}},
	}
}

func samplerTexts() []canvas.Shape {
	text := func(y units.Feet, words string, a canvas.Align, bold bool) canvas.Shape {
		x := [...]units.Feet{canvas.Centre: 18, canvas.Start: 2, canvas.Finish: 34}[a]
		return canvas.Shape{ID: words, Layer: canvas.Labels, Text: &canvas.Text{At: canvas.Pos{X: x, Y: y}, Text: words, Size: 18, Bold: bold, Align: a, Colour: ink}}
	}
	labelled := text(2, "1.20 s", canvas.Finish, false)
	labelled.Label = "time since the serve"
	return []canvas.Shape{
		text(60, "Fault & <volley> \"in\" kitchen", canvas.Centre, true),
		text(16, "Señal: ¿quién tapa? ÁÉÍÓÚÜ", canvas.Start, false),
		text(13, "AVATAR, To, Te. 4-7-2", canvas.Finish, true),
		text(10, "Ελλάδα Жучок Tiếng Việt", canvas.Centre, false),
		text(8, apart, canvas.Finish, false),
		text(6, missing, canvas.Start, true),
		text(4, joined, canvas.Start, false),
		labelled,
	}
}

// apart has accents that are signs of their own, and letters whose codes hold
// the bytes of PDF's brackets, backslash and line end.
const apart = "Jose\u0301 n\u0303 (Щука č) \\ Шќ"

// missing has letters that the fonts lack: a sign beyond the first plane, two
// Han letters, an arrow.
const missing = "To \U0001F3D3 中国 → Pe"

// joined runs from right to left: Hebrew with points, a number, Arabic, whose
// letters join.
const joined = "שָׁלוֹם קו 7-2 مُحَمَّد لا"
