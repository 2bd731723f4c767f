package look

import (
	"image/color"

	"homeside/canvas"
)

// Okabe and Ito, Color Universal Design (2008).
var (
	Orange = rgb(0xE69F00)
	Sky    = rgb(0x56B4E9)
	Green  = rgb(0x009E73)
	Yellow = rgb(0xF0E442)
	Blue   = rgb(0x0072B2)
	Rust   = rgb(0xD55E00)
	Mauve  = rgb(0xCC79A7)
)

// Look is one way to draw a court.
type Look struct {
	Paper   color.NRGBA // outside the surface
	Surface color.NRGBA // the run-off
	Court   color.NRGBA
	Kitchen color.NRGBA
	Line    color.NRGBA // painted lines
	Net     color.NRGBA
	Ink     color.NRGBA // outlines and text
	Quiet   color.NRGBA // secondary text, ticks
	Plate   color.NRGBA // behind captions
	Ball    color.NRGBA
	Shadow  color.NRGBA
	Rim     color.NRGBA // round the bright fills: ball, signs, handles
	Head    color.NRGBA // the moment shown, and who is pointed out
	Handle  color.NRGBA // what the hand can take hold of
	Part    color.NRGBA // where two plays first differ
	Below   color.NRGBA // bars that go below 0
	Chosen  color.NRGBA // round what is chosen, and what the hand moves
	Zone    color.NRGBA // round a zone that is marked
	Spot    color.NRGBA // round what is highlighted
	Loop    color.NRGBA // a stretch of time that is played again and again
	Teams   [2]TeamLook // by court.End

	Fault, Late, Caution, Advice SignLook
	Cue                          SignLook // a signal on the rally strip
}

// SignLook is a filled sign with a letter on it. Signs of different meaning
// differ by outline too; that is compose's matter.
type SignLook struct{ Fill, Letter color.NRGBA }

// TeamLook tells a team's discs from the other's, also without colour.
type TeamLook struct {
	Disc   color.NRGBA
	Letter color.NRGBA
	Run    color.NRGBA
	Ring   bool // a second outline round the disc
}

// Sizes in points.
const (
	DiscRadius   canvas.Points = 9
	RingRadius   canvas.Points = 11
	BallRadius   canvas.Points = 3.4
	PaddleLength canvas.Points = 8
	PaddleWidth  canvas.Points = 3.2
	NotchLength  canvas.Points = 4.5

	Outline   canvas.Points = 1.4
	RunWidth  canvas.Points = 1.8
	TickHalf  canvas.Points = 3
	ArrowHead canvas.Points = 7
	DotWidth  canvas.Points = 2
	DotGap    canvas.Points = 4.5

	LetterSize  canvas.Points = 9
	LabelSize   canvas.Points = 9
	CaptionSize canvas.Points = 13
	TitleSize   canvas.Points = 13
)

func rgb(v uint32) color.NRGBA {
	return color.NRGBA{uint8(v >> 16), uint8(v >> 8), uint8(v), 0xFF}
}
