package film

import (
	"image"
	"slices"
	"sync"

	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/reel"
	"homeside/model/units"
)

// Film is a solved reel as a source of pictures. It is an immutable snapshot, for
// several goroutines at once.
type Film struct {
	Reel    *reel.Reel
	Look    *look.Look // nil means look.Daylight
	over    bool       // drawn over something else
	surface court.Rect
	logo    *image.NRGBA // nil for none
	takes   []take
	kept    *sync.Map // of placeKey: what is worked out once for a size
}

// take is a take with its pictures: one, or two side by side.
type take struct {
	*reel.Take
	pictures []compose.Picture
	needed   court.Rect // the court, and wherever a player goes
}

// Of is the film of a solved reel of a lesson.
func Of(l lesson.Lesson, r *reel.Reel) *Film {
	f := &Film{Reel: r, surface: l.Venue.Surface(), kept: &sync.Map{}}
	f.logo, _ = DecodeLogo(l.Logo) // one that cannot be read is not shown
	for i := range r.Takes {
		f.takes = append(f.takes, f.take(&r.Takes[i]))
	}
	return f
}

// In is the film in a look.
func (f *Film) In(lk *look.Look) *Film {
	g := &Film{Reel: f.Reel, Look: lk, surface: f.surface, logo: f.logo, takes: slices.Clone(f.takes), kept: &sync.Map{}}
	for i, t := range g.takes {
		g.takes[i].pictures = slices.Clone(t.pictures)
		for j := range t.pictures {
			g.takes[i].pictures[j].Look = lk
		}
	}
	return g
}

func (f *Film) take(t *reel.Take) take {
	out := take{Take: t, needed: court.Bounds.Grow(beyond)}
	for _, r := range []*rally.Rally{t.Rally, t.Other} {
		if r == nil {
			continue
		}
		out.pictures = append(out.pictures, compose.Of(r, f.surface, canvas.Upright))
		out.needed = around(out.needed, r, f.surface.Grow(beyond))
	}
	return out
}

// beyond is how much is shown beyond the lines and beyond a player's place.
const beyond units.Feet = 2

// around is a rectangle that also holds the places of a rally's players, so far as
// they lie in another.
func around(r court.Rect, of *rally.Rally, within court.Rect) court.Rect {
	for _, track := range of.Tracks {
		for _, s := range track.Stops {
			at := s.Keyframe.Place
			r.Min = court.Pt(min(r.Min.X, max(at.X-beyond, within.Min.X)), min(r.Min.Y, max(at.Y-beyond, within.Min.Y)))
			r.Max = court.Pt(max(r.Max.X, min(at.X+beyond, within.Max.X)), max(r.Max.Y, min(at.Y+beyond, within.Max.Y)))
		}
	}
	return r
}

// Span is the beginning and the end of the clip.
func (f *Film) Span() (from, to units.Seconds) { return 0, f.Reel.Length() }

// Static is the ground: all else may change from take to take.
func (f *Film) Static(width, height int) *canvas.Scene {
	s := f.scene(width, height)
	s.Background = f.look().Surface
	s.Title = f.Reel.Of.Name
	return s
}

// Moving is the clip at time t.
func (f *Film) Moving(width, height int, t units.Seconds) *canvas.Scene {
	s := f.scene(width, height)
	m := f.Reel.At(t)
	if m.Card != nil {
		f.card(s, *m.Card)
		f.putLogo(s, Safe(width, height))
		return s
	}
	f.shoot(s, m)
	f.words(s, m)
	return s
}

// Over is the clip at time t as it is laid over something else, which the sky
// behind a court would hide. Plates are solid then: what shines through them could
// be a colour to be keyed out.
func (f *Film) Over(width, height int, t units.Seconds) *canvas.Scene {
	over := *f
	over.over = true
	return over.Moving(width, height, t)
}

func (f *Film) scene(width, height int) *canvas.Scene {
	return &canvas.Scene{Width: width, Height: height, PxPerPoint: float64(min(width, height)) / phoneWidth}
}

// phoneWidth is the points across the shorter side of a picture of the whole court.
const phoneWidth = 360

func (f *Film) look() *look.Look {
	if f.Look != nil {
		return f.Look
	}
	return &look.Daylight
}
