package exporttest

import (
	"fmt"
	"image/color"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/units"
)

// Play is a court on which a disc with a letter walks from the near to the far
// baseline along the centreline while a clock runs.
type Play struct {
	From, To    units.Seconds
	Transparent bool // no background
}

// Colours of the Play.
var (
	Paper = look.Daylight.Paper
	Court = look.Daylight.Court
	Disc  = look.Blue
)

// DiscRadius is the radius of the walking disc.
const DiscRadius units.Feet = 2

// View is where the court is in a picture.
func View(width, height int) canvas.View {
	return canvas.Fit(court.Surface, canvas.Upright, canvas.Px{}, canvas.Px{X: float64(width), Y: float64(height)})
}

// Centre is where the disc is at time t.
func (p Play) Centre(t units.Seconds) court.Point {
	share := 0.0
	if p.To > p.From {
		share = float64((t - p.From) / (p.To - p.From))
	}
	return court.Pt(0, -court.Baseline).Toward(court.Pt(0, court.Baseline), share)
}

// Span implements export.Source.
func (p Play) Span() (from, to units.Seconds) { return p.From, p.To }

// Static implements export.Source.
func (p Play) Static(width, height int) *canvas.Scene {
	s := newScene(width, height)
	s.Background = Paper
	if p.Transparent {
		s.Background = color.NRGBA{}
	}
	panel := canvas.Panel{Name: "court", View: View(width, height)}
	panel.Add(canvas.Shape{ID: "court", Path: canvas.Box(court.Bounds), Style: canvas.Style{Fill: Court}})
	for i, l := range court.Lines {
		panel.Add(canvas.Shape{ID: fmt.Sprint("line.", i), Layer: canvas.Lines, Path: canvas.Box(l.Area), Style: canvas.Style{Fill: look.Daylight.Line}})
	}
	s.Panels = []canvas.Panel{panel}
	return s
}

// Moving implements export.Source.
func (p Play) Moving(width, height int, t units.Seconds) *canvas.Scene {
	s := newScene(width, height)
	at := canvas.On(p.Centre(t))
	panel := canvas.Panel{Name: "court", View: View(width, height)}
	panel.Add(canvas.Shape{
		ID: "disc", Layer: canvas.Players, Path: canvas.Circle(at, canvas.Ft(DiscRadius)),
		Style: canvas.Style{Fill: Disc, Stroke: look.Daylight.Ink, Width: canvas.Pts(look.Outline)},
	}, canvas.Shape{
		ID: "clock", Layer: canvas.Labels,
		Text: &canvas.Text{At: canvas.On(court.Pt(0, -26)), Text: fmt.Sprintf("%.2f s", t), Size: look.TitleSize, Bold: true, Colour: look.Daylight.Ink},
	})
	s.Panels = []canvas.Panel{panel}
	return s
}

func newScene(width, height int) *canvas.Scene {
	return &canvas.Scene{Width: width, Height: height, PxPerPoint: float64(min(width, height)) / 360}
}
