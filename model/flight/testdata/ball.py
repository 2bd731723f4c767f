"""The ball's equations for scipy, written from the sources and not from the Go code.

Frame: x forward, y left, z up; the launch at x = y = 0, the net's plane at x = 6.7056 m.
Drag: Lindsey 2025. Lift: Steyn et al., arXiv:2501.00163, Cl = 0.195 S, S = r w / u, |Cl| <= 0.2.
"""
import numpy as np

MASS, DIAMETER, GRAVITY, NET = 0.0243, 0.0742, 9.80665, 6.7056
RADIUS = DIAMETER / 2
AREA = np.pi * RADIUS**2


def launch(speed, up_deg, side_deg, height, top_rpm, side_rpm):
    """State and spin of a ball struck up_deg above the horizon, side_deg to the left."""
    up, side = np.radians(up_deg), np.radians(side_deg)
    level = np.array([np.cos(side), np.sin(side), 0.0])
    velocity = speed * (np.cos(up) * level + np.sin(up) * np.array([0, 0, 1.0]))
    left = np.array([-np.sin(side), np.cos(side), 0.0])
    spin = 2 * np.pi / 60 * (top_rpm * left + side_rpm * np.array([0, 0, 1.0]))
    return np.concatenate([[0.0, 0.0, height], velocity]), spin


def equations(spin, cd, rho, wind):
    rate = np.linalg.norm(spin)

    def rhs(_, s):
        u = s[3:] - wind
        speed = np.linalg.norm(u)
        force = -0.5 * rho * AREA * cd * speed * u
        across = np.cross(spin, u)
        size = np.linalg.norm(across)
        if size > 0:
            cl = min(0.195 * RADIUS * rate / speed, 0.2)
            # Cl times |w x u| / (|w| |u|): only spin across the flight lifts
            force = force + 0.5 * rho * AREA * cl * speed * across / rate
        a = force / MASS
        a[2] -= GRAVITY
        return np.concatenate([s[3:], a])

    return rhs


def events():
    def land(_, s):
        return s[2] - RADIUS

    def net(_, s):
        return s[0] - NET

    def apex(_, s):
        return s[5]

    land.terminal, land.direction = True, -1
    apex.direction = -1
    return [land, net, apex]
