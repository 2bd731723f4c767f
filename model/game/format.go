package game

import "fmt"

// Format is a way of scoring doubles. The rally variants are named by what they
// do with the players' sides; all three are played in clubs (USA Pickleball
// Official Rulebook 2026, 14.A is provisional).
type Format uint8

// The formats.
const (
	SideOut       Format = iota // only the serving team scores, both partners serve (4.A, 5.B)
	RallyParity                 // every rally scores; each team's own score places it; the right-hand player serves after a side out (14.A)
	RallyOwnServe               // every rally scores; a team swaps only after a point on its own serve; after a side out even serves from the right, odd from the left
	RallyFixed                  // every rally scores; nobody swaps; even: the right-hand player serves, odd: the left-hand player
)

// Formats lists the formats in order.
var Formats = [4]Format{SideOut, RallyParity, RallyOwnServe, RallyFixed}

var formatNames = [4]string{"side-out", "rally-parity", "rally-own-serve", "rally-fixed"}

// String is the format's name on the command line and in files.
func (f Format) String() string {
	if !f.Known() {
		return fmt.Sprintf("format %d", uint8(f))
	}
	return formatNames[f]
}

// Known says whether f is one of the formats.
func (f Format) Known() bool { return int(f) < len(formatNames) }

// Rally says whether every rally scores a point and a turn has one server.
func (f Format) Rally() bool { return f != SideOut }

// SwapsSides says whether partners ever change sides in this format. Where they
// do not, each player is on the wanted side at every serve from the start, so
// stacking has no purpose.
func (f Format) SwapsSides() bool { return f != RallyFixed }

// ParseFormat reads a format's name.
func ParseFormat(s string) (Format, error) {
	for i, n := range formatNames {
		if s == n {
			return Format(i), nil
		}
	}
	return 0, fmt.Errorf("format %q: want side-out, rally-parity, rally-own-serve or rally-fixed", s)
}
