package advice

import (
	"cmp"
	"slices"

	"homeside/model/court"
	"homeside/model/rally"
	"homeside/model/units"
)

// together is how far apart in time a crossing and the closest approach are when
// they are one thing to be careful of.
const together units.Seconds = 1

// PathsCross are the moments of a rally at which partners have to agree who goes
// in front, in the order of their times: where they change sides, and where they
// come too close without.
func PathsCross(r *rally.Rally) []Approach {
	var all []Approach
	for _, team := range court.Ends {
		own := Crossings(r, team)
		c, ok := Closest(r, team)
		near := func(a Approach) bool { return a.When > c.When-together && a.When < c.When+together }
		if ok && c.Distance < TooClose && !slices.ContainsFunc(own, near) {
			own = append(own, c)
		}
		all = append(all, own...)
	}
	slices.SortStableFunc(all, func(a, b Approach) int { return cmp.Compare(a.When, b.When) })
	return all
}
