package reel

import (
	"math"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// lag is how far before and after a moment a camera looks for where a player is:
// it glides where the player starts and stops. Our choice.
const lag units.Seconds = 0.8

// looks is how many moments on either side a camera's place is the mean of.
const looks = 16

// Focus is where a camera points that follows a player at time t of the play: the
// mean of where the player is shortly before and after, weighted by a raised
// cosine, each place first moved into within. It moves smoothly: no speed of it
// exceeds the player's, and no change of it is sudden.
func Focus(r *rally.Rally, id game.Player, t units.Seconds, within court.Rect) court.Point {
	var sum court.Point
	weights := 0.0
	for k := -looks; k <= looks; k++ {
		share := float64(k) / (looks + 1)
		w := 1 + math.Cos(math.Pi*share)
		at := r.Tracks[id].RunAt(min(max(t+lag*units.Seconds(share), r.From), r.To)).Place
		sum = sum.Add(inside(at, within).Times(w))
		weights += w
	}
	return sum.Times(1 / weights)
}

// inside is the nearest point of a rectangle.
func inside(p court.Point, r court.Rect) court.Point {
	return court.Pt(min(max(p.X, r.Min.X), r.Max.X), min(max(p.Y, r.Min.Y), r.Max.Y))
}

// Receiver is who returns the serve: who hits the second shot or, in a play
// without one, the opponent farther from the net at the serve.
func Receiver(r *rally.Rally) game.Player {
	if len(r.Strokes) > 1 {
		return r.Strokes[1].By
	}
	one := game.PlayerOf(r.Strokes[0].By.Team().Other(), 1)
	behind := func(id game.Player) units.Feet { return r.Tracks[id].RunAt(0).Place.Y * id.Team().Sign() }
	if behind(one.Partner()) > behind(one) {
		return one.Partner()
	}
	return one
}
