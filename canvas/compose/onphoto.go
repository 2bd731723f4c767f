package compose

import (
	"fmt"
	"strconv"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/homography"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// PhotoLayout is a photo of a court with a play over it.
type PhotoLayout struct {
	Width, Height int
	PxPerPoint    float64
	Photo         Area // where the photo is
	Court         canvas.View
	Lines         bool // the court's lines are drawn, to see whether they fit
}

// PhotoAlone is a picture that the photo fills.
func PhotoAlone(width, height int) PhotoLayout {
	return PhotoLayout{
		Width: width, Height: height, PxPerPoint: float64(min(width, height)) / phoneWidth,
		Photo: Area{Max: canvas.Px{X: float64(width), Y: float64(height)}},
	}
}

// Over is the layout with the court where the map of a photo of so many pixels
// has it; about is a point that the photo shows. False if it does not.
func (l PhotoLayout) Over(m homography.Map, width, height int, about court.Point) (PhotoLayout, bool) {
	h := [3][3]float64(m)
	for i := range 3 {
		h[0][i] *= l.Photo.Width() / float64(width)
		h[1][i] *= l.Photo.Height() / float64(height)
	}
	lens, scale, ok := canvas.Plane(h, about)
	l.Court = canvas.View{Origin: l.Photo.Min, PxPerFoot: scale, Lens: lens}
	return l, ok
}

// OnPhoto is the moment t over a photo, in the photo's own perspective: what lies
// on the ground, and upright discs at the players' feet.
func (p Picture) OnPhoto(l PhotoLayout, t units.Seconds) *canvas.Scene {
	s := &canvas.Scene{Width: l.Width, Height: l.Height, PxPerPoint: l.PxPerPoint, Title: p.Rally.Play.Title}
	f := p.Rally.At(t)
	o := overPhoto{p, p.look().Plate}
	g := canvas.Panel{Name: CourtPanel, View: l.Court, Clip: canvas.Clip(l.Photo)}
	if l.Lines {
		o.lines(&g)
	}
	o.ribbons(&g, o.edge)
	o.inPlay(&g, f)
	for _, id := range game.Players {
		o.feet(&g, id, f.Players[id].Run, l)
	}
	p.marks(&g, f, false)
	s.Panels = append(s.Panels, g)
	return s
}

// overPhoto draws with a light edge round what is dark, so that it is seen on
// any photo.
type overPhoto struct {
	Picture
	edge colour
}

func (o overPhoto) lines(g *canvas.Panel) {
	for i, l := range court.Lines {
		g.Add(canvas.Shape{
			ID: "line." + strconv.Itoa(i), Label: l.End.String() + " " + l.Name, Layer: canvas.Lines, Path: canvas.Box(l.Area),
			Style: canvas.Style{Fill: look.Yellow, Stroke: o.look().Ink, Width: canvas.Pts(0.6)},
		})
	}
	end := court.Pt(court.PostDistance/2, 0)
	g.Add(canvas.Shape{
		ID: "net", Label: words.T("below the net"), Layer: canvas.Lines, Path: canvas.Polyline(end.Times(-1), end),
		Style: canvas.Style{Stroke: look.Yellow, Width: canvas.Pts(1.6), Dash: []canvas.Points{4, 3}},
	})
}

// way is a dotted way over the ground over a light one.
func (o overPhoto) way(g *canvas.Panel, id, label string, path canvas.Path) {
	dots := dotted(o.look().Ink)
	under := dots
	under.Stroke, under.Width = o.edge, canvas.Pts(look.DotWidth+2)
	g.Add(
		canvas.Shape{ID: id + ".edge", Layer: canvas.BallPath, Path: path, Style: under},
		canvas.Shape{ID: id, Layer: canvas.BallPath, Label: label, Path: path, Style: dots},
	)
}

// inPlay is the way of the shot in play and the ball's place on the ground.
func (o overPhoto) inPlay(g *canvas.Panel, f rally.Frame) {
	i := o.Rally.ShotAt(f.T)
	if s := o.Rally.Strokes[i]; o.Rally.Reached(s.At) {
		o.way(g, "ball.now", words.OfShot(words.Text("path of %s over the ground"), i), overGround(o.Rally, s.At, o.until(i)))
	}
	g.Add(canvas.Shape{
		ID: "ball", Layer: canvas.BallLayer, Label: words.T("below the ball"), Path: paperDisc(canvas.On(f.Ball.Ground()), look.BallRadius),
		Style: canvas.Style{Fill: o.look().Ball, Stroke: o.look().Ink, Width: canvas.Pts(look.Outline)},
	})
}

// feet is a ring on the ground round a player's feet and an upright disc with the
// initials below them, so that the person in the photo is not hidden; above them
// where the photo ends.
func (o overPhoto) feet(g *canvas.Panel, id game.Player, pose rally.Pose, l PhotoLayout) {
	team, lk := o.look().Teams[id.Team()], o.look()
	at, name := canvas.On(pose.Place), PlayerShape(id)
	ring := canvas.Circle(at, canvas.Ft(feetRing))
	low := at.Shift(0, l.discDown(pose.Place))
	who := o.Rally.Player(id)
	g.Add(
		canvas.Shape{ID: name + ".feet.edge", Layer: canvas.Players, Path: ring, Style: canvas.Style{Stroke: o.edge, Width: canvas.Pts(4)}},
		canvas.Shape{ID: name + ".feet", Layer: canvas.Players, Path: ring, Style: canvas.Style{Stroke: team.Disc, Width: canvas.Pts(2.2)}},
		canvas.Shape{ID: name + ".notch", Layer: canvas.Players, Path: o.notch(pose), Style: canvas.Style{Fill: team.Disc, Stroke: o.edge, Width: canvas.Pts(0.8)}},
	)
	if team.Ring {
		g.Add(canvas.Shape{ID: name + ".ring", Layer: canvas.Players, Path: paperDisc(low, look.RingRadius), Style: canvas.Style{Fill: lk.Plate, Stroke: lk.Ink, Width: canvas.Pts(1)}})
	}
	g.Add(
		canvas.Shape{ID: name, Layer: canvas.Players, Label: fmt.Sprintf("%s, %v", who.Name, id), Path: paperDisc(low, look.DiscRadius),
			Style: canvas.Style{Fill: team.Disc, Stroke: o.edge, Width: canvas.Pts(look.Outline)}},
		canvas.Shape{ID: name + ".initials", Layer: canvas.Players, Text: letters(low, who.Letters(), team.Letter)},
	)
}

// Sizes of a player's sign on a photo.
const (
	feetRing feet          = 1.1
	feetDown canvas.Points = 3
)

// discDown is how far below a player's feet the middle of the disc is, less than 0
// where it stands above them.
func (l PhotoLayout) discDown(at court.Point) canvas.Points {
	const down = look.DiscRadius + feetDown
	lowest := l.Court.ToPx(at).Y + float64(down+look.RingRadius)*l.PxPerPoint
	if lowest > l.Photo.Max.Y {
		return -down
	}
	return down
}

// notch is a wedge on the ground where the player looks.
func (o overPhoto) notch(pose rally.Pose) canvas.Path {
	ahead, right := court.Direction(pose.Facing), court.RightOf(pose.Facing)
	from := pose.Place.Add(ahead.Times(float64(feetRing)))
	return canvas.Polyline(from.Add(ahead.Times(0.8)), from.Add(right.Times(0.45)), from.Sub(right.Times(0.45))).Close()
}

// paperDisc is a circle on the paper, whatever lies under it.
func paperDisc(at canvas.Pos, radius canvas.Points) canvas.Path {
	path := canvas.Circle(canvas.Pos{}, canvas.Pts(radius))
	for i := range path {
		for k, q := range path[i].P {
			path[i].P[k] = at.Shift(q.U, -q.V)
		}
	}
	return path
}
