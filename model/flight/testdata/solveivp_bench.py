"""Times scipy's solve_ivp for the flight of BenchmarkFly: same ball, same tolerances,
events and dense output. Prints the nanoseconds of one flight, the least of several runs.

    python3 solveivp_bench.py      (Debian: python3-scipy)
"""
import time

import numpy as np
from scipy.integrate import solve_ivp

import ball

TOLERANCE = 1e-8  # flight.DefaultTolerance


def once():
    state, spin = ball.launch(18, 10, 0, 0.8, 600, 100)
    rhs = ball.equations(spin, 0.33, 1.225, np.zeros(3))
    s = solve_ivp(rhs, (0, 30), state, "RK45", rtol=TOLERANCE, atol=TOLERANCE, events=ball.events(), dense_output=True)
    assert s.status == 1, "the ball did not land"


def main():
    once()
    best = float("inf")
    for _ in range(5):
        start = time.perf_counter_ns()
        for _ in range(5):
            once()
        best = min(best, (time.perf_counter_ns() - start) / 5)
    print(round(best))


main()
