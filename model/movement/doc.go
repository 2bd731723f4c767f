// Package movement is the legs: how long a player of some pace takes over a
// distance, where the player is on the way, and how fast. Every closed form is
// checked against numerical integration and the published sprint vector; no
// NaN gets out, and what cannot be computed is a named error.
//
// # Model
//
// A player runs at full effort along a path of known length. Speed approaches
// the top speed V with the time constant tau,
//
//	dv/dt = (V - v)/tau,  v(t) = V (1 - exp(-t/tau)) from rest
//
// (Furusawa, Hill & Parkinson 1927; Samozino et al. 2016, both from memory; tau
// near 1 s across sports: Clark & Ryan 2022), and falls at a
// constant rate when braking. Estimates, not instructions to sprint.
package movement
