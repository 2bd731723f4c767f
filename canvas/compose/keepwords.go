package compose

import (
	"homeside/canvas"
	"homeside/canvas/look"
)

// keepWords moves the labels of a scene into the area where words stand, each with
// the plate or the sign under it; an empty area leaves all where they are.
func (l Layout) keepWords(s *canvas.Scene) {
	if l.Words.Empty() {
		return
	}
	for i := range s.Panels {
		words := l.Words
		if name := s.Panels[i].Name; name == CourtPanel || name == HeightPanel {
			words = l.between()
		}
		for k := range s.Panels[i].Shapes {
			keepWord(s, &s.Panels[i], k, words)
		}
	}
}

// tagAir is what a tag's plate needs above and below its words.
const tagAir canvas.Points = 4

// between is the area where words stand without what title and caption cover.
func (l Layout) between() Area {
	a := l.Words
	if l.Column {
		return a
	}
	air := float64(tagAir) * l.PxPerPoint
	a.Min.Y, a.Max.Y = max(a.Min.Y, l.Title.Max.Y+air), min(a.Max.Y, l.Caption.Min.Y-air)
	return a
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
	right := canvas.Points(intoRange(b.Min.X, b.Max.X, words.Min.X, words.Max.X) / s.PxPerPoint)
	down := canvas.Points(intoRange(b.Min.Y, b.Max.Y, words.Min.Y, words.Max.Y) / s.PxPerPoint)
	if right == 0 && down == 0 {
		return
	}
	if down < -mostLift {
		down = min(down, overIt(t.At))
	}
	t.At = t.At.Shift(right, down)
	if k > 0 && under(g.Shapes[k-1], g.Shapes[k]) {
		shift(g.Shapes[k-1].Path, right, down)
	}
}

// mostLift is how far a label under a mark may be lifted, in points, before it hides it.
const mostLift canvas.Points = 4

// overIt is how far down a label has to go that stands under its mark to stand as far
// above it, less than 0. It is 0 for others.
func overIt(at canvas.Pos) canvas.Points {
	if below := at.Down - look.LabelSize*0.36; below > 0 && below <= tagDown {
		return -2*below - 2 // a cone is higher than it is deep
	}
	return 0
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
