// Package flight is the ball in SI units: how it flies under gravity, drag, lift
// and wind, how it bounces, and which launch does what a coach asks for.
// It promises that events stand to 1e-9 s on the path, that the same input gives
// the same path on one kind of machine, and that what cannot be flown has a name.
//
// The equations (the court's axes; u = v - wind; ω is constant in flight):
//
//	a = -g ẑ - kd |u| u + kc (ω × u)
//	kd = ρ Cd A / 2m, kc = ρ A r Cl' / 2m, Cl = Cl' S, S = r |ω| / |u|, |Cl| <= 0.2
//
// Drag: Lindsey, The Physics of Pickleball Aerodynamics and Trajectories, 2025.
// Lift: Steyn et al., arXiv:2501.00163, 2024, fitted for S from 0.03 to 0.3.
// Integrator: Dormand & Prince, J. Comp. Appl. Math. 6 (1980) 19, order 5(4).
// Between two steps a path is the quintic that has place, velocity and
// acceleration of both (Hermite), one order better than the steps need.
package flight
