package film

import (
	"math"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/lesson"
	"homeside/model/reel"
)

// placeKey names what is worked out once.
type placeKey struct{ take, width, height int }

// scenery is a take in a picture of a size: where it is, and what of it stands
// still on the court.
type scenery struct {
	place
	still [][]canvas.Panel // by picture
}

func (f *Film) sceneryOf(n, width, height int) *scenery {
	key := placeKey{n, width, height}
	if kept, ok := f.kept.Load(key); ok {
		return kept.(*scenery)
	}
	t := f.takes[n]
	out := &scenery{place: f.placeOf(n, width, height)}
	layouts := f.layouts(width, height, t, out.place, f.Reel.At(t.Start))
	for i, p := range f.seen(t) {
		layouts[i].PxPerPoint = f.scene(width, height).PxPerPoint
		out.still = append(out.still, p.StaticIn(layouts[i]).Panels)
	}
	kept, _ := f.kept.LoadOrStore(key, out)
	return kept.(*scenery)
}

// gap is the share of a picture's side between two courts.
const gap = 0.012

// wideShape is the width to height from which two courts lie beside each other; in a
// narrower picture one lies below the other.
const wideShape = 1.2

// parts cuts an area in two, to the right or downward.
func parts(all compose.Area, right bool) []compose.Area {
	a, b := all, all
	if mid := middle(all); right {
		half := gap * all.Width() / 2
		a.Max.X, b.Min.X = mid.X-half, mid.X+half
	} else {
		half := gap * all.Height() / 2
		a.Max.Y, b.Min.Y = mid.Y-half, mid.Y+half
	}
	return []compose.Area{a, b}
}

// names of the two courts' panels.
var sides = [...]string{"", "beside."}

// shoot draws the courts, without a sky where they are laid over something else.
func (f *Film) shoot(s *canvas.Scene, m reel.Moment) {
	sc := f.sceneryOf(m.Take, s.Width, s.Height)
	t := f.takes[m.Take]
	layouts := f.layouts(s.Width, s.Height, t, sc.place, m)
	s.PxPerPoint = sharp(s.PxPerPoint, sc, layouts[0].Court, t)
	for i, p := range f.seen(t) {
		if l := layouts[i]; l.Court.Lens.On() && !f.over {
			f.sky(s, sides[i]+"sky", l)
		}
		for _, still := range sc.still[i] {
			still.Name, still.View = sides[i]+still.Name, layouts[i].Court
			s.Panels = append(s.Panels, still)
		}
		layouts[i].PxPerPoint = s.PxPerPoint
		for _, moving := range p.MovingIn(layouts[i], m.T).Panels {
			moving.Name = sides[i] + "moving." + moving.Name
			s.Panels = append(s.Panels, moving)
		}
	}
}

// sky is all above the horizon of a court in perspective.
func (f *Film) sky(s *canvas.Scene, name string, l compose.Layout) {
	ahead := l.Camera.Eye
	ahead.Y *= -skyFar
	horizon := l.Court.VecToPx(ahead).Y
	a := compose.Area(l.Clip)
	if a.Max.Y = min(horizon, a.Max.Y); a.Empty() {
		return
	}
	b := f.board(s, name)
	b.box("sky", a, b.look.Court)
	s.Panels = append(s.Panels, b.panel)
}

// skyFar is how many times as far as the camera from the net the horizon is.
const skyFar = 1e4

// seen are the take's pictures as its camera sees them.
func (f *Film) seen(t take) []compose.Picture {
	out := make([]compose.Picture, len(t.pictures))
	for i, p := range t.pictures {
		if t.Camera.Kind == lesson.BehindReceiver {
			p = p.Seen(compose.Sight{Behind: compose.TheReceiver})
		}
		p.Look = f.Look
		out[i] = p
	}
	return out
}

// Signs on the court are as large as in a picture of the whole court on a phone,
// pointsPerFoot of them to a foot, or larger where the court is small. From near
// they grow, but less than the court.
const (
	pointsPerFoot = 11
	leastSign     = 0.9 // of a point of the whole picture
	growth        = 0.6
)

// sharp is the scene's scale for what is drawn in points on a court.
func sharp(base float64, sc *scenery, v canvas.View, t take) float64 {
	whole := sc.whole(t, 0)
	scale := math.Max(whole.PxPerFoot/pointsPerFoot, base*leastSign)
	if v.Lens.On() {
		return scale // what is far is smaller anyway
	}
	return scale * math.Pow(v.PxPerFoot/whole.PxPerFoot, growth)
}
