// Package game is the score of doubles: who serves, from which court, who must
// receive, and where every player belongs, for side-out and rally scoring.
// It promises pure values: a state and a rally's winner give the next state.
// Source: USA Pickleball Official Rulebook 2026, sections 4-6, 14 and 21.
package game
