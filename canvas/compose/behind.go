package compose

import (
	"math"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/units"
)

// A camera behind a player looks straight along the court, level, with its
// picture shifted up or down instead of tilted: lines across the court and
// people upright stay so on the paper, as in a drawing in one-point perspective.

// Where the camera stands behind a player: our choice. It moves back until the
// play fits into an angle that does not stretch what is at the edges.
const (
	leastBehind  feet    = 10
	mostBehind   feet    = 70
	behindStep   feet    = 1
	eyeHeight    feet    = 8.5  // at leastBehind: over the player's head
	eyeRises     float64 = 0.13 // for each foot farther back
	eyeTall      float64 = 0.6  // higher, as a share, in a picture twice as tall as wide
	inward       float64 = 0.8  // the camera's x as a share of the player's
	widestTan    float64 = 0.72 // of the angle from straight ahead to an edge, about 36 degrees
	framed               = 0.05 // of the picture kept free on each side
	framedBelow  feet    = 0.6  // shown below the feet of the nearest
	mostBallHigh feet    = 14   // a lob may leave the picture
	leastInFront feet    = 4    // before the camera, to count for what must fit
)

// behind changes a layout to the view from behind a player; it does nothing if
// the court is seen from straight above.
func (p Picture) behind(l *Layout) {
	if p.Behind == Nobody {
		return
	}
	at, end := p.stands()
	must := p.mustShow(at.Y, end)
	for back := leastBehind; back <= mostBehind; back += behindStep {
		eye := canvas.Vec{X: at.X * feet(inward), Y: at.Y + back*end.Sign(), Z: l.eyeHigh(back)}
		cam, ok := canvas.LookAt(eye, eye.Add(canvas.Vec{Y: -end.Sign()}))
		if !ok {
			return // a player whose place is no number
		}
		if l.look(cam, must) || back+behindStep > mostBehind {
			l.Clip = canvas.Clip(l.area)
			l.Camera = cam
			return
		}
	}
}

// eyeHigh is the camera's height so far behind a player: higher for a tall
// picture, which it fills with more of the ground.
func (l *Layout) eyeHigh(back feet) feet {
	high := eyeHeight + (back-leastBehind)*feet(eyeRises)
	tall := min(max(l.area.Height()/max(l.area.Width(), 1)-1, 0), 1)
	return high * feet(1+eyeTall*tall)
}

// look fits what must be shown into the layout's area and says whether all of it
// is in front of the camera and near enough to straight ahead.
func (l *Layout) look(cam canvas.Camera, must []canvas.Vec) bool {
	toNet := feet(math.Abs(float64(cam.Eye.Y)))
	v := canvas.View{PxPerFoot: 1, Lens: cam.Lens(toNet)}
	low, high := canvas.Px{X: math.Inf(1), Y: math.Inf(1)}, canvas.Px{X: math.Inf(-1), Y: math.Inf(-1)}
	all := true
	for _, at := range must {
		if cam.Depth(at) < leastInFront {
			all = false // somebody stands behind the camera
			continue
		}
		px := v.VecToPx(at)
		low = canvas.Px{X: min(low.X, px.X), Y: min(low.Y, px.Y)}
		high = canvas.Px{X: max(high.X, px.X), Y: max(high.Y, px.Y)}
	}
	room := canvas.Px{X: l.area.Width() * (1 - 2*framed), Y: l.area.Height() * (1 - 2*framed)}
	v.PxPerFoot = min(room.X/(high.X-low.X), room.Y/(high.Y-low.Y))
	if !(v.PxPerFoot > 0) || math.IsInf(v.PxPerFoot, 0) {
		v.PxPerFoot = 1 // no room, or nothing in front of the camera
		low, high = canvas.Px{}, canvas.Px{}
	}
	mid := canvas.Px{X: (l.area.Min.X + l.area.Max.X) / 2, Y: (l.area.Min.Y + l.area.Max.Y) / 2}
	v.Origin = canvas.Px{X: mid.X - v.PxPerFoot*(low.X+high.X)/2, Y: mid.Y - v.PxPerFoot*(low.Y+high.Y)/2}
	l.Court = v
	wide := max(-low.X, high.X, -low.Y, high.Y) / float64(toNet)
	return all && wide <= widestTan
}

// stands is the place at the serve that the camera is behind of, and its end.
func (p Picture) stands() (court.Point, court.End) {
	f := p.Rally.At(0)
	at := func(id game.Player) court.Point { return f.Players[id].Run.Place }
	id := p.behindWhom()
	if p.Behind != TheServers {
		return at(id), id.Team()
	}
	a, b := at(id), at(id.Partner())
	back := max(a.Y*id.Team().Sign(), b.Y*id.Team().Sign())
	return court.Pt((a.X+b.X)/2, back*id.Team().Sign()), id.Team()
}

// behindWhom is the player that the camera is behind of; of the servers the one
// who serves.
func (p Picture) behindWhom() game.Player {
	server := p.Rally.Strokes[0].By
	switch {
	case p.Behind >= firstPlayer:
		return game.Player(p.Behind-firstPlayer) & 3
	case p.Behind == TheServers:
		return server
	case len(p.Rally.Strokes) > 1:
		return p.Rally.Strokes[1].By
	}
	return p.farthestBack(server.Team().Other())
}

// farthestBack is the player of a team who is farthest from the net at the serve.
func (p Picture) farthestBack(e court.End) game.Player {
	f := p.Rally.At(0)
	a, b := game.PlayerOf(e, 1), game.PlayerOf(e, 2)
	if f.Players[b].Run.Place.Y*e.Sign() > f.Players[a].Run.Place.Y*e.Sign() {
		return b
	}
	return a
}

// showEvery is the time between the moments whose places must be shown.
const showEvery units.Seconds = 0.25

// mustShow is what a camera behind a y of an end has to show: the net, the players
// from head to foot and the ball, until it has passed that y, at every moment of
// the play.
func (p Picture) mustShow(behind feet, end court.End) []canvas.Vec {
	must := []canvas.Vec{{X: -court.PostDistance / 2}, {X: court.PostDistance / 2}}
	for t := p.Rally.From; t <= p.Rally.To; t += showEvery {
		f := p.Rally.At(t)
		for _, who := range f.Players {
			at := who.Run.Place
			must = append(must, canvas.Vec{X: at.X - armLong, Y: at.Y, Z: -framedBelow}, canvas.Vec{X: at.X + armLong, Y: at.Y, Z: tall})
		}
		if ball := f.Ball.Ground(); ball.Y*end.Sign() <= behind*end.Sign() {
			must = append(must, canvas.Above(ball, min(f.Ball.Height().Feet(), mostBallHigh)))
		}
	}
	return must
}
