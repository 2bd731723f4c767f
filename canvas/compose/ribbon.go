package compose

import (
	"fmt"
	"math"

	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

// Sizes of a run that lies on the ground, to scale, so that it grows narrow with
// the distance.
const (
	ribbonHalf   feet = 0.11
	ribbonHead   feet = 1.1  // but at most half the run
	ribbonTick   feet = 0.42 // half its length
	ribbonTickUp feet = 0.06 // half its width
	ribbonApart  feet = 0.8  // ticks nearer to one another or to the start are left out
	ribbonSteps       = 24   // of a bend
	ribbonBarb        = 0.44 // half the head's width as a share of its length
)

// ribbons draws every player's runs as flat arrows that lie on the ground, with
// ticks, and with an edge if it has a colour.
func (p Picture) ribbons(g *canvas.Panel, edge colour) {
	for _, id := range game.Players {
		for i, run := range p.Rally.Tracks[id].Runs {
			if run.Way.Length() >= shortRun {
				p.ribbon(g, id, i, run, edge)
			}
		}
	}
}

func (p Picture) ribbon(g *canvas.Panel, id game.Player, i int, run rally.Run, edge colour) {
	name := fmt.Sprintf("run.%v.%d", id, i)
	ink := canvas.Style{Fill: p.look().Teams[id.Team()].Run, Stroke: edge, Width: canvas.Pts(0.8)}
	g.Add(canvas.Shape{
		ID: name, Layer: canvas.Runs, Style: ink, Path: ribbonPath(run.Way),
		Label: words.T("%s runs %s", p.Rally.NameOf(id), words.Distance(run.Way.Length())),
	})
	if head := flatHead(run.Way); head != nil {
		g.Add(canvas.Shape{ID: name + ".head", Layer: canvas.Runs, Style: ink, Path: head})
	}
	if ticks := p.flatTicks(id, run); ticks != nil && !p.Show.NoTicks {
		g.Add(canvas.Shape{ID: name + ".ticks", Layer: canvas.Runs, Style: ink, Label: words.T("half seconds"), Path: ticks})
	}
}

// ribbonPath is a strip along a way, up to the arrow's head.
func ribbonPath(w court.Curve) canvas.Path {
	steps := 1
	if w.Bent() {
		steps = ribbonSteps
	}
	end := 1 - float64(headLong(w)*0.8/w.Length())
	var right, left []court.Point
	for i := range steps + 1 {
		share := end * float64(i) / float64(steps)
		dir, ok := w.DirectionAt(share)
		if !ok {
			continue
		}
		side := court.Pt(dir.Y, -dir.X).Times(float64(ribbonHalf))
		at := w.At(share)
		right, left = append(right, at.Add(side)), append(left, at.Sub(side))
	}
	for i := range left {
		right = append(right, left[len(left)-1-i])
	}
	if len(right) == 0 {
		return nil
	}
	return canvas.Polyline(right...).Close()
}

// flatHead is an arrow's head on the ground; nil where the way has no direction.
func flatHead(w court.Curve) canvas.Path {
	dir, ok := w.DirectionAt(1)
	if !ok {
		return nil
	}
	_, tip := w.Ends()
	long := float64(headLong(w))
	back, side := tip.Sub(dir.Times(long)), court.Pt(dir.Y, -dir.X).Times(long*ribbonBarb)
	return canvas.Polyline(tip, back.Add(side), back.Sub(side)).Close()
}

func headLong(w court.Curve) feet { return min(ribbonHead, w.Length()/2) }

// flatTicks are ticks on the ground, where those of a run from above are and are not too close.
func (p Picture) flatTicks(id game.Player, run rally.Run) canvas.Path {
	var path canvas.Path
	last, _ := run.Way.Ends()
	first := math.Floor(float64(run.From/TickEvery)) + 1
	for k := first; units.Seconds(k)*TickEvery < run.To; k++ {
		at := p.Rally.Tracks[id].At(units.Seconds(k) * TickEvery).Place
		dir, ok := directionNear(run.Way, at)
		if !ok || at.Distance(last) < ribbonApart {
			continue
		}
		last = at
		long := court.Pt(dir.Y, -dir.X).Times(float64(ribbonTick))
		wide := dir.Times(float64(ribbonTickUp))
		path = append(path, canvas.Polyline(at.Add(long).Add(wide), at.Add(long).Sub(wide), at.Sub(long).Sub(wide), at.Sub(long).Add(wide)).Close()...)
	}
	return path
}
