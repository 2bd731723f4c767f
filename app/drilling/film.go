package drilling

import (
	"image"

	"homeside/app/looks"
	"homeside/app/rehearsal"
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/canvas/raster"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// film is a rally on a court: walked through again and again, still behind its serve,
// or from event to event.
type film struct {
	picture compose.Picture
	run     *rehearsal.Rehearsal
	frames  *raster.Frames
	layout  compose.Layout
	size    image.Point
	still   bool
	sights  [2]compose.Sight
	above   int // which of the sights
}

// rest is between two rounds of a film.
const rest units.Seconds = 1.5

// newFilm is a rally seen from behind a player or, with that player at the bottom,
// from above. stepped moves by hand only.
func newFilm(r *rally.Rally, surface court.Rect, behind game.Player, stepped bool) *film {
	f := &film{picture: compose.Of(r, surface, canvas.Upright)}
	f.picture.Show.NoGhosts = true
	f.sights = [2]compose.Sight{{Behind: compose.BehindPlayer(behind)}, {End: behind.Team()}}
	f.run = rehearsal.New(r, rehearsal.Plan{Speed: rehearsal.Half, Rounds: -1, Rest: rest, Cuts: stepped})
	f.run.Read() // the window has shown the cautions
	if !stepped {
		f.run.Start()
	}
	return f
}

// newStill is a rally just after its serve, from above with a team at the bottom.
func newStill(r *rally.Rally, surface court.Rect, team court.End) *film {
	f := newFilm(r, surface, game.PlayerOf(team, 1), true)
	f.still, f.above = true, 1
	return f
}

// turn shows it from above or from behind.
func (f *film) turn() {
	f.above = 1 - f.above
	f.frames = nil
}

// onTheWay is a moment at which a served ball has left the server, whose initials
// it would hide.
const onTheWay units.Seconds = 0.3

// moment is the moment shown.
func (f *film) moment() units.Seconds {
	if f.still {
		return onTheWay
	}
	return f.run.Moment()
}

// passing says whether it moves by itself.
func (f *film) passing() bool { return !f.still && f.run.Passing() }

// draw is the film at its moment, in a size in pixels. The image is the film's own.
func (f *film) draw(w, h int) *image.RGBA {
	if size := image.Pt(w, h); f.frames == nil || size != f.size || f.picture.Look != looks.Now() {
		f.picture, f.size = f.picture.Seen(f.sights[f.above]), size
		f.picture.Look = looks.Now()
		f.layout = f.picture.Bare(w, h, pointsFor(w, h))
		f.frames = raster.NewFrames(f.picture.StaticIn(f.layout))
	}
	return f.frames.Draw(f.picture.MovingIn(f.layout, f.moment()))
}

// courtPoints is how many points the shorter side of a court's picture has: discs
// and letters are larger than in print, to be seen from the back of a group.
const courtPoints = 240

func pointsFor(w, h int) float64 { return float64(min(w, h)) / courtPoints }
