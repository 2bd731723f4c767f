#!/usr/bin/python3
"""Prints what OpenCV says of a camera, for canvas/lens_test.go (Debian: python3-opencv).

The camera stands at EYE and looks at AT, level; lengths in feet, x and y as on the
court, z up. OpenCV's camera looks along +z with y down: the rows of R are right,
down and ahead in the court's axes. cv2.projectPoints gives the pixels.
"""
import cv2
import numpy as np

CAMERAS = [
    # eye, at, focal length in pixels, principal point
    ((-4.0, 33.0, 8.5), (-4.0, 0.0, 8.5), 900.0, (640.0, 260.0)),
    ((12.5, -40.0, 15.0), (0.0, 4.0, 2.0), 1100.0, (360.0, 640.0)),
]
POINTS = [
    (-10, 22, 0), (10, 22, 0), (10, -22, 0), (-10, -22, 0), (0, 0, 2.8333333333333335),
    (-5, 7, 0), (11, 0, 3), (-6.25, -23.5, 5.25),
]

print("OpenCV", cv2.__version__)
for eye, at, focal, centre in CAMERAS:
    eye, at = np.array(eye), np.array(at)
    ahead = (at - eye) / np.linalg.norm(at - eye)
    right = np.cross(ahead, (0, 0, 1))
    right /= np.linalg.norm(right)
    rotation = np.array([right, np.cross(ahead, right), ahead])
    camera = np.array([[focal, 0, centre[0]], [0, focal, centre[1]], [0, 0, 1]])
    px, _ = cv2.projectPoints(np.array(POINTS, float), cv2.Rodrigues(rotation)[0], -rotation @ eye, camera, None)
    for point, (x, y) in zip(POINTS, px.reshape(-1, 2)):
        print(f"{{{point[0]}, {point[1]}, {point[2]}}}: {{{x:.9f}, {y:.9f}}},")
