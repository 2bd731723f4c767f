package lesson

import "homeside/model/court"

// MarkKind is what a mark is.
type MarkKind uint8

// The kinds of mark.
const (
	TextMark MarkKind = iota
	ArrowMark
	ObstacleMark  // a fence, a bench, a post: it stands there all the time, whatever the span
	ZoneMark      // a rectangle along the lines
	ConeMark      // a training cone
	MeasureMark   // a line with its length
	HighlightMark // a circle that draws the eye
)

var markNames = [...]string{"text", "arrow", "obstacle", "zone", "cone", "measure", "highlight"}

// MarkKinds lists the kinds in order.
var MarkKinds = [...]MarkKind{TextMark, ArrowMark, ObstacleMark, ZoneMark, ConeMark, MeasureMark, HighlightMark}

// String is the kind's name in a lesson file.
func (k MarkKind) String() string { return markNames[int(k)%len(markNames)] }

// ParseMark reads a kind's name.
func ParseMark(s string) (MarkKind, error) { return parse[MarkKind]("mark", s, markNames[:]) }

// HasTip says whether a mark of this kind reaches from its place to a tip.
func (k MarkKind) HasTip() bool {
	switch k {
	case ArrowMark, ZoneMark, MeasureMark, HighlightMark:
		return true
	}
	return false
}

// Mark is something drawn on the court for a while.
type Mark struct {
	Kind  MarkKind
	Span  Span
	Place court.Point // where it stands or starts; a corner of a zone, the middle of a highlight
	Tip   court.Point // where an arrow or a measure ends; the zone's other corner, a point of the highlight's rim
	Text  string
}

// Always is the span of a whole play, the time before the serve included.
func Always() Span {
	return Span{From: Anchor{Offset: -MaxOffset}, To: At(TheEnd)}
}
