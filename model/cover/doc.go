// Package cover is the court a pair can still reach when an opponent strikes:
// for every half-foot cell of their court, by how many seconds the better placed
// of the two is there before the ball. It promises finite margins, cells numbered
// as the team itself sees them, and the same answer for a mirrored strike.
//
// # Model
//
// For a cell at the plan distance D from the contact,
//
//	drive: t_ball = (exp(kd D) - 1) / (kd v), kd = ρ Cd A / 2m
//	lob:   t_ball = rise to the apex + fall to the court, see Shot
//	t_player = reaction + run-through from rest over max(0, distance - reach)
//
// and the cell is covered if the best margin t_ball - t_player is at least 0
// (quadratic drag along a line: standard mechanics). Left out, so that the
// answer stays one of geometry and time: gravity and wind on a drive, a ball cut
// off on its way to the cell, the bounce, a partner in the way, the speed a
// player already has, and a wheelchair's turn. Estimates, not instructions.
package cover
