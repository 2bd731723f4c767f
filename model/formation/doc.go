// Package formation writes plays: for a score, a pair and a kind of formation
// the places, orders, runs and shots of one rally, timed with the pair's own
// legs and kept within the venue's run-off. It promises plays that are legal at
// the score, the same play mirrored for a mirrored pair, a refusal in plain
// words where a kind makes no sense, and the first moment at which two plays
// that look alike give themselves away (Tell).
//
// Base positions, orders and deadlines are common practice of the trade, not
// rules: until the return has bounced both servers stay behind the baseline
// (it must bounce: USA Pickleball Official Rulebook 2026, 10.A), the receiver's
// partner starts at the kitchen line, and partners may stand anywhere on their
// own side of the net (5.B.4).
package formation
