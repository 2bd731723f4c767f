package game

import (
	"slices"

	"homeside/model/court"
)

// Question is something to ask on court before the serve: anyone may ask then
// who the correct server or receiver is (USA Pickleball Official Rulebook 2026, 5.C).
type Question struct {
	Kind QuestionKind
	Team court.End // the team that is asked; near for AskBegan, which anyone can answer
}

// QuestionKind is what is asked.
type QuestionKind uint8

// The questions, in the order to ask them.
const (
	AskStarter QuestionKind = iota // which of the partners served first for the team in this game
	AskBegan                       // which team served first in this game
	AskServer                      // which of the partners holds the serve: who served this turn's last rally, or stood on the right when it began
)

var questionNames = [3]string{"starter", "began", "server"}

// String is "starter", "began" or "server".
func (k QuestionKind) String() string { return questionNames[k%3] }

// Questions lists what is still missing to know the server and everybody's
// place: nothing when the query has one answer, and nothing whose answer would
// change none of it. All of them answered leave at most one state.
func (q Query) Questions() ([]Question, error) {
	if err := q.Check(); err != nil {
		return nil, err
	}
	known := q.answers()
	var ask []Question
	for _, e := range court.Ends {
		if matters(known, func(b background) background { b.starters[e] = PlayerOf(e, 3-b.starters[e].Number()); return b }) {
			ask = append(ask, Question{Kind: AskStarter, Team: e})
		}
	}
	if matters(known, func(b background) background { b.began = b.began.Other(); return b }) {
		ask = append(ask, Question{Kind: AskBegan})
	}
	for _, places := range known {
		if len(places) > 1 {
			return append(ask, Question{Kind: AskServer, Team: q.Serving}), nil
		}
	}
	return ask, nil
}

// place is what everybody has to know at a serve.
type place struct {
	server Player
	right  [2]Player
}

// answers are the places for each background that has any.
func (q Query) answers() map[background][]place {
	known := map[background][]place{}
	for _, b := range q.backgrounds() {
		for _, s := range q.statesOf(b) {
			p := place{s.server, [2]Player{s.On(court.Near, court.Right), s.On(court.Far, court.Right)}}
			known[b] = append(known[b], p)
		}
	}
	return known
}

// matters says whether changing one thing in a background changes the answer.
func matters(known map[background][]place, change func(background) background) bool {
	for b, places := range known {
		if other, ok := known[change(b)]; ok && !sameMembers(places, other) {
			return true
		}
	}
	return false
}

func sameMembers(a, b []place) bool {
	in := func(s []place) func(place) bool {
		return func(p place) bool { return !slices.Contains(s, p) }
	}
	return !slices.ContainsFunc(a, in(b)) && !slices.ContainsFunc(b, in(a))
}
