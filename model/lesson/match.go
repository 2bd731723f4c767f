package lesson

import (
	"errors"
	"fmt"
	"slices"

	"homeside/model/court"
	"homeside/model/game"
)

// Match is one game kept rally by rally. Its zero value is a game nobody has
// begun to keep. Who serves from where at each rally is not kept: it follows.
type Match struct {
	First   *court.End // the team that served first in the game; nil means nobody said
	From    *Opening   // the serve at which the keeping begins; nil means the game's first
	Rallies []MatchRally
}

// Opening is a serve in the middle of a game.
type Opening struct {
	Call    game.Call
	Serving court.End
	Server  game.Player
}

// MatchRally is one rally of a match with its tally.
type MatchRally struct {
	Winner     court.End
	Formations [2]Formation // by court.End: what each pair did
	Return     ReturnTo
	Play       int // the play that was shown, counted from 1; 0, or a play that is gone, means none
}

// Formation is what a pair did in a rally.
type Formation uint8

// The formations of a tally.
const (
	FormationUnsaid Formation = iota
	Ordinary                  // everyone stays on the side the score gives
	Stacked                   // the partners stood on one side and took their wanted sides
	Switched                  // ordinary places, then the partners crossed
	Stayed                    // a switch was shown or called off: they stayed
	Poached                   // the partner left early for the volley
)

var formationNames = [...]string{"unsaid", "ordinary", "stack", "switch", "stay", "poach"}

// Formations lists the formations in order, unsaid first.
var Formations = [...]Formation{FormationUnsaid, Ordinary, Stacked, Switched, Stayed, Poached}

// String is the formation's name in a lesson file.
func (f Formation) String() string { return formationNames[int(f)%len(formationNames)] }

// ParseFormation reads a formation's name.
func ParseFormation(s string) (Formation, error) {
	return parse[Formation]("formation", s, formationNames[:])
}

// ReturnTo is where the return of serve went.
type ReturnTo uint8

// The places of a return.
const (
	ReturnUnsaid ReturnTo = iota
	ToMover               // to the server who changes halves, or to the one who was to be covered
	ToMiddle
	DownLine
	Short
)

var returnNames = [...]string{"unsaid", "mover", "middle", "line", "short"}

// ReturnsTo lists the places of a return in order, unsaid first.
var ReturnsTo = [...]ReturnTo{ReturnUnsaid, ToMover, ToMiddle, DownLine, Short}

// String is the place's name in a lesson file.
func (r ReturnTo) String() string { return returnNames[int(r)%len(returnNames)] }

// ParseReturnTo reads the name of a return's place.
func ParseReturnTo(s string) (ReturnTo, error) {
	return parse[ReturnTo]("return", s, returnNames[:])
}

// Begun says whether the match is being kept.
func (m Match) Begun() bool { return m.From != nil || m.First != nil || len(m.Rallies) > 0 }

// Winners is who won the rallies, as game.ParseWinners reads it.
func (m Match) Winners() string {
	s := make([]byte, len(m.Rallies))
	for i, r := range m.Rallies {
		s[i] = "nf"[r.Winner&1]
	}
	return string(s)
}

// WithRally is the match with rally i replaced, or added where i is their number.
func (m Match) WithRally(i int, r MatchRally) Match {
	m.Rallies = slices.Clone(m.Rallies)
	if i == len(m.Rallies) {
		m.Rallies = append(m.Rallies, r)
		return m
	}
	m.Rallies[i] = r
	return m
}

// UpTo is the match with the first n rallies only.
func (m Match) UpTo(n int) Match {
	m.Rallies = slices.Clip(m.Rallies[:min(n, len(m.Rallies))])
	return m
}

// Count is how often something came up and how often its pair won the rally.
type Count struct{ Rallies, Won int }

// ByFormation counts a team's rallies by what the pair did in them.
func (m Match) ByFormation(team court.End) [len(formationNames)]Count {
	var counts [len(formationNames)]Count
	for _, r := range m.Rallies {
		counts[r.Formations[team]].add(r.Winner == team)
	}
	return counts
}

func (c *Count) add(won bool) {
	c.Rallies++
	if won {
		c.Won++
	}
}

