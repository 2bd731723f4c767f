package edit

import (
	"homeside/model/game"
	"homeside/model/lesson"
)

// Mirrored is the play seen in a mirror that stands on the centreline.
func Mirrored(p lesson.Play) lesson.Play { return p.Mirrored() }

// Turned is the play from the other end.
func Turned(p lesson.Play) lesson.Play { return p.Turned() }

// Renamed is the play with each player's part taken by another, by game.Player.
func Renamed(p lesson.Play, part [4]game.Player) lesson.Play { return p.Renamed(part) }
