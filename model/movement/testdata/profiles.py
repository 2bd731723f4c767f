#!/usr/bin/env python3
"""Runs and Lambert's W by numerical integration and by scipy, for the Go tests.

Writes profiles.csv and lambert.csv beside this script. No closed form of the
package is used: the equation of motion dv/dt = (V - v)/tau, or -b when
braking, is integrated by scipy's DOP853, and the times at which a speed or a
distance is reached are found by Brent's method on the integral.
Needs python3-scipy (made with 1.10.1). Run: python3 profiles.py
"""
import csv
import math
import os
import random
from decimal import Decimal, getcontext

import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from scipy.special import lambertw

HERE = os.path.dirname(os.path.abspath(__file__))


def integrate(acc, d, v, t):
    """Distance and speed after t of the acceleration acc(v)."""
    if t <= 0:
        return d, v
    s = solve_ivp(lambda _, y: (y[1], acc(y[1])), (0, t), (d, v), method="DOP853", rtol=3e-14, atol=1e-15)
    assert s.success, s.message
    return s.y[0, -1], s.y[1, -1]


def root(f, hi=1.0):
    """Root of a growing f above 0."""
    if f(0) >= 0:
        return 0.0
    while f(hi) < 0:
        hi *= 2
    return brentq(f, 0, hi, xtol=1e-15, rtol=8.9e-16)


class Run:
    """Phases are (duration, acceleration as a function of speed)."""

    def __init__(self, V, tau, b, start, cap, D, through):
        self.D, self.start, self.phases = D, start, []
        push, brake, hold = (lambda v: (V - v) / tau), (lambda v: -b), (lambda v: 0.0)
        c = min(V, cap) if cap else V
        stop = lambda v: 0.0 if through else integrate(brake, 0, v, v / b)[0]
        if not through and stop(start) > D:  # as hard as needed: search the rate
            hard = brentq(lambda q: integrate(lambda v: -q, 0, start, start / q)[0] - D, b, 1e4, xtol=1e-14, rtol=8.9e-16)
            self.phases = [(start / hard, lambda v: -hard)]
            return
        if start > c:
            t = root(lambda t: c - start + b * t)
            if through and integrate(brake, 0, start, t)[0] >= D:
                self.phases = [(root(lambda t: integrate(brake, 0, start, t)[0] - D), brake)]
                return
            self.phases = [(t, brake)]
        elif c < V:
            self.phases = [(root(lambda t: integrate(push, 0, start, t)[1] - c), push)]
        if start > c or c < V:
            d, v = self.at(1e9)
            if d + stop(v) <= D:
                self.phases.append((root(lambda t: integrate(hold, d, v, t)[0] + stop(v) - D), hold))
                self.end(through, brake, v / b)
                return

        def miss(t):
            d, v = integrate(push, 0, start, t)
            return d + stop(v) - D

        self.phases = [(root(miss), push)]
        self.end(through, brake, self.at(1e9)[1] / b)

    def end(self, through, brake, t):
        if not through:
            self.phases.append((t, brake))

    def at(self, t):
        d, v = 0.0, self.start
        for span, acc in self.phases:
            d, v = integrate(acc, d, v, min(t, span))
            t -= span
            if t <= 0:
                break
        return d, v

    def duration(self):
        return sum(s for s, _ in self.phases)

    def peak(self):
        ends, t = [self.start], 0.0
        for s, _ in self.phases:
            t += s
            ends.append(self.at(t)[1])
        return max(ends)


def decimal_w0(z):
    """W0 to 60 digits by halving the bracket of w exp(w) = z (scipy loses digits near -1/e)."""
    getcontext().prec = 60
    z, lo, hi = Decimal(z), Decimal(-1), Decimal(300)
    for _ in range(200):
        mid = (lo + hi) / 2
        lo, hi = (mid, hi) if mid * mid.exp() < z else (lo, mid)
    return lo


def cases():
    paces = [(7, 1, 5), (6, 1, 5), (5, 1, 5), (4, 1, 3), (3, 0.8, 3), (4, 1.2, 3), (8.5911, 0.8113, 5)]
    for V, tau, b in paces:
        for start in (0, 0.5 * V):
            for D in (0.3048, 3.048, 5.8807, 13.4112):
                for through in (True, False):
                    yield V, tau, b, start, 0, D, through
    r = random.Random(20260101)
    for _ in range(60):  # caps above and below the speeds reached, and starts above both
        V, tau, b = r.uniform(2, 9), r.uniform(0.3, 2), r.uniform(1.5, 8)
        cap = r.choice([0, r.uniform(0.8, 1.2 * V)])
        yield V, tau, b, r.choice([0, r.uniform(0, 1.1 * V)]), cap, r.uniform(0.05, 20), r.random() < 0.5


def main():
    with open(os.path.join(HERE, "profiles.csv"), "w", newline="") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow("top_mps tau_s brake_mps2 start_mps cap_mps distance_m through duration_s peak_mps arrival_mps "
                   "d1_m v1_mps d2_m v2_mps d3_m v3_mps".split())
        for c in cases():
            run = Run(*c)
            T = run.duration()
            row = [repr(float(x)) for x in c[:6]] + [int(c[6]), repr(T), repr(float(run.peak())), repr(float(run.at(T)[1]) if c[6] else 0.0)]
            for k in (1, 2, 3):  # quarters of the duration
                row += [repr(float(x)) for x in run.at(T * k / 4)]
            w.writerow(row)
            assert abs(run.at(T)[0] - c[5]) < 1e-10, c
    with open(os.path.join(HERE, "lambert.csv"), "w", newline="") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow(["z", "w0", "scipy"])
        zs = [-math.exp(-1) + 10.0**-k for k in range(2, 13)]
        zs += [-0.367, -0.35, -0.3, -0.25, -0.2, -0.15, -0.1, -0.05, -1e-3, -1e-8, 0, 1e-8, 1e-3, 0.1, 0.5, 1, 2, math.e, 3, 10, 100, 1e6, 1e100]
        for z in zs:
            w.writerow([repr(float(z)), repr(float(decimal_w0(float(z)))), repr(float(lambertw(z).real))])
    print("scipy", scipy.__version__)


main()
