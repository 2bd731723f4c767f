package compose

import (
	"slices"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// stand draws what stands on a court that is seen from behind a player or flies
// over it: the farthest first, so that the nearer hides it.
func (p Picture) stand(g *canvas.Panel, l Layout, f rally.Frame) {
	things := []thing{{away: awayFrom(l, court.Point{}), draw: func() { p.standingNet(g) }}}
	for _, id := range game.Players {
		pose := f.Players[id].Run
		things = append(things, thing{awayFrom(l, pose.Place), func() { p.figure(g, l, f, id) }})
	}
	ball := f.Ball.Ground()
	things = append(things, thing{awayFrom(l, ball), func() { p.flyingBall(g, l, f) }})
	p.flightInPlay(g, f)
	slices.SortStableFunc(things, func(a, b thing) int { return a.compare(b) })
	for _, t := range things {
		t.draw()
	}
	p.meanings(g, l, f)
}

// thing is what stands on the court, drawn when what is farther away is.
type thing struct {
	away feet // from the camera along the court
	draw func()
}

func (a thing) compare(b thing) int {
	switch {
	case a.away > b.away:
		return -1
	case a.away < b.away:
		return 1
	}
	return 0
}

// awayFrom is how far from the camera a place is along the court: the way in
// which the net stands between near and far.
func awayFrom(l Layout, p court.Point) feet { return l.Camera.Depth(canvas.Above(p, 0)) }

// standing says whether the court is seen in perspective.
func (l Layout) standing() bool { return l.Court.Lens.On() && l.Camera != (canvas.Camera{}) }

// Sizes of a net that stands.
const (
	tapeHigh  feet = 2.0 / 12 // USA Pickleball Official Rulebook 2026, 3.B.5: a 2 in tape; from memory
	netFoot   feet = 0.1      // our choice: a net nearly touches the ground
	postWide  feet = 0.25     // 3 in, 3.B.2; from memory
	meshAlpha      = 0x46     // the court shows through
	netSteps       = 8        // of the top edge from post to post
)

// standingNet is the net from post to post with its tape; the court shows
// through it.
func (p Picture) standingNet(g *canvas.Panel) {
	lk := p.look()
	mesh, end := lk.Net, court.PostDistance/2
	mesh.A = meshAlpha
	top := func(drop feet) []canvas.Vec {
		var line []canvas.Vec
		for i := range netSteps + 1 {
			x := end * (2*feet(i)/netSteps - 1)
			line = append(line, canvas.Vec{X: x, Z: court.NetHeight(x) - drop})
		}
		return line
	}
	bottom := []canvas.Vec{{X: end, Z: netFoot}, {X: -end, Z: netFoot}}
	under := top(tapeHigh)
	slices.Reverse(under)
	g.Add(
		canvas.Shape{ID: "net", Label: words.T("net"), Layer: canvas.Players, Path: inSpace(append(top(0), bottom...)...).Close(), Style: canvas.Style{Fill: mesh}},
		canvas.Shape{
			ID: "net.tape", Layer: canvas.Players, Label: words.T("top of the net: 36 in high at the sidelines, 34 in at its middle"),
			Path: inSpace(append(top(0), under...)...).Close(), Style: canvas.Style{Fill: lk.Plate, Stroke: lk.Net, Width: canvas.Pts(0.6)},
		},
	)
	for i, x := range []feet{-end, end} {
		g.Add(canvas.Shape{
			ID: "post." + strconv.Itoa(i), Label: words.T("net post"), Layer: canvas.Players,
			Path:  inSpace(canvas.Vec{X: x}, canvas.Vec{X: x, Z: court.NetAtPosts}),
			Style: canvas.Style{Stroke: lk.Net, Width: canvas.Ft(postWide)},
		})
	}
}

// inSpace is the open path through places above the court.
func inSpace(at ...canvas.Vec) canvas.Path {
	var path canvas.Path
	for i, v := range at {
		if i == 0 {
			path = path.Move(canvas.At(v))
		} else {
			path = path.Line(canvas.At(v))
		}
	}
	return path
}

// disc is a circle that faces the camera.
func disc(cam canvas.Camera, centre canvas.Vec, radius feet) canvas.Path {
	path := canvas.Circle(canvas.Pos{}, canvas.Ft(1))
	for i := range path {
		for k, q := range path[i].P {
			path[i].P[k] = canvas.At(cam.Facing(centre, q.X*radius, q.Y*radius))
		}
	}
	return path
}

// ballShown is the radius a ball is drawn with: about twice its own, so that it
// is seen across the court.
const ballShown feet = 0.26

// flyingBall is the ball at its height and its shadow on the ground below it.
func (p Picture) flyingBall(g *canvas.Panel, l Layout, f rally.Frame) {
	lk := p.look()
	g.Add(canvas.Shape{
		ID: "shadow", Layer: canvas.Shadows, Label: words.T("shadow of the ball"),
		Path: canvas.Circle(canvas.On(f.Ball.Ground()), canvas.Ft(ballShown*1.2)), Style: canvas.Style{Fill: lk.Shadow},
	}, canvas.Shape{
		ID: "ball", Layer: canvas.Players, Label: words.T("ball"),
		Path:  disc(l.Camera, canvas.Above(f.Ball.Ground(), f.Ball.Height().Feet()), ballShown),
		Style: canvas.Style{Fill: lk.Ball, Stroke: lk.Ink, Width: canvas.Pts(look.Outline)},
	})
}

// flightInPlay is the flight of the shot in play through the air, dotted.
func (p Picture) flightInPlay(g *canvas.Panel, f rally.Frame) {
	r := p.Rally
	i := r.ShotAt(f.T)
	s := r.Strokes[i]
	if !r.Reached(s.At) {
		return
	}
	to := p.until(i)
	n := max(int((to-s.At)/pathStep), 1)
	at := make([]canvas.Vec, n+1)
	for k := range at {
		b := r.BallAt(s.At + (to-s.At)*units.Seconds(k)/units.Seconds(n))
		at[k] = canvas.Above(b.Ground(), b.Height().Feet())
	}
	g.Add(canvas.Shape{
		ID: "flight.now", Layer: canvas.Shadows, Label: words.OfShot(words.Text("flight of %s"), i), Path: inSpace(at...), Style: dotted(p.look().Ink),
	})
}
