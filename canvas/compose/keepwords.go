package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
)

// keepWords moves the labels of a scene into the area where words stand, each with
// the plate or the sign under it; an empty area leaves all where they are.
func keepWords(s *canvas.Scene, words Area) {
	if words.Empty() {
		return
	}
	for i := range s.Panels {
		for k := range s.Panels[i].Shapes {
			keepWord(s, &s.Panels[i], k, words)
		}
	}
}

// keepWord moves a shape of a panel, if it is a label. One of something outside the
// picture, or outside the panel's clip, stays there: it is not seen.
func keepWord(s *canvas.Scene, g *canvas.Panel, k int, words Area) {
	t := g.Shapes[k].Text
	if t == nil || g.Shapes[k].Layer != canvas.Labels {
		return
	}
	of := t.At
	of.Right, of.Down = 0, 0
	if !whole(s.Width, s.Height).holds(g.View.Place(of, s.PxPerPoint)) || g.Clip != (canvas.Clip{}) && !Area(g.Clip).holds(g.View.Place(t.At, s.PxPerPoint)) {
		return
	}
	b := lineOf(g.View, t, s.PxPerPoint)
	right := intoRange(b.Min.X, b.Max.X, words.Min.X, words.Max.X) / s.PxPerPoint
	down := intoRange(b.Min.Y, b.Max.Y, words.Min.Y, words.Max.Y) / s.PxPerPoint
	if right == 0 && down == 0 {
		return
	}
	t.At = t.At.Shift(canvas.Points(right), canvas.Points(down))
	if k > 0 && under(g.Shapes[k-1], g.Shapes[k]) {
		shift(g.Shapes[k-1].Path, canvas.Points(right), canvas.Points(down))
	}
}

// holds says whether a place is in the area.
func (a Area) holds(p canvas.Px) bool {
	return p.X >= a.Min.X && p.X <= a.Max.X && p.Y >= a.Min.Y && p.Y <= a.Max.Y
}

// lineOf is the room that a line of text takes in the picture.
func lineOf(v canvas.View, t *canvas.Text, pxPerPoint float64) Area {
	at, em := v.Place(t.At, pxPerPoint), float64(t.Size)*pxPerPoint
	wide := look.Width(t.Text, t.Bold) * em
	left := at.X - wide/2
	switch t.Align {
	case canvas.Start:
		left = at.X
	case canvas.Finish:
		left = at.X - wide
	}
	return Area{canvas.Px{X: left, Y: at.Y - rises*em}, canvas.Px{X: left + wide, Y: at.Y + falls*em}}
}

// intoRange is how far from..to has to move to lie in low..high; one that is too long
// begins where that does.
func intoRange(from, to, low, high float64) float64 {
	return max(min(0, high-to), low-from)
}

// under says whether a shape is what a label stands on.
func under(s, label canvas.Shape) bool {
	return s.ID == label.ID+".plate" || s.ID+".number" == label.ID
}

// shift moves a path on the paper.
func shift(path canvas.Path, right, down canvas.Points) {
	for i := range path {
		for k := range path[i].P {
			path[i].P[k] = path[i].P[k].Shift(right, down)
		}
	}
}
