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
// feet and pixels, and the only one that turns y over. Moving Origin and scaling
// PxPerFoot about it moves and enlarges the picture, whatever the view.
type View struct {
	Origin    Px        // where the axes' origin is; with a Lens, where it looks
	PxPerFoot float64   // scale, above 0; with a Lens, where its depth is 1
	Turn      Turn      // of a view from straight above
	End       court.End // the team at the bottom of an upright court, at the left of a lying one
	Lens      Lens      // the zero Lens looks from straight above
}

// Fit is the view that shows all of r as large as it goes in the middle of the
// area from min to max. If r or the area is empty, the scale is 1.
func Fit(r court.Rect, turn Turn, min, max Px) View { return FitFrom(court.Near, r, turn, min, max) }

// FitFrom is Fit with the team of an end at the bottom of an upright court or at
// the left of a lying one.
func FitFrom(end court.End, r court.Rect, turn Turn, min, max Px) View {
	w, h := float64(r.Width()), float64(r.Height())
	if turn == Lying {
		w, h = h, w
	}
	v := View{PxPerFoot: 1, Turn: turn, End: end}
	sx, sy := (max.X-min.X)/w, (max.Y-min.Y)/h
	if scale := math.Min(sx, sy); scale > 0 && !math.IsInf(scale, 0) {
		v.PxPerFoot = scale
	}
	c := v.ToPx(r.Centre())
	v.Origin = Px{(min.X+max.X)/2 - c.X, (min.Y+max.Y)/2 - c.Y}
	return v
}

// ToPx is where a point of the court is in the picture. Through a lens it is far
// outside the picture, to the side it is on, if the point is not in front of it.
func (v View) ToPx(p court.Point) Px { return v.Place(On(p), 0) }

// VecToPx is ToPx of a point above the court.
func (v View) VecToPx(p Vec) Px { return v.Place(At(p), 0) }

// ToCourt is the point of the court under a pixel. Above a lens's horizon it is
// a point far away in that direction.
func (v View) ToCourt(px Px) court.Point {
	x, y := (px.X-v.Origin.X)/v.PxPerFoot, (px.Y-v.Origin.Y)/v.PxPerFoot
	if v.Lens.On() {
		return v.Lens.ground(x, y)
	}
	p := court.Pt(units.Feet(x), units.Feet(-y))
	if v.Turn == Lying {
		p = court.Pt(units.Feet(y), units.Feet(x))
	}
	if v.End == court.Far {
		return court.Pt(-p.X, -p.Y)
	}
	return p
}

// PxPerFootAt is the length in pixels of a foot that faces the picture at a place.
func (v View) PxPerFootAt(at Vec) float64 {
	if !v.Lens.On() {
		return v.PxPerFoot
	}
	return v.PxPerFoot / max(v.Lens.Depth(at), nearest)
}

// Place is where a place is in the picture; through a lens with its depth no
// less than the nearest that is drawn.
func (v View) Place(p Pos, pxPerPoint float64) Px {
	if v.Lens.On() {
		return v.seen(v.through(p, pxPerPoint))
	}
	x := float64(p.X)*v.PxPerFoot + float64(p.U)*pxPerPoint
	y := float64(p.Y)*v.PxPerFoot + float64(p.V)*pxPerPoint
	if v.End == court.Far {
		x, y = -x, -y
	}
	right, down := v.Origin.X+float64(p.Right)*pxPerPoint, v.Origin.Y+float64(p.Down)*pxPerPoint
	if v.Turn == Lying {
		return Px{right + y, down + x}
	}
	return Px{right + x, down - y}
}

// px is a length in pixels where the scale is pxPerFoot.
func (l Length) px(pxPerFoot, pxPerPoint float64) float64 {
	return float64(l.Feet)*pxPerFoot + float64(l.Points)*pxPerPoint
}
