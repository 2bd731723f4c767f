package game

import (
	"cmp"
	"fmt"
	"slices"

	"homeside/model/court"
)

// Query is what is known of one serve. A call does not tell who serves: the
// partner who holds the serve depends on the score at which the turn began.
type Query struct {
	Format   Format
	To       int       // points that win; 0 means 11
	Starters [2]Player // by court.End; the zero player means the team's first-named
	Unsure   [2]bool   // nobody knows who started for the team; its entry in Starters is not used
	Call     Call
	Serving  court.End
	Server   *Player    // who is about to serve; nil means unknown
	Began    *court.End // the team that served first in the game; nil means unknown
}

// Check says what makes the query impossible, in one line: settings, a score
// that no game comes to, a server of the other team. A server who cannot hold
// the serve at this call is no error: Who then answers with no state.
func (q Query) Check() error {
	set := Settings{Format: q.Format, To: q.To, Starters: q.Starters}
	if err := set.Check(); err != nil {
		return err
	}
	if q.Serving > court.Far || q.Began != nil && *q.Began > court.Far {
		return fmt.Errorf("serving team: want near or far")
	}
	if q.Server != nil {
		if err := checkTeam(*q.Server, q.Serving); err != nil {
			return fmt.Errorf("server: %w", err)
		}
	}
	if err := q.Call.Check(q.Format, q.To); err != nil {
		return err
	}
	if q.Format.Rally() && q.Call == (Call{}) && q.Began != nil && *q.Began != q.Serving {
		return fmt.Errorf("call 0-0 is %w: the %v team began, so the %v team does not serve", ErrImpossible, *q.Began, q.Serving)
	}
	return nil
}

// Who lists every state of a game that agrees with what is known, by server and
// receiver. More than one means that the call does not decide it: see Questions.
func (q Query) Who() ([]State, error) {
	if err := q.Check(); err != nil {
		return nil, err
	}
	var all []State
	for _, b := range q.backgrounds() {
		for _, s := range q.statesOf(b) {
			if !slices.Contains(all, s) {
				all = append(all, s)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b State) int {
		return cmp.Or(cmp.Compare(a.server, b.server), cmp.Compare(a.Receiver(), b.Receiver()))
	})
	return all, nil
}

// background is what a call does not say: who started for each team and which
// team began.
type background struct {
	starters [2]Player
	began    court.End
}

// backgrounds lists the backgrounds that agree with the query.
func (q Query) backgrounds() []background {
	all := []background{{starters: q.Starters}}
	for _, e := range court.Ends {
		if q.Unsure[e] {
			all = both(all, func(b *background, i int) { b.starters[e] = PlayerOf(e, i+1) })
		}
	}
	if q.Began == nil {
		return both(all, func(b *background, i int) { b.began = court.Ends[i] })
	}
	for i := range all {
		all[i].began = *q.Began
	}
	return all
}

// both is each background with something set the one way and the other.
func both(all []background, set func(b *background, i int)) []background {
	out := make([]background, 0, 2*len(all))
	for _, b := range all {
		for i := range 2 {
			set(&b, i)
			out = append(out, b)
		}
	}
	return out
}
