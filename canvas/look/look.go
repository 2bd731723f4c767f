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
	Teams   [2]TeamLook // by court.End
}

// TeamLook tells a team's discs from the other's, also without colour.
type TeamLook struct {
	Disc   color.NRGBA
	Letter color.NRGBA
	Run    color.NRGBA
	Ring   bool // a second outline round the disc
}

// Daylight is the look of a page: a pale court with dark lines, for print,
// phones and bright rooms.
var Daylight = Look{
	Paper:   rgb(0xFFFFFF),
	Surface: rgb(0xF1EEE6),
	Court:   rgb(0xE2EBE7),
	Kitchen: rgb(0xD2DFDB),
	Line:    rgb(0x4D5A5E),
	Net:     rgb(0x1E2A2E),
	Ink:     rgb(0x16232A),
	Quiet:   rgb(0x566166),
	Plate:   rgb(0xFFFFFF),
	Ball:    Yellow,
	Shadow:  color.NRGBA{0x16, 0x23, 0x2A, 0x50},
	Teams: [2]TeamLook{
		{Disc: Blue, Letter: rgb(0xFFFFFF), Run: rgb(0x005A8C)},
		{Disc: Orange, Letter: rgb(0x16232A), Run: rgb(0x8A5A00), Ring: true},
	},
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
