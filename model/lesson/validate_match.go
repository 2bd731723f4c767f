package lesson

import (
	"homeside/model/court"
	"homeside/model/game"
)

// match leaves it to the score whether a game can come to its opening.
func (c *checker) match(m Match) {
	if m.First != nil {
		member(c, "first", *m.First, len(court.Ends))
	}
	if m.From != nil {
		c.in("from", func() { c.opening(*m.From) })
	}
	c.count("rallies", len(m.Rallies), MaxRallies)
	c.each("rallies", len(m.Rallies), func(i int) { c.matchRally(m.Rallies[i]) })
}

func (c *checker) opening(o Opening) {
	c.situation(Situation{Call: o.Call, Serving: o.Serving})
	member(c, "server", o.Server, len(game.Players))
}

func (c *checker) matchRally(r MatchRally) {
	member(c, "winner", r.Winner, len(court.Ends))
	for _, e := range court.Ends {
		member(c, e.String(), r.Formations[e], len(formationNames))
	}
	member(c, "return", r.Return, len(returnNames))
	if r.Play < 0 || r.Play > MaxPlays {
		c.say("play", "%d, want 1 to %d", r.Play, MaxPlays)
	}
}
