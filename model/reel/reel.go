package reel

import (
	"sort"

	"homeside/model/lesson"
	"homeside/model/rally"
	"homeside/model/units"
)

// Reel is a solved reel. It never changes.
type Reel struct {
	Of     lesson.Reel
	Takes  []Take // those that are shown, in their order
	Left   []Left // those that are not
	pieces []piece
	length units.Seconds
}

// Take is a take that is shown.
type Take struct {
	lesson.Take
	Index      int                  // among the takes of the lesson's reel
	Rally      *rally.Rally         // the play
	Other      *rally.Rally         // the play beside it; nil for none
	From, To   units.Seconds        // on the play's clock
	Start, End units.Seconds        // in the clip, with all loops
	once       units.Seconds        // how long one loop is
	pieces     struct{ at, to int } // of the reel's pieces
}

// Reason is why a take is left out.
type Reason uint8

// The reasons.
const (
	NoSuchPlay Reason = iota // the play, or the one beside it, is not there or cannot be solved
	Nothing                  // it ends before it begins
)

// Left is a take that is not shown.
type Left struct {
	Index  int // among the takes of the lesson's reel
	Reason Reason
}

// piece is a stretch of the clip in which the play runs evenly or holds still.
// The pieces follow each other without a gap and have a length.
type piece struct {
	start, end units.Seconds // in the clip
	take       int           // of Reel.Takes, or one of the cards
	from, to   units.Seconds // on the play's clock; the same where it holds
	speed      float64       // 0 holds
	freeze     int           // of the take's freezes; -1 for none
	loop       units.Seconds // when the take's loop began in the clip
}

// The cards stand where a take's number would.
const (
	titleCard = -1
	endCard   = -2
)

// Solve solves a reel of a sound lesson.
func Solve(l lesson.Lesson, r lesson.Reel) *Reel {
	return SolveWith(r, func(play int) (*rally.Rally, error) { return rally.Solve(l, play) })
}

// SolveWith is Solve with the caller's way to solve play i, counted from 0, such
// as one that remembers. An error means that there is no such play.
func SolveWith(r lesson.Reel, solve func(play int) (*rally.Rally, error)) *Reel {
	out := &Reel{Of: r}
	out.card(titleCard, r.Title)
	for i, t := range r.Takes {
		take, ok := newTake(i, t, solve)
		if !ok {
			out.Left = append(out.Left, Left{i, NoSuchPlay})
			continue
		}
		if !out.take(take) {
			out.Left = append(out.Left, Left{i, Nothing})
		}
	}
	out.card(endCard, r.End)
	return out
}

// Length is how long the clip is; 0 if nothing is shown.
func (r *Reel) Length() units.Seconds { return r.length }

// Empty says whether nothing is shown.
func (r *Reel) Empty() bool { return len(r.pieces) == 0 }

func (r *Reel) card(which int, c lesson.Card) {
	r.add(piece{take: which, freeze: -1}, c.Lasts())
}

// add puts a piece of a length behind the others.
func (r *Reel) add(p piece, length units.Seconds) {
	if !(length > 0) {
		return
	}
	p.start = r.length
	r.length += length
	p.end = r.length
	r.pieces = append(r.pieces, p)
}

// pieceAt is the number of the piece that is shown at a moment of a clip that
// shows something.
func (r *Reel) pieceAt(t units.Seconds) int {
	i := sort.Search(len(r.pieces), func(i int) bool { return r.pieces[i].end > t })
	return min(i, len(r.pieces)-1)
}
