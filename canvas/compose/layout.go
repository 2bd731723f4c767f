package compose

import (
	"homeside/canvas"
	"homeside/model/court"
	"homeside/model/units"
)

// Area is a rectangle of the picture in pixels. The zero Area shows nothing.
type Area struct{ Min, Max canvas.Px }

// Width is the area's extent to the right.
func (a Area) Width() float64 { return a.Max.X - a.Min.X }

// Height is the area's extent downward.
func (a Area) Height() float64 { return a.Max.Y - a.Min.Y }

// Empty says whether nothing fits into the area.
func (a Area) Empty() bool { return a.Width() <= 0 || a.Height() <= 0 }

// Layout divides a picture.
type Layout struct {
	Width, Height int
	PxPerPoint    float64
	Court         canvas.View
	Rise          canvas.View // of the height strip: its ground is at height 0
	RiseTop       units.Feet  // the height it shows; 0 shows no strip
	Title         Area        // the play's title and the clock
	Caption       Area
	Words         Area          // words stand in it; if it is empty, anywhere
	Column        bool          // title and caption stand beside the court, from the top
	Shown         court.Rect    // what of the surface is shown from straight above
	Clip          canvas.Clip   // of court and height strip
	Camera        canvas.Camera // of a court seen in perspective

	end  court.End
	area Area // of court and height strip
}

// phoneWidth is the width in points of the shorter side: sizes are chosen for
// the width of a phone held upright.
const phoneWidth = 360

// Sizes of the parts in points.
const (
	titleHeight   = 48
	captionHeight = 46
	titleRoom     = 32.5 // two lines of a title from their top, and a little air
	captionRoom   = 34   // two lines of a caption to their foot
	columnWidth   = 230
	columnGap     = 14
)

// Sizes of the parts in feet.
const (
	margin  units.Feet = 1 // paper shown round the surface
	riseGap units.Feet = 1 // between the surface's margin and the height strip
)

// ForExport divides a still or a clip of the picture: the court with a title above and a
// caption below or, where a court upright leaves the room in a wide picture,
// both beside it. The height strip stands beside an upright court; a lying one
// needs the room itself. Words stay in the safe part of the picture; in an upright one
// their areas do, too, as players of clips cover the rest.
func (p Picture) ForExport(width, height int) Layout {
	l := p.Sight.forExport(width, height, p.surface(), p.rise())
	p.behind(&l)
	return l
}

// ForScreen divides a picture as ForExport does, for a screen that nobody covers.
func (p Picture) ForScreen(width, height int) Layout {
	l := p.Sight.within(whole(width, height), Area{}, width, height, p.surface(), p.rise())
	p.behind(&l)
	return l
}

// rise is the height that an exported picture's strip shows.
func (p Picture) rise() units.Feet { return max(RiseOf(p.Rally), p.Rise) }

// whole is all of a picture.
func whole(width, height int) Area {
	return Area{Max: canvas.Px{X: float64(width), Y: float64(height)}}
}

func (s Sight) forExport(width, height int, surface court.Rect, rise units.Feet) Layout {
	free, safe := whole(width, height), Safe(width, height)
	if upright(width, height) {
		free = safe
	}
	return s.within(free, safe, width, height, surface, rise)
}

// within divides a picture whose title and caption have their areas in one part, which
// counts where they stand above and below the court, and their words in another.
func (s Sight) within(free, words Area, width, height int, surface court.Rect, rise units.Feet) Layout {
	l := Layout{Words: words, Width: width, Height: height, PxPerPoint: float64(min(width, height)) / phoneWidth * s.letters(), RiseTop: rise, Shown: s.shown(surface), end: s.End}
	if s.Turn == canvas.Lying || s.Behind != Nobody {
		l.RiseTop = 0
	}
	if s.Turn == canvas.Upright && s.Behind == Nobody && width > height {
		l.beside()
		return s.clipped(l)
	}
	l.above(free)
	l.below(free)
	l.fit(s.Turn, Area{canvas.Px{Y: l.Title.Max.Y}, canvas.Px{X: float64(width), Y: l.Caption.Min.Y}})
	return s.clipped(l)
}

// above lays the title over the court: as high as usual, or as its lines need below
// where words may begin.
func (l *Layout) above(free Area) {
	foot := free.Min.Y + titleHeight*l.PxPerPoint
	if !l.Words.Empty() {
		foot = max(foot, l.Words.Min.Y+titleRoom*l.PxPerPoint)
	}
	l.Title = Area{free.Min, canvas.Px{X: free.Max.X, Y: foot}}
}

// below lays the caption under the court, as above does the title.
func (l *Layout) below(free Area) {
	top := free.Max.Y - captionHeight*l.PxPerPoint
	if !l.Words.Empty() {
		top = min(top, l.Words.Max.Y-captionRoom*l.PxPerPoint)
	}
	l.Caption = Area{canvas.Px{X: free.Min.X, Y: top}, free.Max}
}

// lines is the part of an area that lines of text may take.
func (l Layout) lines(a Area) Area {
	a.Min.X, a.Max.X = a.Min.X+textMargin*l.PxPerPoint, a.Max.X-textMargin*l.PxPerPoint
	if l.Words.Empty() {
		return a
	}
	return Area{
		Min: canvas.Px{X: max(a.Min.X, l.Words.Min.X), Y: max(a.Min.Y, l.Words.Min.Y)},
		Max: canvas.Px{X: min(a.Max.X, l.Words.Max.X), Y: min(a.Max.Y, l.Words.Max.Y)},
	}
}

