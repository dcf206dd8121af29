"""Reads a binary STL file with numpy and prints each closed edge of its upper face: x, y, radius.

The upper face is made of the triangles that lie flat in the topmost plane; its edges are those
that belong to one of them alone. For each loop the centroid of the enclosed area and the largest
distance of a corner from it are printed.
"""

import sys
from collections import defaultdict

import numpy

record = numpy.dtype(
    [("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("attribute", "<u2")])
with open(sys.argv[1], "rb") as file:
    file.seek(80)
    count = numpy.fromfile(file, "<u4", 1)[0]
    triangles = numpy.fromfile(file, record, count)["corners"]
top = triangles[:, :, 2].max()
level = top - float(sys.argv[2]) if len(sys.argv) > 2 else top
flat = triangles[(abs(triangles[:, :, 2] - level) < 1e-4).all(axis=1)]
following = defaultdict(list)
edges = set()
for a, b, c in flat[:, :, :2].tolist():
    for p, q in ((a, b), (b, c), (c, a)):
        edges.add((tuple(p), tuple(q)))
for p, q in edges:
    if (q, p) not in edges:
        following[p].append(q)
while following:
    start = next(iter(following))
    loop = [start]
    while True:
        ways = following[loop[-1]]
        step = ways.pop()
        if not ways:
            del following[loop[-1]]
        if step == start:
            break
        loop.append(step)
    ring = numpy.array(loop, dtype="float64")
    x, y = ring[:, 0], ring[:, 1]
    nx, ny = numpy.roll(x, -1), numpy.roll(y, -1)
    cross = x * ny - nx * y
    area = cross.sum() / 2
    cx = ((x + nx) * cross).sum() / (6 * area)
    cy = ((y + ny) * cross).sum() / (6 * area)
    radius = numpy.hypot(x - cx, y - cy).max()
    print("%.6f %.6f %.6f" % (cx, cy, radius))
