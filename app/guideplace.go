package app

import "fyne.io/fyne/v2"

// side is where the guide stands beside a control.
type side uint8

const (
	above side = iota
	leftOf
	below
)

// Rooms left free beside a control.
const (
	aboveGap = 44  // over the button to play stands the one that writes plays
	belowGap = 130 // under the button that exports stand the progress and what came of it
)

// beside is where a box stands next to a control: on the side wanted if there is
// room, else in its upper right corner, always within the window.
func beside(on side, corner fyne.Position, of, box, window fyne.Size) fyne.Position {
	at := fyne.NewPos(corner.X, corner.Y-box.Height-aboveGap)
	switch on {
	case leftOf:
		at = fyne.NewPos(corner.X-box.Width-guideGap, corner.Y)
	case below:
		at = fyne.NewPos(corner.X, corner.Y+of.Height+belowGap)
	}
	if at.X < 0 || at.Y < 0 || at.Y+box.Height > window.Height {
		at = fyne.NewPos(corner.X+of.Width-box.Width-guideGap, corner.Y+guideGap)
	}
	return fyne.NewPos(min(max(at.X, 0), max(window.Width-box.Width, 0)), min(max(at.Y, 0), max(window.Height-box.Height, 0)))
}
