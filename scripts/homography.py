#!/usr/bin/python3
"""Prints homographies for model/homography's tests (Debian: python3-opencv).

Invented pictures of a court: points of the court in feet and pixels of the picture.
Four points: cv2.findHomography. Six points that do not quite fit: numpy's SVD of the
normalised equations (Hartley and Zisserman, Multiple View Geometry, 2nd ed., alg.
4.2), and cv2.findHomography, which goes on from there to the least sum of squares in
the picture. Each matrix is divided by its last element.
"""
import cv2
import numpy as np

FOUR = [((-10, -22), (212.5, 1021.25)), ((10, -22), (1711.0, 1034.5)), ((10, 7), (1302.75, 498.0)), ((-10, 7), (601.5, 491.25))]
SIX = [((-10, -7), (402, 688)), ((10, -7), (1518, 700)), ((10, 7), (1303, 497)), ((-10, 7), (600, 492)),
       ((-10, 22), (690, 408)), ((10, 22), (1214, 411))]


def dlt(pairs):
    def normal(points):
        points = np.array(points, float)
        middle = points.mean(0)
        k = np.sqrt(2) / np.sqrt(((points - middle) ** 2).sum(1)).mean()
        return np.array([[k, 0, -k * middle[0]], [0, k, -k * middle[1]], [0, 0, 1]])

    a, b = normal([p for p, _ in pairs]), normal([q for _, q in pairs])
    rows = []
    for p, q in pairs:
        x, (u, v, _) = a @ (*p, 1), b @ (*q, 1)
        rows += [[0, 0, 0, *-x, *(v * x)], [*x, 0, 0, 0, *(-u * x)]]
    h = np.linalg.inv(b) @ np.linalg.svd(np.array(rows))[2][-1].reshape(3, 3) @ a
    return h / h[2, 2]


def cv(pairs):
    return cv2.findHomography(np.array([p for p, _ in pairs], float), np.array([q for _, q in pairs], float), 0)[0]


np.set_printoptions(precision=12, suppress=False)
print("OpenCV", cv2.__version__, "numpy", np.__version__)
for name, h in (("four, OpenCV", cv(FOUR)), ("six, SVD", dlt(SIX)), ("six, OpenCV", cv(SIX))):
    print(name)
    for row in h:
        print("\t{%s}," % ", ".join(f"{x:.12g}" for x in row))
    for p in ((0, -15), (-10, 0), (4.5, 20)):
        x = h @ (*p, 1)
        print("\t{%g, %g}: {%.9f, %.9f}," % (*p, x[0] / x[2], x[1] / x[2]))
