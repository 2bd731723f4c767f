package game

import "homeside/model/court"

// Verdict is what is wrong with a serve or a return, judged by who played it
// from where. The mildest comes first.
type Verdict uint8

// The verdicts.
const (
	Correct               Verdict = iota
	WrongCourt                    // the correct server, from the wrong court
	RightPlaceWrongServer         // the partner of the correct server, from where that player correctly is: the places look right
	WrongServer                   // the partner of the correct server, from the wrong court as well
	WrongTeam                     // the other team has the serve
)

var verdictNames = [5]string{"correct", "wrong court", "right place, wrong server", "wrong server", "wrong team"}

// String is the verdict in words.
func (v Verdict) String() string { return verdictNames[v%5] }

// Served judges who served from which court in this state.
func (s State) Served(by Player, from court.Side) Verdict {
	switch {
	case by.Team() != s.serving:
		return WrongTeam
	case by == s.server && from == s.From():
		return Correct
	case by == s.server:
		return WrongCourt
	case from == s.SideOf(by):
		return RightPlaceWrongServer
	default:
		return WrongServer
	}
}

// Served judges who served from which court where only the query is known: the
// mildest verdict over all states that agree with it. The query's own Server is
// not used.
func (q Query) Served(by Player, from court.Side) (Verdict, error) {
	q.Server = nil
	states, err := q.Who()
	if err != nil {
		return Correct, err
	}
	mildest := WrongTeam
	for _, s := range states {
		mildest = min(mildest, s.Served(by, from))
	}
	return mildest, nil
}
