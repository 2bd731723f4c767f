package reel

import (
	"math"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/rally"
	"homeside/model/units"
)

// lag is how far before and after a moment of the clip a camera looks for where a
// player is: it glides where the player starts and stops, and where the picture
// holds. Our choice.
const lag units.Seconds = 0.8

// looks is how many moments on either side a camera's place is the mean of.
const looks = 16

// Focus is where a camera points at time t of the clip, in a take, that follows a
// player of one of its plays: the mean of where the player is in the clip shortly
// before and after, weighted by a raised cosine, each place first moved into
// within. Within a loop of the take it moves smoothly, whether the play runs or holds.
func (r *Reel) Focus(t units.Seconds, of *rally.Rally, id game.Player, within court.Rect) court.Point {
	n := r.pieceAt(min(max(t, 0), r.length))
	var sum court.Point
	weights := 0.0
	for k := -looks; k <= looks; k++ {
		share := float64(k) / (looks + 1)
		w := 1 + math.Cos(math.Pi*share)
		at := min(max(r.timeNear(n, t+lag*units.Seconds(share)), of.From), of.To)
		sum = sum.Add(inside(of.Tracks[id].RunAt(at).Place, within).Times(w))
		weights += w
	}
	return sum.Times(1 / weights)
}

// timeNear is the play's time at a time of the clip near piece n, kept within the
// loop that the piece is of.
func (r *Reel) timeNear(n int, t units.Seconds) units.Seconds {
	loop := r.pieces[n].loop
	for t < r.pieces[n].start && r.pieces[n].start > loop {
		n--
	}
	for t > r.pieces[n].end && n+1 < len(r.pieces) && r.pieces[n+1].take == r.pieces[n].take && r.pieces[n+1].loop == loop {
		n++
	}
	return r.pieces[n].at(t)
}

// inside is the nearest point of a rectangle.
func inside(p court.Point, r court.Rect) court.Point {
	return court.Pt(min(max(p.X, r.Min.X), r.Max.X), min(max(p.Y, r.Min.Y), r.Max.Y))
}
