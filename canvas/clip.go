package canvas

// Clip is the part of a picture, in pixels, that a panel may draw on. The zero
// Clip is the whole picture. What is cut is cut before any surface sees it: a
// stroke may reach over the edge by half its width. A text is drawn if its
// anchor is inside.
type Clip struct{ Min, Max Px }

func (c Clip) none() bool { return c == Clip{} }

func (c Clip) holds(p Px) bool {
	return c.none() || p.X >= c.Min.X && p.X <= c.Max.X && p.Y >= c.Min.Y && p.Y <= c.Max.Y
}

// holdsAll says whether a path and a margin round it are inside. The handles of
// curves count: they hold the curve between them.
func (c Clip) holdsAll(path []PxStep, margin float64) bool {
	if c.none() {
		return true
	}
	inner := Clip{Px{c.Min.X + margin, c.Min.Y + margin}, Px{c.Max.X - margin, c.Max.Y - margin}}
	for _, s := range path {
		for _, p := range s.P[:[...]int{1, 1, 3, 0}[s.Op]] {
			if !inner.holds(p) {
				return false
			}
		}
	}
	return true
}

// edges are the clip's four edges.
func (c Clip) edges() [4]within {
	return [4]within{
		func(p seen) float64 { return p.x - c.Min.X },
		func(p seen) float64 { return c.Max.X - p.x },
		func(p seen) float64 { return p.y - c.Min.Y },
		func(p seen) float64 { return c.Max.Y - p.y },
	}
}

func (c Clip) cutFills(all []outline) []outline {
	for _, e := range c.edges() {
		all = cutFills(all, e)
	}
	return all
}

func (c Clip) cutStrokes(all []outline) []outline {
	for _, e := range c.edges() {
		all = cutStrokes(all, e)
	}
	return all
}
