package compose

import (
	"homeside/canvas"
	"homeside/model/court"
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
	Title         Area // the play's title and the clock
	Caption       Area
	Column        bool // title and caption stand beside the court, from the top
}

// phoneWidth is the width in points of the shorter side: sizes are chosen for
// the width of a phone held upright.
const phoneWidth = 360

// Sizes of the parts in points.
const (
	titleHeight   = 30
	captionHeight = 46
	columnWidth   = 230
	columnGap     = 14
	margin        = 1 // ft of paper shown round the surface
)

// ForExport divides a still or a clip: the court with a title above and a
// caption below or, where a court upright leaves the room in a wide picture,
// both beside it.
func ForExport(width, height int, turn canvas.Turn, surface court.Rect) Layout {
	l := Layout{Width: width, Height: height, PxPerPoint: float64(min(width, height)) / phoneWidth}
	if turn == canvas.Upright && width > height {
		l.beside(surface)
		return l
	}
	w, h, pt := float64(width), float64(height), l.PxPerPoint
	l.Title = Area{canvas.Px{}, canvas.Px{X: w, Y: titleHeight * pt}}
	l.Caption = Area{canvas.Px{Y: h - captionHeight*pt}, canvas.Px{X: w, Y: h}}
	l.Court = canvas.Fit(surface.Grow(margin), turn, canvas.Px{Y: l.Title.Max.Y}, canvas.Px{X: w, Y: l.Caption.Min.Y})
	return l
}

// beside puts the column of words to the right of an upright court and the two
// together in the middle.
func (l *Layout) beside(surface court.Rect) {
	l.Column = true
	w, h, pt := float64(l.Width), float64(l.Height), l.PxPerPoint
	shown := surface.Grow(margin)
	courtWidth := min(h*float64(shown.Width()/shown.Height()), w*0.6)
	words := min(columnWidth*pt, w-courtWidth-columnGap*pt)
	left := (w - courtWidth - columnGap*pt - words) / 2
	l.Court = canvas.Fit(shown, canvas.Upright, canvas.Px{X: left}, canvas.Px{X: left + courtWidth, Y: h})
	x := left + courtWidth + columnGap*pt
	l.Title = Area{canvas.Px{X: x}, canvas.Px{X: x + words, Y: h / 3}}
	l.Caption = Area{canvas.Px{X: x, Y: h / 3}, canvas.Px{X: x + words, Y: h}}
}

// ForWindow divides the editor's picture: the court and, below it, its captions.
// pxPerPoint is the screen's.
func ForWindow(width, height int, turn canvas.Turn, surface court.Rect, pxPerPoint float64) Layout {
	w, h := float64(width), float64(height)
	foot := h - captionHeight*pxPerPoint
	l := Bare(width, int(foot), turn, surface, pxPerPoint)
	l.Height = height
	l.Caption = Area{canvas.Px{Y: foot}, canvas.Px{X: w, Y: h}}
	return l
}

// Bare is a picture of nothing but the court.
func Bare(width, height int, turn canvas.Turn, surface court.Rect, pxPerPoint float64) Layout {
	return Layout{
		Width: width, Height: height, PxPerPoint: pxPerPoint,
		Court: canvas.Fit(surface.Grow(margin), turn, canvas.Px{}, canvas.Px{X: float64(width), Y: float64(height)}),
	}
}

// paper is the view of a panel in pixels from the area's corner: one foot is one
// pixel, y is negative downward.
func paper(corner canvas.Px) canvas.View { return canvas.View{Origin: corner, PxPerFoot: 1} }
