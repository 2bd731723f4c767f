package look

import "image/color"

// Daylight is the look of a page: a pale court with dark lines, for print,
// phones and bright rooms.
var Daylight = Look{
	Paper:   white,
	Surface: rgb(0xF1EEE6),
	Court:   rgb(0xE2EBE7),
	Kitchen: rgb(0xD2DFDB),
	Line:    rgb(0x4D5A5E),
	Net:     rgb(0x1E2A2E),
	Ink:     dark,
	Quiet:   rgb(0x566166),
	Plate:   white,
	Ball:    Yellow,
	Shadow:  color.NRGBA{0x16, 0x23, 0x2A, 0x50},
	Rim:     dark,
	Head:    deepRust,
	Handle:  Sky,
	Part:    rgb(0xA04A7C), // Mauve, deep enough for a line on every ground
	Below:   Orange,
	Chosen:  Blue,
	Zone:    rgb(0x00805C), // Green and Orange, deep enough for a line on every ground
	Spot:    rgb(0xA86400),
	Loop:    Sky,
	Teams: [2]TeamLook{
		{Disc: Blue, Letter: white, Run: rgb(0x005A8C)},
		{Disc: Orange, Letter: dark, Run: rgb(0x8A5A00), Ring: true},
	},
	Fault:   SignLook{deepRust, white},
	Late:    SignLook{Sky, dark},
	Caution: SignLook{Yellow, dark},
	Advice:  SignLook{white, dark},
	Cue:     SignLook{Sky, dark},
}

var (
	white    = rgb(0xFFFFFF)
	dark     = rgb(0x16232A)
	deepRust = rgb(0xB84E00) // Rust, deep enough for white letters and for a line on every ground
)
