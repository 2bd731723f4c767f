package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/canvas/look"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Runs shorter than shortRun are not drawn: a step on the spot.
const shortRun units.Feet = 0.5

// TickEvery is the time between the ticks along a run.
const TickEvery units.Seconds = 0.5

// runs draws every player's runs as solid arrows with ticks.
func (p Picture) runs(g *canvas.Panel) {
	for _, id := range game.Players {
		for i, run := range p.Rally.Tracks[id].Runs {
			if run.Way.Length() >= shortRun {
				p.run(g, id, i, run)
			}
		}
	}
}

func (p Picture) run(g *canvas.Panel, id game.Player, i int, run rally.Run) {
	name := fmt.Sprintf("run.%v.%d", id, i)
	ink := p.look().Teams[id.Team()].Run
	who := p.Rally.NameOf(id)
	g.Add(canvas.Shape{
		ID: name, Layer: canvas.Runs,
		Label: words.T("%s runs %s", who, words.Distance(run.Way.Length())),
		Path:  wayPath(run.Way),
		Style: canvas.Style{Stroke: ink, Width: canvas.Pts(look.RunWidth)},
	})
	if head := arrowHead(run.Way, look.ArrowHead); head != nil {
		g.Add(canvas.Shape{ID: name + ".head", Layer: canvas.Runs, Path: head, Style: canvas.Style{Fill: ink}})
	}
	if ticks := p.ticks(id, run); ticks != nil && !p.Show.NoTicks {
		g.Add(canvas.Shape{
			ID: name + ".ticks", Layer: canvas.Runs, Label: words.T("half seconds"), Path: ticks,
			Style: canvas.Style{Stroke: ink, Width: canvas.Pts(look.Outline)},
		})
	}
}

// wayPath is a run's path; a quadratic Bézier's handles raised to a cubic's.
func wayPath(w court.Curve) canvas.Path {
	from, to := w.Ends()
	if !w.Bent() {
		return canvas.Polyline(from, to)
	}
	h := w.Handle()
	return canvas.Path{}.Move(canvas.On(from)).
		Curve(canvas.On(from.Toward(h, 2.0/3)), canvas.On(to.Toward(h, 2.0/3)), canvas.On(to))
}

// arrowHead is a filled head at the end of a way; nil where it has no direction.
func arrowHead(w court.Curve, size canvas.Points) canvas.Path {
	dir, ok := w.DirectionAt(1)
	if !ok {
		return nil
	}
	_, to := w.Ends()
	tip := canvas.On(to)
	back := tip.Along(dir, canvas.Pts(-size))
	side := court.Pt(dir.Y, -dir.X)
	return canvas.Path{}.Move(tip).
		Line(back.Along(side, canvas.Pts(size*0.45))).
		Line(back.Along(side, canvas.Pts(-size*0.45))).Close()
}

// ticks are short strokes across a run where the player is at every half second
// of the rally's clock.
func (p Picture) ticks(id game.Player, run rally.Run) canvas.Path {
	var path canvas.Path
	first := math.Floor(float64(run.From/TickEvery)) + 1
	for k := first; units.Seconds(k)*TickEvery < run.To; k++ {
		at := p.Rally.Tracks[id].At(units.Seconds(k) * TickEvery).Place
		dir, ok := directionNear(run.Way, at)
		if !ok {
			continue
		}
		side := court.Pt(dir.Y, -dir.X)
		path = path.Move(canvas.On(at).Along(side, canvas.Pts(look.TickHalf))).
			Line(canvas.On(at).Along(side, canvas.Pts(-look.TickHalf)))
	}
	return path
}

// directionNear is the direction of the way at a point on it.
func directionNear(w court.Curve, at court.Point) (court.Point, bool) {
	if !w.Bent() {
		return w.DirectionAt(0)
	}
	best, share := units.Feet(math.Inf(1)), 0.0
	for i := range 101 {
		if d := w.At(float64(i) / 100).Distance(at); d < best {
			best, share = d, float64(i)/100
		}
	}
	return w.DirectionAt(share)
}
