package canvas

import (
	"math"

	"homeside/model/court"
	"homeside/model/units"
)

// Px is a place in the picture in pixels, y down.
type Px struct{ X, Y float64 }

// Turn is how the court lies in the picture.
type Turn uint8

// The turns: Upright has the near team at the bottom, Lying at the left.
const (
	Upright Turn = iota
	Lying
)

// String is "upright" or "lying".
func (t Turn) String() string { return [...]string{"upright", "lying"}[t&1] }

// View places a panel's axes in the picture: the only code that knows both
// feet and pixels, and the only one that turns y over.
type View struct {
	Origin    Px      // where the axes' origin is
	PxPerFoot float64 // scale, above 0
	Turn      Turn
}

// Fit is the view that shows all of r as large as it goes in the middle of the
// area from min to max. If r or the area is empty, the scale is 1.
func Fit(r court.Rect, turn Turn, min, max Px) View {
	w, h := float64(r.Width()), float64(r.Height())
	if turn == Lying {
		w, h = h, w
	}
	v := View{PxPerFoot: 1, Turn: turn}
	sx, sy := (max.X-min.X)/w, (max.Y-min.Y)/h
	if scale := math.Min(sx, sy); scale > 0 && !math.IsInf(scale, 0) {
		v.PxPerFoot = scale
	}
	c := v.ToPx(r.Centre())
	v.Origin = Px{(min.X+max.X)/2 - c.X, (min.Y+max.Y)/2 - c.Y}
	return v
}

// ToPx is where a point of the court is in the picture.
func (v View) ToPx(p court.Point) Px { return v.place(On(p), 0) }

// ToCourt is the point of the court under a pixel.
func (v View) ToCourt(px Px) court.Point {
	x, y := units.Feet((px.X-v.Origin.X)/v.PxPerFoot), units.Feet((px.Y-v.Origin.Y)/v.PxPerFoot)
	if v.Turn == Lying {
		return court.Pt(y, x)
	}
	return court.Pt(x, -y)
}

func (v View) place(p Pos, pxPerPoint float64) Px {
	x := float64(p.X)*v.PxPerFoot + float64(p.U)*pxPerPoint
	y := float64(p.Y)*v.PxPerFoot + float64(p.V)*pxPerPoint
	right, down := v.Origin.X+float64(p.Right)*pxPerPoint, v.Origin.Y+float64(p.Down)*pxPerPoint
	if v.Turn == Lying {
		return Px{right + y, down + x}
	}
	return Px{right + x, down - y}
}

func (v View) length(l Length, pxPerPoint float64) float64 {
	return float64(l.Feet)*v.PxPerFoot + float64(l.Points)*pxPerPoint
}
