package film

import (
	"math"

	"homeside/canvas/compose"
)

// Safe is the part of a picture that words and logo stay in, as in clips of a play.
func Safe(width, height int) compose.Area { return compose.Safe(width, height) }

// A phone held upright that a picture fills in width or height, in millimetres:
// a common phone (our assumption: 6.1 in, 9:19.5).
const (
	phoneWideMm = 65.0
	phoneTallMm = 141.0
)

// readAtMm is how far a phone is held: 32 cm for reading in a study of 129 users
// (Bababekova, Rosenfield, Hue and Huang 2011; from memory).
const readAtMm = 322.0

// Heights of capital letters in minutes of arc: ISO 9241-303 asks for at least 16
// and recommends 20 to 22 (from memory).
const (
	leastArc   = 16.0
	captionArc = 20.0
	wideArc    = 17.0 // in a picture wider than tall, where larger lines leave no room for the court
)

// capital is a capital letter's height as a share of the em of the fonts.
const capital = 0.72

// mostEm is the largest em as a share of a picture's shorter side, so that three
// lines leave room for the court in any picture.
const mostEm = 0.1

// emFor is the em in pixels of letters whose capitals are seen under an angle on
// a phone held upright.
func emFor(width, height int, arcMinutes float64) float64 {
	mmPerPx := math.Min(phoneWideMm/float64(width), phoneTallMm/float64(height))
	em := readAtMm * math.Tan(arcMinutes/60*math.Pi/180) / capital / mmPerPx
	return math.Min(em, mostEm*math.Min(float64(width), float64(height)))
}

// CaptionEm is the size of captions in pixels.
func CaptionEm(width, height int) float64 {
	if width > height {
		return emFor(width, height, wideArc)
	}
	return emFor(width, height, captionArc)
}
