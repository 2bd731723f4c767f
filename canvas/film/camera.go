package film

import (
	"math"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/movement"
	"homeside/model/reel"
	"homeside/model/units"
)

// place is where a take is seen in a picture: all that does not change in it.
type place struct {
	panels []compose.Area // one, or two side by side
	free   []compose.Area // of each what no caption covers
	rows   int            // of captions
	labels [][]string     // the lines of the names of two plays
	turn   canvas.Turn
}

// turnOf lays a court down where the picture lies, and in a square one, of which
// captions leave a part that lies.
func turnOf(a compose.Area) canvas.Turn {
	if a.Width() >= a.Height() {
		return canvas.Lying
	}
	return canvas.Upright
}

// layouts are where the courts of a take are at a moment.
func (f *Film) layouts(width, height int, t take, p place, m reel.Moment) []compose.Layout {
	out := make([]compose.Layout, len(p.panels))
	for i := range p.panels {
		out[i] = compose.Layout{Width: width, Height: height, Clip: canvas.Clip(p.panels[i])}
		if t.Camera.Kind == lesson.HalfCourt {
			out[i].Clip.Max.Y = p.free[i].Max.Y // no pieces of the other half round the captions
		}
		if t.Camera.Kind == lesson.BehindReceiver {
			out[i].Court, out[i].Camera = behind(t.pictures[i], p.free[i])
		} else {
			out[i].Court = f.view(t, p, i, m)
		}
	}
	return out
}

// behind is the view from behind of the receiver in an area.
func behind(p compose.Picture, a compose.Area) (canvas.View, canvas.Camera) {
	l := p.Seen(compose.Sight{Behind: compose.TheReceiver}).Bare(int(a.Width()), int(a.Height()), 1)
	l.Court.Origin.X += a.Min.X
	l.Court.Origin.Y += a.Min.Y
	return l.Court, l.Camera
}

// view is how a camera sees one court from above, with what matters in the part
// of the panel that no caption covers.
func (f *Film) view(t take, p place, i int, m reel.Moment) canvas.View {
	whole := p.whole(t, i)
	switch t.Camera.Kind {
	case lesson.HalfCourt:
		return canvas.Fit(f.half(t), p.turn, p.free[i].Min, p.free[i].Max)
	case lesson.Follow:
		return f.near(t, p, i, m.Clip)
	case lesson.PushIn:
		return between(whole, f.near(t, p, i, m.Clip), middle(p.free[i]), movement.MinimumJerk(m.Gone))
	}
	return whole
}

// whole is the view of all of a court.
func (p place) whole(t take, i int) canvas.View {
	return canvas.Fit(t.needed, p.turn, p.free[i].Min, p.free[i].Max)
}

// overNet is how much of the other half is shown with one.
const overNet units.Feet = 3

// half is what is shown of one half of the court.
func (f *Film) half(t take) court.Rect {
	r := t.needed
	if t.Camera.End == court.Near {
		r.Max.Y = overNet
	} else {
		r.Min.Y = -overNet
	}
	return r
}

// near is the view with a player in the middle of what no caption covers, as near
// as asked for but not farther than the whole court is. It does not look beyond
// what there is to see.
func (f *Film) near(t take, p place, i int, at units.Seconds) canvas.View {
	panel, free, whole := p.panels[i], p.free[i], p.whole(t, i)
	scale := math.Max(math.Min(panel.Width(), panel.Height())/float64(t.Camera.Across()), whole.PxPerFoot)
	w, h := units.Feet(free.Width()/scale), units.Feet(free.Height()/scale)
	if p.turn == canvas.Lying {
		w, h = h, w
	}
	focus := f.Reel.Focus(at, t.pictures[i].Rally, t.Camera.Player, shrunk(f.sights(t), w/2, h/2))
	return looking(focus, scale, p.turn, middle(free))
}

// sights is all that there is to see: the playing surface and where players go.
func (f *Film) sights(t take) court.Rect {
	s := f.surface
	return court.RectOf(
		court.Pt(min(s.Min.X, t.needed.Min.X), min(s.Min.Y, t.needed.Min.Y)),
		court.Pt(max(s.Max.X, t.needed.Max.X), max(s.Max.Y, t.needed.Max.Y)),
	)
}

// shrunk is a rectangle less a margin on its sides, on an axis where nothing is
// left its middle.
func shrunk(r court.Rect, x, y units.Feet) court.Rect {
	c := r.Centre()
	x, y = max(r.Width()/2-x, 0), max(r.Height()/2-y, 0)
	return court.RectOf(court.Pt(c.X-x, c.Y-y), court.Pt(c.X+x, c.Y+y))
}

func middle(a compose.Area) canvas.Px {
	return canvas.Px{X: (a.Min.X + a.Max.X) / 2, Y: (a.Min.Y + a.Max.Y) / 2}
}

// looking is the view that has a point of the court at a pixel.
func looking(p court.Point, scale float64, turn canvas.Turn, at canvas.Px) canvas.View {
	v := canvas.View{PxPerFoot: scale, Turn: turn}
	o := v.ToPx(p)
	v.Origin = canvas.Px{X: at.X - o.X, Y: at.Y - o.Y}
	return v
}

// between is a share of the way from one view to another of the same turn: the
// scale grows evenly, as the eye sees it, and what both have in the same place
// stays there.
func between(a, b canvas.View, at canvas.Px, share float64) canvas.View {
	scale := a.PxPerFoot * math.Pow(b.PxPerFoot/a.PxPerFoot, share)
	moved := share
	if near := 1/a.PxPerFoot - 1/b.PxPerFoot; near > 1e-9 {
		moved = (1/a.PxPerFoot - 1/scale) / near
	}
	return looking(a.ToCourt(at).Toward(b.ToCourt(at), moved), scale, a.Turn, at)
}
