package roster

import (
	"fmt"
	"slices"
	"strings"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
)

// Roster is the whole document. Its zero value has no pairs.
type Roster struct {
	Title string
	Notes string
	Pairs []Pair
}

// Pair is two partners. Which of them is drawn as the first does not matter to
// the score: who starts is the lesson's to say.
type Pair struct {
	Name    string
	Notes   string
	Signs   lesson.Signs // as of a lesson's team
	Players [2]lesson.Player
}

// MaxPairs is the most pairs of a roster, far more than a club has.
const MaxPairs = 1000

// PairOf is a lesson's near or far team as a pair.
func PairOf(l lesson.Lesson, e court.End) Pair {
	t := l.Team(e)
	return Pair{Name: t.Name, Signs: t.Signs, Players: t.Players}
}

// In is the lesson with the pair as its near or far team. Which of the two
// started stays as the lesson says, and so do the plays.
func (p Pair) In(l lesson.Lesson, e court.End) lesson.Lesson {
	t := &l.Teams[e] // Teams is an array: l is a copy
	t.Name, t.Signs, t.Players = p.Name, p.Signs, p.Players
	return l
}

// With is the roster with a pair put in the place of the first one of its name,
// whose notes stay where it brings none, or behind the last.
func (r Roster) With(p Pair) Roster {
	r.Pairs = slices.Clone(r.Pairs)
	for i, have := range r.Pairs {
		if have.Name == p.Name {
			if p.Notes == "" {
				p.Notes = have.Notes
			}
			r.Pairs[i] = p
			return r
		}
	}
	r.Pairs = append(r.Pairs, p)
	return r
}

// Without is the roster without pair i.
func (r Roster) Without(i int) Roster {
	r.Pairs = slices.Delete(slices.Clone(r.Pairs), i, i+1)
	return r
}

// Validate lists what lies outside a lesson's bounds, in the order of the
// document, with pointers into the roster's file; nil for a sound roster.
func Validate(r Roster) []lesson.Problem {
	problems := lesson.Validate(lesson.Lesson{Title: r.Title, Notes: r.Notes})
	if n := len(r.Pairs); n > MaxPairs {
		problems = append(problems, lesson.Problem{Pointer: "/pairs", Text: fmt.Sprintf("%d entries, want at most %d", n, MaxPairs)})
	}
	for i, p := range r.Pairs {
		for _, wrong := range lesson.Validate(p.In(lesson.Lesson{Notes: p.Notes}, court.Near)) {
			wrong.Pointer = fmt.Sprintf("/pairs/%d", i) + inPair.Replace(wrong.Pointer)
			problems = append(problems, wrong)
		}
	}
	return problems
}

// inPair turns a pointer into a lesson's near team into one into a pair.
var inPair = strings.NewReplacer(
	"/teams/near/players/"+game.Near1.String(), "/players/first",
	"/teams/near/players/"+game.Near2.String(), "/players/second",
	"/teams/near", "",
)
