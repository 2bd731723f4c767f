#!/usr/bin/env python3
"""Cover of three situations, cell by cell, in numpy, for the Go tests.

Writes cover.json beside this script. No closed form of the package is used but
the drive's time, which is the model itself: a player's time is found by halving an
interval of d(t) = V (t - tau (1 - exp(-t/tau))), a lob is integrated by
Runge-Kutta steps of 0.1 ms, the open disc is searched cell against cell.
Constants of the ball: Lindsey 2025 (Cd .33 and .45); air: ISO 2533:1975.
Needs python3-numpy (made with 1.24.2). Run: /usr/bin/python3 cover.py
"""
import json
import os

import numpy as np

FT = 0.3048
G = 9.80665
MASS, DIAMETER = 0.0243, 0.0742

SITUATIONS = [
    {
        "name": "drive at a pair set at the kitchen line",
        "team": "near", "from_ft": [4.0, 23.5], "height_m": 0.75, "drive_mps": 15.0, "lob_ft": 0.0,
        "cd": 0.33, "rho": 1.225,
        "players": [
            {"place_ft": [-5.0, -8.0], "facing_deg": 10.0, "hand": "right", "v_mps": 6.0, "tau_s": 1.0, "reaction_s": 0.23, "reach_m": 1.7725},
            {"place_ft": [5.2, -7.6], "facing_deg": 350.0, "hand": "left", "v_mps": 4.0, "tau_s": 1.0, "reaction_s": 0.245, "reach_m": 1.5725},
        ],
    },
    {
        "name": "fast drive of an indoor ball in thin air, the returner still on the way",
        "team": "near", "from_ft": [-6.5, 22.75], "height_m": 0.6, "drive_mps": 20.0, "lob_ft": 0.0,
        "cd": 0.45, "rho": 1.046619,
        "players": [
            {"place_ft": [2.3, -14.9], "facing_deg": 330.0, "hand": "right", "v_mps": 5.0, "tau_s": 0.9, "reaction_s": 0.24, "reach_m": 1.0},
            {"place_ft": [8.1, -7.4], "facing_deg": 0.0, "hand": "right", "v_mps": 3.0, "tau_s": 0.8, "reaction_s": 0.25, "reach_m": 0.9},
        ],
    },
    {
        "name": "lob over a slow far pair",
        "team": "far", "from_ft": [-2.0, -9.0], "height_m": 0.9, "drive_mps": 0.0, "lob_ft": 14.0,
        "cd": 0.33, "rho": 1.225,
        "players": [
            {"place_ft": [-5.0, 7.5], "facing_deg": 180.0, "hand": "left", "v_mps": 3.0, "tau_s": 0.8, "reaction_s": 0.25, "reach_m": 1.2},
            {"place_ft": [4.4, 9.0], "facing_deg": 165.0, "hand": "right", "v_mps": 2.0, "tau_s": 1.1, "reaction_s": 0.3, "reach_m": 1.0},
        ],
    },
]


def cells(team):
    """Centres of the cells, a row of 40 from the team's left to its right for each
    of 44 half feet from the net."""
    right = -10 + 0.25 + 0.5 * np.arange(40)
    behind = 0.25 + 0.5 * np.arange(44)
    r, b = np.meshgrid(right, behind)
    return (r, -b) if team == "near" else (-r, b)


def run_through(d, v, tau):
    """Time over d metres from rest, by halving."""
    lo, hi = np.zeros_like(d), np.full_like(d, 200.0)
    for _ in range(120):
        mid = (lo + hi) / 2
        short = v * (mid - tau * (1 - np.exp(-mid / tau))) < d
        lo, hi = np.where(short, mid, lo), np.where(short, hi, mid)
    return np.where(d > 0, hi, 0.0)


