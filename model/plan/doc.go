// Package plan is a pair's whole game: at every score who stands where, which
// formation brings the partners to their wanted sides, and what that costs. It
// promises exact expectations from a finite Markov chain whose moves are those of
// package game, finite figures or an error, and the same answer for either team.
//
// The chain is that of DeFord & Ethier 2023, arXiv:2303.02942, with the server's
// identity added; scores past deuce are brought back by twos, so that parity
// survives. Costs come from an Efforts; where nothing is known they stay out.
package plan
