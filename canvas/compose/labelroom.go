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
	crossed  []court.Rect // by players later on: kept free where there is a choice
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

// playerReach is how far from a player's place notch and paddle reach, and the air
// round them.
const playerReach = rim + look.NotchLength + 2

// disc is the room that a player takes up at a place.
func (r *labelRoom) disc(at court.Point) court.Rect {
	return court.RectOf(at, at).Grow(feet(playerReach) * r.perPoint)
}

// takeDisc keeps the place of a player.
func (r *labelRoom) takeDisc(at court.Point) { r.taken = append(r.taken, r.disc(at)) }

// crossDisc keeps a place where a player comes by free where there is a choice.
func (r *labelRoom) crossDisc(at court.Point) { r.crossed = append(r.crossed, r.disc(at)) }

// find takes the one of some points where a tag is farthest from everything taken and
// from the half's edges, if it can be one where nobody comes by; false if the tag would
// hide something at all of them.
func (r *labelRoom) find(points []court.Point, text string) (court.Point, bool) {
	best, ok := r.best(points, text, append(r.crossed[:len(r.crossed):len(r.crossed)], r.taken...))
	if !ok {
		best, ok = r.best(points, text, r.taken)
	}
	if ok {
		r.take(best, text)
	}
	return best, ok
}

// best is the point where a tag is farthest from what is in the way.
func (r *labelRoom) best(points []court.Point, text string, inTheWay []court.Rect) (best court.Point, ok bool) {
	most := feet(0)
	for _, q := range points {
		tag := r.tagged(q, text)
		free := max(0, min(q.X-r.half.Min.X, r.half.Max.X-q.X, q.Y-r.half.Min.Y, r.half.Max.Y-q.Y)) + r.perPoint
		for _, o := range inTheWay {
			free = min(free, apart(tag, o))
		}
		if free > most {
			best, most = q, free
		}
	}
	return best, most > 0
}

// about takes a place for a tag: the point itself if it hides nothing there, else one
// at a distance from it.
func (r *labelRoom) about(at court.Point, away feet, text string) (court.Point, bool) {
	if _, ok := r.best([]court.Point{at}, text, r.taken); ok {
		r.take(at, text)
		return at, true
	}
	var round []court.Point
	for i := range 24 {
		round = append(round, at.Add(court.Direction(degrees(15*i)).Times(float64(away))))
	}
	return r.find(round, text)
}

// apart is the gap between two rectangles along the axis on which it is wider;
// negative if they overlap.
func apart(a, b court.Rect) feet {
	return max(a.Min.X-b.Max.X, b.Min.X-a.Max.X, a.Min.Y-b.Max.Y, b.Min.Y-a.Max.Y)
}
