"""Share of an instrument that a wheel hides, by rays: shapely says whether a ray goes through what
stands between, at many heights of it.

Reads from the command line: a file with lines
  eye x y z (all in the wheel's axes, mm)
  face x y z (middle)  rx ry rz (right)  ux uy uz (up)  width height round
  turn DEGREES
  shade back front
  ring x,y x,y ... (the last shade's; the first of a piece is its outer ring)
  piece (a new piece of the last shade)
and writes a line a turn: the share.
"""
import math, sys
import numpy as np
from shapely.geometry import Polygon

try:
    from shapely import contains_xy
except ImportError:
    from shapely.vectorized import contains as contains_xy

N = 240
STEPS = 60
turns, shades = [], []
for line in open(sys.argv[1], encoding="utf-8"):
    words = line.split()
    if words[0] == "eye":
        eye = np.array(list(map(float, words[1:])))
    elif words[0] == "face":
        n = list(map(float, words[1:]))
        middle, right, up = np.array(n[0:3]), np.array(n[3:6]), np.array(n[6:9])
        width, height, circle = n[9], n[10], n[11] > 0
    elif words[0] == "turn":
        turns.append(math.radians(float(words[1])))
    elif words[0] == "shade":
        shades.append((float(words[1]), float(words[2]), []))
    elif words[0] == "piece":
        shades[-1][2].append([])
    elif words[0] == "ring":
        shades[-1][2][-1].append([tuple(map(float, w.split(","))) for w in words[1:]])

u, v = np.meshgrid((np.arange(N) + 0.5) / N - 0.5, (np.arange(N) + 0.5) / N - 0.5)
u, v = u.ravel() * width, v.ravel() * height
if circle:
    inside = np.hypot(u, v) <= width / 2
    u, v = u[inside], v[inside]
face = middle + u[:, None] * right + v[:, None] * up
for turn in turns:
    hidden = np.zeros(len(face), dtype=bool)
    c, s = math.cos(-turn), math.sin(-turn)
    for back, front, pieces in shades:
        for rings in pieces:
            polygon = Polygon(rings[0], rings[1:])
            for z in np.linspace(back, front, STEPS):
                part = (eye[2] - z) / (eye[2] - face[:, 2])
                x = eye[0] + part * (face[:, 0] - eye[0])
                y = eye[1] + part * (face[:, 1] - eye[1])
                hidden |= contains_xy(polygon, c * x - s * y, s * x + c * y)
    print(hidden.mean())
