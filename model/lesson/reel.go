package lesson

import (
	"slices"

	"homeside/model/units"
)

// Reel is a running order of takes that make one clip. Its zero value shows
// nothing.
type Reel struct {
	Name  string
	Title Card // before the first take
	Takes []Take
	End   Card   // after the last take
	Logo  Corner // where the lesson's logo stands
}

// Card is a page of words that is shown by itself. One without words is not shown.
type Card struct {
	Heading string
	Text    string        // smaller, below the heading
	Length  units.Seconds // how long it is shown; 0 means DefaultCard
}

// DefaultCard is long enough for a heading and a line at the three words a
// second that subtitles allow (common practice).
const DefaultCard units.Seconds = 2.5

// Shown says whether the card has words.
func (c Card) Shown() bool { return c.Heading != "" || c.Text != "" }

// Lasts is how long the card is shown.
func (c Card) Lasts() units.Seconds {
	switch {
	case !c.Shown():
		return 0
	case c.Length == 0:
		return DefaultCard
	}
	return c.Length
}

// Take is a stretch of a play as it is filmed.
type Take struct {
	Play    int     // number of the play, counted from 1
	Beside  int     // number of a play shown beside it on the same clock; 0 shows none
	From    *Anchor // where it begins; nil means at the play's own start
	To      *Anchor // where it ends; nil means at the play's own end
	Speed   float64 // 0.5 is half speed; 0 means 1
	Slows   []Slow  // stretches at another speed; of two that overlap the later in the list counts
	Freezes []Freeze
	Loops   int // how many times it is shown; 0 means once
	Camera  Camera
	Caption string // shown all the time, below what the play says by itself
}

// Slow is a stretch of a take at another speed.
type Slow struct {
	Span  Span
	Speed float64 // 0.25 is a quarter of match speed, whatever the take's own
}

// Freeze holds the picture at a moment of a take.
type Freeze struct {
	At      Anchor
	Length  units.Seconds
	Caption string // shown while it holds; empty shows none
}

// Rate is the take's speed, 1 where it does not say.
func (t Take) Rate() float64 {
	if t.Speed == 0 {
		return 1
	}
	return t.Speed
}

// Times is how many times the take is shown, once where it does not say.
func (t Take) Times() int { return max(t.Loops, 1) }

// WithTake is the reel with take i replaced.
func (r Reel) WithTake(i int, t Take) Reel {
	r.Takes = slices.Clone(r.Takes)
	r.Takes[i] = t
	return r
}

// WithReel is the lesson with reel i replaced.
func (l Lesson) WithReel(i int, r Reel) Lesson {
	l.Reels = slices.Clone(l.Reels)
	l.Reels[i] = r
	return l
}
