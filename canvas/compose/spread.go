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

// spread is where one shot of a rally lands.
type spread struct {
	shot int
	at   rally.Spread
}

// spreadsOf simulates the shots that the coach lets scatter.
func spreadsOf(r *rally.Rally) []spread {
	var out []spread
	for i, s := range r.Play.Shots {
		if s.Error == nil {
			continue
		}
		if at, ok := r.SpreadOf(i, *s.Error); ok {
			out = append(out, spread{i, at})
		}
	}
	return out
}

// spreads draws the ellipses that hold 95 % of the landings.
func (p Picture) spreads(g *canvas.Panel) {
	for _, s := range p.scatter {
		label := words.T("95 %% of the landings: %s", words.Shot(s.shot))
		if s.at.InNet > 0 {
			label += words.T("; %.0f %% do not pass the net", 100*float64(s.at.InNet)/float64(s.at.Total))
		}
		g.Add(canvas.Shape{
			ID: "spread." + lesson.ShotName(s.shot), Layer: canvas.Lines, Label: label,
			Path:  ellipse(s.at.Centre, s.at.Direction, s.at.Long, s.at.Short),
			Style: canvas.Style{Fill: p.look().Shadow, Stroke: p.look().Ink, Width: canvas.Pts(look.Outline), Dash: []canvas.Points{5, 3}},
		})
	}
}

// ellipse is the closed path of an ellipse whose long axis looks a way.
func ellipse(centre court.Point, direction units.Degrees, long, short units.Feet) canvas.Path {
	ahead, right := court.Direction(direction), court.RightOf(direction)
	path := canvas.Circle(canvas.Pos{}, canvas.Ft(1))
	for i := range path {
		for k, p := range path[i].P {
			at := centre.Add(right.Times(float64(p.X * short))).Add(ahead.Times(float64(p.Y * long)))
			path[i].P[k] = canvas.On(at)
		}
	}
	return path
}
