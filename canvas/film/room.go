package film

import (
	"homeside/canvas"
	"homeside/canvas/compose"
	"homeside/model/lesson"
)

// freeOf is what words and logo leave free of a picture for a take's courts. In a
// wide picture of one court they stand over it or beside it, whichever leaves it
// larger.
func (f *Film) freeOf(t take, p place, width, height int) compose.Area {
	safe, em := Safe(width, height), CaptionEm(width, height)
	edge := float64(width) * edgeShare
	free := compose.Area{Min: canvas.Px{X: edge}, Max: canvas.Px{X: float64(width) - edge, Y: float64(height)}}
	if height > width {
		free.Min.Y, free.Max.Y = safe.Min.Y, safe.Max.Y // what a player of clips covers
	}
	if p.rows > 0 {
		free.Max.Y = captionTop(safe, em, p.rows) - em/4
	}
	if t.signals() && p.turn == canvas.Upright {
		free.Max.Y -= signRoom * f.scene(width, height).PxPerPoint
	}
	corners := f.corners(t, p.rows, width, height)
	below := less(free, corners, em/4, false)
	if height >= width || len(t.pictures) > 1 {
		return below
	}
	beside := less(free, corners, em/4, true)
	fit := func(a compose.Area) float64 { return canvas.Fit(t.needed, p.turn, a.Min, a.Max).PxPerFoot }
	if fit(beside) > fit(below) {
		return beside
	}
	return below
}

// edgeShare is the share of a picture's width that the whole court leaves on
// either side, so that no player's disc is cut.
const edgeShare = compose.SafeMargin / 2

// signRoom is what a signal behind a player on the baseline needs below what
// is shown beyond it, in points of the whole picture.
const signRoom = 28

// signals says whether a signal is given in the take.
func (t take) signals() bool {
	for _, pic := range t.pictures {
		for _, c := range pic.Rally.Play.Cues {
			if c.Kind == lesson.Signal && pic.Rally.TimeAt(c.Span.From) <= t.To && pic.Rally.TimeAt(c.Span.To) >= t.From {
				return true
			}
		}
	}
	return false
}

// corners are what stands in the corners of a picture: the logo, and the speed if
// the take has another than a match.
func (f *Film) corners(t take, rows, width, height int) []compose.Area {
	var all []compose.Area
	if logo := f.logoArea(f.overCaptions(rows, width, height), width, height); !logo.Empty() {
		all = append(all, logo)
	}
	if t.slow() && !f.tagAmongNames(t) {
		safe, em := Safe(width, height), labelEm(width, height)
		tag := compose.Area{Min: safe.Min, Max: canvas.Px{X: safe.Min.X + em*speedWide, Y: safe.Min.Y + em*labelHigh}}
		if f.tagOnTheRight() {
			tag.Min.X, tag.Max.X = safe.Max.X-em*speedWide, safe.Max.X
		}
		all = append(all, tag)
	}
	return all
}

// less is an area without what stands in its corners: with beside it gives up
// columns for them, else rows.
func less(free compose.Area, corners []compose.Area, gap float64, beside bool) compose.Area {
	mid := middle(free)
	for _, c := range corners {
		at := middle(c)
		switch {
		case beside && at.X < mid.X:
			free.Min.X = max(free.Min.X, c.Max.X+gap)
		case beside:
			free.Max.X = min(free.Max.X, c.Min.X-gap)
		case at.Y < mid.Y:
			free.Min.Y = max(free.Min.Y, c.Max.Y+gap)
		default:
			free.Max.Y = min(free.Max.Y, c.Min.Y-gap)
		}
	}
	return free
}

// overCaptions is the safe part above so many lines of captions.
func (f *Film) overCaptions(rows, width, height int) compose.Area {
	safe := Safe(width, height)
	if rows > 0 {
		safe.Max.Y = captionTop(safe, CaptionEm(width, height), rows)
	}
	return safe
}

// slow says whether any of the take is not at match speed.
func (t take) slow() bool { return t.Rate() != 1 || len(t.Slows) > 0 }

// speedWide is more than the width of the widest speed in its ems.
const speedWide = 3.6

// tagOnTheRight says whether the logo has the speed's corner.
func (f *Film) tagOnTheRight() bool { return f.logo != nil && f.Reel.Of.Logo == lesson.TopLeft }

// tagAmongNames says whether the speed stands in the row of the names of two
// plays: where a logo has a row above them, it stands there.
func (f *Film) tagAmongNames(t take) bool {
	logo := f.logo != nil && (f.Reel.Of.Logo == lesson.TopLeft || f.Reel.Of.Logo == lesson.TopRight)
	return len(t.pictures) > 1 && !logo
}
