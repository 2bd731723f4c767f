package look

import "image/color"

// Night is the look of a dark room and a projector: a dark court with pale lines
// and the same bright marks.
var Night = Look{
	Paper:   rgb(0x12191C),
	Surface: rgb(0x1B2427),
	Court:   rgb(0x20302F),
	Kitchen: rgb(0x2B4041),
	Line:    rgb(0xA9B8BA),
	Net:     rgb(0xE6EEF0),
	Ink:     rgb(0xEAF1F3),
	Quiet:   rgb(0xB6C2C6),
	Plate:   rgb(0x12191C),
	Ball:    Yellow,
	Shadow:  color.NRGBA{0x00, 0x00, 0x00, 0x90},
	Rim:     rgb(0x0C1214),
	Head:    brightRust,
	Handle:  Sky,
	Part:    Mauve,
	Below:   Orange,
	Chosen:  Sky,
	Zone:    Green,
	Spot:    Orange,
	Loop:    rgb(0x124D70),
	Teams: [2]TeamLook{
		{Disc: Blue, Letter: white, Run: Sky},
		{Disc: Orange, Letter: dark, Run: Orange, Ring: true},
	},
	Fault:   SignLook{brightRust, dark},
	Late:    SignLook{Sky, dark},
	Caution: SignLook{Yellow, dark},
	Advice:  SignLook{rgb(0xEAF1F3), dark},
	Cue:     SignLook{Sky, dark},
}

var brightRust = rgb(0xF28C4E) // Rust, bright enough for a line on every ground
