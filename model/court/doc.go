// Package court is the court of the rulebook to scale, in feet: its lines,
// zones, service courts and net, and the points and shapes drawn on it.
// It promises plain values and the rulebook's own edges (which line belongs to
// which zone); nothing here knows a player, a ball or a score.
//
// The axes, seen from above with the near team at the bottom:
//
//	          far baseline  y = +22
//	      +----------+----------+
//	      |  far     |  far     |      the far team faces down the page:
//	      |  right   |  left    |      its right is x < 0
//	      +----------+----------+ y = +7   far kitchen (NVZ) line
//	      |     far kitchen     |
//	======o=====================o====  y = 0, the net; z is up
//	      |     near kitchen    |
//	      +----------+----------+ y = -7   near kitchen (NVZ) line
//	      |  near    |  near    |      the near team faces up the page:
//	      |  left    |  right   |      its right is x > 0
//	      +----------+----------+
//	          near baseline y = -22
//	    x = -10      0        +10
//
// The origin is the centre of the net on the ground. Lengths are measured to
// the outside of the lines (USA Pickleball Official Rulebook 2026, 3.A.2).
package court