// largeText is how much larger a picture's letters, and the marks that hold
// them, are with large text.
const largeText = 1.25

func (s Sight) letters() float64 {
	if s.Large {
		return largeText
	}
	return 1
}

// beside puts the column of words to the right of an upright court and the two
// together in the middle.
func (l *Layout) beside() {
	l.Column = true
	w, h, pt := float64(l.Width), float64(l.Height), l.PxPerPoint
	shown := l.axes()
	courtWidth := min(h*float64(shown.Width()/shown.Height()), w*0.7)
	words := min(columnWidth*pt, w-courtWidth-columnGap*pt)
	left := (w - courtWidth - columnGap*pt - words) / 2
	l.fit(canvas.Upright, Area{canvas.Px{X: left}, canvas.Px{X: left + courtWidth, Y: h}})
	x := left + courtWidth + columnGap*pt
	l.Title = Area{canvas.Px{X: x}, canvas.Px{X: x + words, Y: h / 3}}
	l.Caption = Area{canvas.Px{X: x, Y: h / 3}, canvas.Px{X: x + words, Y: h}}
}

// ForWindow divides the editor's picture: the court, the height strip beside it
// and the captions below. pxPerPoint is the screen's.
func ForWindow(width, height int, turn canvas.Turn, surface court.Rect, rise units.Feet, pxPerPoint float64) Layout {
	return Sight{Turn: turn}.forWindow(width, height, surface, rise, pxPerPoint)
}

// ForWindow divides the editor's view of the picture, its height strip as high
// as said.
func (p Picture) ForWindow(width, height int, rise units.Feet, pxPerPoint float64) Layout {
	l := p.Sight.forWindow(width, height, p.surface(), rise, pxPerPoint)
	p.behind(&l)
	return l
}

func (s Sight) forWindow(width, height int, surface court.Rect, rise units.Feet, pxPerPoint float64) Layout {
	w, h := float64(width), float64(height)
	foot := h - captionHeight*pxPerPoint
	l := Layout{Width: width, Height: height, PxPerPoint: pxPerPoint, RiseTop: rise, Shown: s.shown(surface), end: s.End}
	if s.Behind != Nobody {
		l.RiseTop = 0
	}
	l.fit(s.Turn, Area{canvas.Px{}, canvas.Px{X: w, Y: foot}})
	l.Caption = Area{canvas.Px{Y: foot}, canvas.Px{X: w, Y: h}}
	return s.clipped(l)
}

// Bare is a picture of nothing but the court.
func Bare(width, height int, turn canvas.Turn, surface court.Rect, pxPerPoint float64) Layout {
	return Sight{Turn: turn}.bare(width, height, surface, pxPerPoint)
}

// Bare is the picture with nothing but the court.
func (p Picture) Bare(width, height int, pxPerPoint float64) Layout {
	l := p.Sight.bare(width, height, p.surface(), pxPerPoint)
	p.behind(&l)
	return l
}

func (s Sight) bare(width, height int, surface court.Rect, pxPerPoint float64) Layout {
	l := Layout{Width: width, Height: height, PxPerPoint: pxPerPoint, Shown: s.shown(surface), end: s.End}
	l.fit(s.Turn, Area{canvas.Px{}, canvas.Px{X: float64(width), Y: float64(height)}})
	return s.clipped(l)
}

// clipped keeps what is not shown of half a court out of the rest of the picture.
func (s Sight) clipped(l Layout) Layout {
	if s.Half == BothHalves || s.Behind != Nobody {
		return l
	}
	r := l.axes()
	a, b := l.Court.ToPx(r.Min), l.Court.ToPx(r.Max)
	l.Clip = canvas.Clip{Min: canvas.Px{X: min(a.X, b.X), Y: min(a.Y, b.Y)}, Max: canvas.Px{X: max(a.X, b.X), Y: max(a.Y, b.Y)}}
	return l
}

// axes is what of the court's axes is shown: the surface and, beyond its far
// x, the height strip at the same scale; beyond its near x if the far team is at
// the bottom.
func (l *Layout) axes() court.Rect {
	r := l.Shown.Grow(margin)
	if l.RiseTop <= 0 {
		return r
	}
	if strip := riseGap + l.RiseTop + margin; l.end == court.Far {
		r.Min.X -= strip
	} else {
		r.Max.X += strip
	}
	return r
}

// fit places court and height strip in an area.
func (l *Layout) fit(turn canvas.Turn, a Area) {
	l.area = a
	l.Court = canvas.FitFrom(l.end, l.axes(), turn, a.Min, a.Max)
	if l.RiseTop <= 0 {
		return
	}
	beyond := margin + riseGap
	if turn == canvas.Lying {
		beyond += l.RiseTop // height goes up the page, against the court's x
	}
	ground := l.Shown.Max.X + beyond
	if l.end == court.Far {
		ground = l.Shown.Min.X - beyond
	}
	l.Rise = l.Court
	l.Rise.Origin = l.Court.ToPx(court.Pt(ground, 0))
}

// ground is the panel with the court.
func (l Layout) ground() canvas.Panel {
	return canvas.Panel{Name: CourtPanel, View: l.Court, Clip: l.Clip}
}

// paper is the view of a panel in pixels from the area's corner: one foot is one
// pixel, y is negative downward.
func paper(corner canvas.Px) canvas.View { return canvas.View{Origin: corner, PxPerFoot: 1} }
