package compose

import (
	"image/color"
	"strconv"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/words"
)

// court draws the surface and the painted lines at their true width.
func (p Picture) court(g *canvas.Panel) {
	lk := p.look()
	g.Add(
		area("surface", words.T("playing surface"), p.surface(), lk.Surface),
		area("court", "court", court.Bounds, lk.Court),
		area("kitchen.near", words.T("near kitchen"), court.KitchenOf(court.Near), lk.Kitchen),
		area("kitchen.far", words.T("far kitchen"), court.KitchenOf(court.Far), lk.Kitchen),
	)
	for i, l := range court.Lines {
		s := area("line."+strconv.Itoa(i), words.LineOf(l.End, l.Name), l.Area, lk.Line)
		s.Layer = canvas.Lines
		g.Add(s)
	}
}

func area(id, label string, r court.Rect, c color.NRGBA) canvas.Shape {
	return canvas.Shape{ID: id, Label: label, Layer: canvas.Ground, Path: canvas.Box(r), Style: canvas.Style{Fill: c}}
}

// net draws the net from post to post; it and the posts are thicker than to scale.
func (p Picture) net(g *canvas.Panel) {
	ink := p.look().Net
	end := court.Pt(court.PostDistance/2, 0)
	g.Add(canvas.Shape{
		ID: "net", Label: words.T("net"), Layer: canvas.NetLayer,
		Path:  canvas.Polyline(end.Times(-1), end),
		Style: canvas.Style{Stroke: ink, Width: canvas.Pts(2.2)},
	})
	for i, at := range []court.Point{end.Times(-1), end} {
		g.Add(canvas.Shape{
			ID: "post." + strconv.Itoa(i), Label: words.T("net post"), Layer: canvas.NetLayer,
			Path:  canvas.Circle(canvas.On(at), canvas.Pts(2.8)),
			Style: canvas.Style{Fill: ink},
		})
	}
}