def lob_time(height, apex, radius, kd):
    """From the contact up to the apex and down until the ball's lowest point is on the court.

    Up is run backwards: the flight is integrated downward from rest at the apex
    with the drag that speeds it up, which is the rise in reversed time.
    """
    def fall(h, sign):
        step, t, z, v = 1e-4, 0.0, 0.0, 0.0
        acc = lambda w: G + sign * kd * w * w
        while True:
            k1 = acc(v)
            k2 = acc(v + step / 2 * k1)
            k3 = acc(v + step / 2 * k2)
            k4 = acc(v + step * k3)
            nz = z + step * (v + step / 6 * (k1 + k2 + k3))
            nv = v + step / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
            if nz >= h:
                break
            t, z, v = t + step, nz, nv
        a = acc(v)  # the rest of the step, as constant acceleration
        return t + (np.sqrt(v * v + 2 * a * (h - z)) - v) / a
    return fall(apex - height, +1) + fall(apex - radius, -1)


def disc(covered):
    """Largest disc round an open cell's centre, in cells: every open cell against every
    covered one and the four edges. First of equals in the order of the rows."""
    row, col = np.indices(covered.shape)
    edge = np.minimum.reduce([col + 0.5, 39.5 - col, row + 0.5, 43.5 - row])
    free = edge * edge
    for r, c in np.argwhere(covered):
        free = np.minimum(free, (row - r) ** 2 + (col - c) ** 2)
    free[covered] = 0
    i = int(np.argmax(free))
    return i, float(np.sqrt(free.flat[i]))


def compute(s):
    x, y = cells(s["team"])
    kd = s["rho"] * s["cd"] * np.pi * (DIAMETER / 2) ** 2 / (2 * MASS)
    if s["lob_ft"]:
        ball = np.full(x.shape, lob_time(s["height_m"], s["lob_ft"] * FT, DIAMETER / 2, kd))
    else:
        d = np.hypot(x - s["from_ft"][0], y - s["from_ft"][1]) * FT
        ball = (np.exp(kd * d) - 1) / (kd * s["drive_mps"])
    margins, forehands = [], []
    for p in s["players"]:
        dx, dy = x - p["place_ft"][0], y - p["place_ft"][1]
        run = np.maximum(0, np.hypot(dx, dy) * FT - p["reach_m"])
        margins.append(ball - p["reaction_s"] - run_through(run, p["v_mps"], p["tau_s"]))
        f = np.radians(p["facing_deg"])
        # The facing looks along (sin f, cos f); its right is (cos f, -sin f).
        side = (dx * np.cos(f) - dy * np.sin(f)) * (1 if p["hand"] == "right" else -1)
        forehands.append(side >= -1e-9)
    m, f = np.array(margins), np.array(forehands)
    best = m.max(axis=0)
    covered = best >= 0
    # Nothing may hang on rounding: no margin, and no lead of one partner, is tiny.
    assert np.abs(m).min() > 1e-6, np.abs(m).min()
    assert np.abs(m[0] - m[1]).min() > 1e-6, np.abs(m[0] - m[1]).min()
    taker = m.argmax(axis=0)
    forehand = np.take_along_axis(f, taker[None], 0)[0]
    middle = np.abs(x) <= 2
    i, radius = disc(covered)
    return {
        "situation": s,
        "rows": ["".join("#" if c else "." for c in row) for row in covered],
        "covered": float(covered.mean()),
        "forehand": float((covered & forehand).mean()),
        "per_player": [float((m[k] >= 0).mean()) for k in (0, 1)],
        "middle": [float(((taker == k) & covered)[middle].mean()) for k in (0, 1)],
        "middle_cells": int(middle.sum()),
        "open": {"x_ft": float(x.flat[i]), "y_ft": float(y.flat[i]), "radius_ft": radius / 2},
        "margins_s": [float(best[r, c]) for r in (0, 21, 43) for c in (0, 13, 39)],
        "kd_per_m": float(kd),
    }


if __name__ == "__main__":
    out = [compute(s) for s in SITUATIONS]
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "cover.json"), "w") as f:
        json.dump(out, f, indent=1)
        f.write("\n")
    for o in out:
        print(o["situation"]["name"], o["covered"], o["forehand"], o["per_player"], o["middle"], o["open"])
        print("\n".join(o["rows"][::2]))
