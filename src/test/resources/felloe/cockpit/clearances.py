"""Least distances of a turned outline to things in a car, by brute force: shapely turns and unites
copies of the outline, numpy takes distances from a cloud of places of the swept body.

Reads from the command line: a file with lines
  wheel COLUMN HUB BACK FRONT LOCK (degrees, mm)
  outline x,y x,y ...
  box NAME x0 x1 y0 y1 z0 z1
  limb NAME ax ay az bx by bz radius
and writes: area A, then NAME distance, a line a thing.
"""
import math, sys
import numpy as np
from shapely import affinity
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union
from shapely.prepared import prep

STEP = 0.25  # degrees
things = []
for line in open(sys.argv[1], encoding="utf-8"):
    words = line.split()
    if words[0] == "wheel":
        column, hub, back, front, lock = map(float, words[1:])
    elif words[0] == "outline":
        outline = Polygon([tuple(map(float, w.split(","))) for w in words[1:]])
    else:
        things.append((words[0], words[1], list(map(float, words[2:]))))

turns = np.linspace(-lock, lock, int(2 * lock / STEP) + 1)
swept = unary_union([affinity.rotate(outline, t, origin=(0, 0)) for t in turns])
print("area", swept.area)

rim = swept.exterior
places = [rim.interpolate(d) for d in np.arange(0, rim.length, 0.25)]
flat = np.array([(p.x, p.y) for p in places])
low, high = flat.min(axis=0), flat.max(axis=0)
gx, gy = np.meshgrid(np.arange(low[0], high[0], 4), np.arange(low[1], high[1], 4))
ready = prep(swept)
inside = np.array([p for p in zip(gx.ravel(), gy.ravel()) if ready.contains(Point(p))])
cloud = []
for z in (back, front):
    for part in (flat, inside):
        cloud.append(np.column_stack([part, np.full(len(part), z)]))
for z in np.linspace(back, front, 40):
    cloud.append(np.column_stack([flat, np.full(len(flat), z)]))
cloud = np.vstack(cloud)
a = math.radians(column)
car = np.column_stack([
    cloud[:, 0],
    hub + cloud[:, 1] * math.cos(a) + cloud[:, 2] * math.sin(a),
    cloud[:, 2] * math.cos(a) - cloud[:, 1] * math.sin(a)])
for kind, name, n in things:
    if kind == "box":
        lower, upper = np.array(n[0::2]), np.array(n[1::2])
        off = np.maximum(0, np.maximum(lower - car, car - upper))
        least = np.sqrt((off ** 2).sum(axis=1)).min()
    else:
        p, q, radius = np.array(n[0:3]), np.array(n[3:6]), n[6]
        way = q - p
        length = way @ way
        t = np.clip((car - p) @ way / length, 0, 1) if length > 0 else np.zeros(len(car))
        least = np.linalg.norm(car - (p + t[:, None] * way), axis=1).min() - radius
    print(name, max(0.0, least))
