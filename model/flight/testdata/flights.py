"""Writes flights.csv: flights computed by scipy, against which the Go code is compared.

    python3 flights.py > flights.csv      (Debian: python3-scipy)

DOP853 at rtol 1e-12. The net is flown through: its column is the height of the
centre there, or nan if the ball lands before it.
"""
import csv
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp

import ball

# speed m/s, up deg, side deg, height m, top rpm, side rpm, cd, rho, wind x, wind y
DRIVES = [(v, a, 0, 0.8, s, 0, 0.33, 1.225, 0, 0) for v in (14, 18, 24) for a in (2, 10) for s in (-900, 0, 900)]
LOBS = [(v, a, d, 0.6, s, 200, 0.33, 1.225, 0, 0) for v, a in ((13, 45), (16, 60), (12, 75)) for d, s in ((0, 0), (20, 600), (-35, -600))]
DINKS = [(v, a, 0, h, s, 0, 0.33, 1.225, 0, 0) for v, a, h in ((4, 40, 0.2), (6, 30, 0.3), (3, 10, 0.9)) for s in (0, 1200, -1200, 2400)]
DROPS = [(v, a, 10, 0.65, -300, 150, 0.30, 1.29, 0, 0) for v, a in ((10.9, 22.5), (11.5, 19), (12, 19), (13, 15.5))]
WINDS = [(18, 10, 5, 0.8, 400, -300, 0.33, 1.225, x, y) for x, y in ((3, 0), (-3, 0), (0, 4), (-2, -5), (8, 1))]
HEIGHTS = [(18, 10, 0, 0.8, 600, 0, 0.45, rho, 0, 0) for rho in (1.225, 1.046619, 0.9, 0.0)]
SIDES = [(15, 15, 0, 0.8, 0, s, 0.33, 1.225, 0, 0) for s in (-1800, -600, 600, 1800)]
CAPPED = [(7, 55, 0, 0.5, 1900, 900, 0.33, 1.225, 0, 0), (9, 65, 0, 0.5, -2200, 0, 0.33, 1.225, 2, 1), (2, -20, 0, 1.5, 1200, 1200, 0.45, 1.225, 0, 0)]
SMASHES = [(25, -12, 0, 2.4, 300, 0, 0.33, 1.225, 0, 0), (29, -20, 8, 2.6, 0, 500, 0.45, 1.225, 0, 2)]
INPUT = "speed up side height top_rpm side_rpm cd rho wind_x wind_y".split()
OUTPUT = "t x y vx vy vz net_t net_z apex_t apex_z".split()


def fly(speed, up, side, height, top, turn, cd, rho, wx, wy):
    state, spin = ball.launch(speed, up, side, height, top, turn)
    rhs = ball.equations(spin, cd, rho, np.array([wx, wy, 0.0]))
    s = solve_ivp(rhs, (0, 30), state, "DOP853", rtol=1e-12, atol=1e-13, max_step=0.02, events=ball.events())
    end, t = s.y_events[0][0], s.t_events[0][0]
    net = (s.t_events[1][0], s.y_events[1][0][2]) if len(s.t_events[1]) else (np.nan, np.nan)
    apex = (s.t_events[2][0], s.y_events[2][0][2]) if state[5] > 0 else (0.0, height)
    return [t, end[0], end[1], end[3], end[4], end[5], *net, *apex]


def main():
    print(f"# flights.py, scipy {scipy.__version__}, DOP853, rtol 1e-12")
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(INPUT + OUTPUT)
    for group in (DRIVES, LOBS, DINKS, DROPS, WINDS, HEIGHTS, SIDES, CAPPED, SMASHES):
        for row in group:
            out.writerow(list(row) + [f"{v:.12g}" for v in fly(*row)])


main()