// Settings are those of the lesson's match. Where nobody said who served first
// the near team did.
func (l Lesson) Settings() game.Settings {
	set := game.Settings{Format: l.Scoring.Format, To: l.Scoring.To, Starters: l.Starters()}
	if l.Match.First != nil {
		set.First = *l.Match.First
	}
	return set
}

// Starters are the teams' starting servers, by court.End.
func (l Lesson) Starters() [2]game.Player {
	return [2]game.Player{l.Teams[court.Near].StarterOf(court.Near), l.Teams[court.Far].StarterOf(court.Far)}
}

// QueryOf is what is known of a play's serve. A team that has not said who
// started is unsure of it.
func (l Lesson) QueryOf(p Play) game.Query {
	q := game.Query{
		Format: l.Scoring.Format, To: l.Scoring.To, Starters: l.Starters(),
		Unsure: [2]bool{l.Teams[court.Near].Starter == 0, l.Teams[court.Far].Starter == 0},
		Call:   p.Situation.Call, Serving: p.Situation.Serving, Began: l.Match.First,
	}
	if server, ok := p.Server(); ok {
		q.Server = &server
	}
	return q
}

// ErrNoServe marks a serve that no game comes to.
var ErrNoServe = errors.New("no game comes to this serve")

// Game is the lesson's match as the score sees it: a state before each rally
// and one after the last. Rallies after the end of the game are not counted.
// The error says why no game can have begun as the match says.
func (l Lesson) Game() (game.Match, error) {
	if l.Match.From == nil {
		return game.Replay(l.Settings(), l.Match.Winners())
	}
	start, err := l.StateAt(*l.Match.From)
	if err != nil {
		return game.Match{}, fmt.Errorf("the match: %w", err)
	}
	m := game.NewMatch(start)
	for _, r := range l.Match.Rallies {
		m = m.Won(r.Winner)
	}
	return m, nil
}

// StateAt is the state of the lesson's game at a serve. Where the call leaves
// more than one open, as only rally-own-serve can, it is the first of them.
func (l Lesson) StateAt(o Opening) (game.State, error) {
	q := game.Query{
		Format: l.Scoring.Format, To: l.Scoring.To, Starters: l.Starters(),
		Call: o.Call, Serving: o.Serving, Server: &o.Server, Began: l.Match.First,
	}
	states, err := q.Who()
	if err != nil {
		return game.State{}, err
	}
	if len(states) == 0 {
		return game.State{}, fmt.Errorf("%w: at %v %v does not hold the serve", ErrNoServe, o.Call, l.NameOf(o.Server))
	}
	return states[0], nil
}

// NameOf is a player's name, or near1 and so on where there is none.
func (l Lesson) NameOf(id game.Player) string {
	if n := l.Player(id).Name; n != "" {
		return n
	}
	return id.String()
}

// NameOfTeam is a team's name, or "the near team" where there is none.
func (l Lesson) NameOfTeam(e court.End) string {
	if n := l.Team(e).Name; n != "" {
		return n
	}
	return "the " + e.String() + " team"
}

// OpeningOf is the serve that a play begins with; false if it has none.
func (p Play) OpeningOf() (Opening, bool) {
	server, ok := p.Server()
	return Opening{Call: p.Situation.Call, Serving: p.Situation.Serving, Server: server}, ok
}

// Fits says whether the play is served at a state: by its call, team and server.
func (p Play) Fits(s game.State) bool {
	o, ok := p.OpeningOf()
	return ok && !s.Over() && o == Opening{Call: s.Call(), Serving: s.Serving(), Server: s.Server()}
}

// ServeIndex is the number of a player's keyframe at the serve: the last one
// that hangs on its contact without coming after it, or else the first.
func (p Play) ServeIndex(id game.Player) (index int) {
	for i, k := range p.Tracks[id] {
		if k.At.Event == ContactOf(0) && k.At.Offset <= 0 {
			index = i
		}
	}
	return index
}

// AtServe is a player's keyframe at the serve in a sound play.
func (p Play) AtServe(id game.Player) Keyframe { return p.Tracks[id][p.ServeIndex(id)] }
