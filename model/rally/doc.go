// Package rally solves a play into its consequence: the time of every event,
// the ball at every moment and each player's way. A rally is solved once and
// never changes; At(t) reads one frame of it in O(log n). It promises an answer
// for every sound lesson: what cannot be done is marked, not refused.
package rally
