package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
)

// labelRoom finds places for tags on a half of the court that do not hide one another
// or a player.
type labelRoom struct {
	half     court.Rect
	turn     canvas.Turn
	perPoint feet         // length of a point on this panel
	taken    []court.Rect // by tags and players
}

// roomOn is the room on a panel of a scene before anything is placed.
func roomOn(s *canvas.Scene, g *canvas.Panel, end court.End) *labelRoom {
	return &labelRoom{half: court.Half(end), turn: g.View.Turn, perPoint: feet(s.PxPerPoint / g.View.PxPerFoot)}
}

// tagged is the room that a tag takes up at a place.
func (r *labelRoom) tagged(at court.Point, text string) court.Rect {
	w, h := tagSize(text)
	along, across := feet(w)/2*r.perPoint, feet(h)/2*r.perPoint
	if r.turn == canvas.Lying {
		along, across = across, along
	}
	return court.RectOf(at.Sub(court.Pt(along, across)), at.Add(court.Pt(along, across)))
}

// take keeps a place for a tag that has to be there.
func (r *labelRoom) take(at court.Point, text string) { r.taken = append(r.taken, r.tagged(at, text)) }

// takeDisc keeps the place of a player.
func (r *labelRoom) takeDisc(at court.Point) {
	r.taken = append(r.taken, court.RectOf(at, at).Grow(feet(look.RingRadius)*r.perPoint))
}

// find takes the one of some points where a tag is farthest from everything taken and
// from the half's edges; false if it would hide something at all of them.
func (r *labelRoom) find(points []court.Point, text string) (court.Point, bool) {
	var best court.Point
	most := feet(0)
	for _, q := range points {
		tag := r.tagged(q, text)
		free := max(0, min(q.X-r.half.Min.X, r.half.Max.X-q.X, q.Y-r.half.Min.Y, r.half.Max.Y-q.Y)) + r.perPoint
		for _, o := range r.taken {
			free = min(free, apart(tag, o))
		}
		if free > most {
			best, most = q, free
		}
	}
	if most > 0 {
		r.take(best, text)
	}
	return best, most > 0
}

// apart is the gap between two rectangles along the axis on which it is wider;
// negative if they overlap.
func apart(a, b court.Rect) feet {
	return max(a.Min.X-b.Max.X, b.Min.X-a.Max.X, a.Min.Y-b.Max.Y, b.Min.Y-a.Max.Y)
}
