package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// pathStep is the time between two points of a drawn ball path: a drive bends
// less than an inch between them.
const pathStep units.Seconds = 0.05

// ballPath draws where the ball goes over the ground, dotted, and its bounces.
func (p Picture) ballPath(g *canvas.Panel) {
	r := p.Rally
	for i, s := range r.Strokes {
		name := lesson.ShotName(i)
		if !r.Reached(s.At) {
			return
		}
		g.Add(canvas.Shape{
			ID: "ball." + name, Layer: canvas.BallPath, Label: words.T("path of the ball: %s", words.Shot(i)),
			Path:  overGround(r, s.At, p.until(i)),
			Style: faint(p.look().Quiet),
		})
		if bounce := s.At + s.Planned.Duration; !s.Volleyed && r.Reached(bounce) {
			g.Add(p.bounce(name, i, s.Planned.End.Ground()))
		}
	}
}

func dotted(ink colour) canvas.Style {
	return canvas.Style{Stroke: ink, Width: canvas.Pts(look.DotWidth), Dash: []canvas.Points{0.5, look.DotGap}, Round: true}
}

// faint is the dotted line of a shot that is not in play.
func faint(quiet colour) canvas.Style {
	return canvas.Style{Stroke: quiet, Width: canvas.Pts(look.DotWidth * 0.6), Dash: []canvas.Points{0.5, look.DotGap}, Round: true}
}

// inPlay draws the path of the shot in play over the faint one.
func (p Picture) inPlay(g *canvas.Panel, f rally.Frame) {
	r := p.Rally
	i := r.ShotAt(f.T)
	if s := r.Strokes[i]; r.Reached(s.At) {
		g.Add(canvas.Shape{
			ID: "ball.now", Layer: canvas.BallPath, Label: words.T("path of the ball in play"),
			Path:  overGround(r, s.At, p.until(i)),
			Style: dotted(p.look().Ink),
		})
	}
}

// until is how far the path of a shot is drawn: to where it is met, the last
// one to its bounce, one into the net to there.
func (p Picture) until(i int) units.Seconds {
	r := p.Rally
	s := r.Strokes[i]
	met := s.At + s.Met
	if i == len(r.Strokes)-1 {
		met = s.At + s.Planned.Duration
	}
	return min(met, r.Stopped())
}

func (p Picture) bounce(name string, i int, at court.Point) canvas.Shape {
	return canvas.Shape{
		ID: "bounce." + name, Layer: canvas.BallPath, Label: words.OfShot(words.Text("bounce of %s"), i),
		Path:  canvas.Circle(canvas.On(at), canvas.Pts(look.BallRadius)),
		Style: canvas.Style{Stroke: p.look().Ink, Width: canvas.Pts(1.1)},
	}
}

// overGround is the ball's way over the ground from one time to another.
func overGround(r *rally.Rally, from, to units.Seconds) canvas.Path {
	n := max(int((to-from)/pathStep), 1)
	path := make(canvas.Path, 0, n+1)
	for i := range n + 1 {
		at := canvas.On(r.BallAt(from + (to-from)*units.Seconds(i)/units.Seconds(n)).Ground())
		if i == 0 {
			path = path.Move(at)
		} else {
			path = path.Line(at)
		}
	}
	return path
}

// The ball seen from above: how much it grows and how far its shadow falls away
// for every foot of height. They show height, not optics.
const (
	BallGrows  = 0.05
	ShadowFall = 0.9 // points, to the right and downward
	MostRise   = 20  // ft, above which neither grows
)

// ball draws the ball, the larger the higher it is, over its shadow.
func (p Picture) ball(g *canvas.Panel, f rally.Frame) {
	at := canvas.On(f.Ball.Ground())
	lk := p.look()
	z := min(float64(f.Ball.Height().Feet()), MostRise)
	size := look.BallRadius * canvas.Points(1+BallGrows*z)
	fall := canvas.Points(ShadowFall * z)
	g.Add(canvas.Shape{
		ID: "shadow", Layer: canvas.Shadows, Label: words.T("shadow of the ball"),
		Path:  canvas.Circle(at.Shift(fall, fall), canvas.Pts(look.BallRadius)),
		Style: canvas.Style{Fill: lk.Shadow},
	}, canvas.Shape{
		ID: "ball", Layer: canvas.BallLayer, Label: words.T("ball"),
		Path:  canvas.Circle(at, canvas.Pts(size)),
		Style: canvas.Style{Fill: lk.Ball, Stroke: lk.Rim, Width: canvas.Pts(look.Outline)},
	})
}
