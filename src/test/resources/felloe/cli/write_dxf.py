# Writes a wheel: the version, the file. Outline of loose lines and arcs, ring of holes as blocks,
# one window as an ellipse (a polyline of bulges before 2000), one as a closed B-spline through it.
import math
import sys

import ezdxf

version, name = sys.argv[1:3]
doc = ezdxf.new(version)
space = doc.modelspace()
w, h, r = 300, 200, 40
for x0, y0, x1, y1 in [
    (-w / 2 + r, -h / 2, w / 2 - r, -h / 2),
    (w / 2, h / 2 - r, w / 2, -h / 2 + r),
    (w / 2 - r, h / 2, -w / 2 + r, h / 2),
    (-w / 2, -h / 2 + r, -w / 2, h / 2 - r),
]:
    space.add_line((x0 + 400, y0 + 250), (x1 + 400, y1 + 250))
for x, y, a in [(1, -1, 270), (1, 1, 0), (-1, 1, 90), (-1, -1, 180)]:
    centre = (x * (w / 2 - r) + 400, y * (h / 2 - r) + 250)
    space.add_arc(centre, r, a, a + 90)
block = doc.blocks.new("HOLE")
block.add_circle((0, 0), 1)
for k in range(6):
    a = math.radians(60 * k + 90)
    place = (400 + 35 * math.cos(a), 250 + 35 * math.sin(a))
    space.add_blockref("HOLE", place, dxfattribs={"xscale": 2.75, "yscale": 2.75})
space.add_circle((400, 250), 15)
space.add_circle((400 - 100, 250 + 60), 2.15)
space.add_circle((400 + 100, 250 + 60), 2.15)


def window(x):
    if version == "R12":
        points = []
        for k in range(240):
            a = 2 * math.pi * k / 240
            points.append((x + 30 * math.cos(a), 250 + 45 * math.sin(a)))
        space.add_polyline2d(points, close=True)
    elif x > 400:
        space.add_ellipse((x, 250), (0, 45), 30 / 45)
    else:
        # An ellipse as four rational quadratics, exactly.
        s = math.sqrt(0.5)
        frame = [(1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1), (1, 0)]
        points = [(x + 30 * u, 250 + 45 * v) for u, v in frame]
        weights = [1 if k % 2 == 0 else s for k in range(9)]
        space.add_rational_spline(
            points, weights, degree=2, knots=[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4])


window(400 + 90)
window(400 - 90)
space.add_line((400 - 170, 250), (400 + 170, 250))
space.add_text("wheel")
doc.saveas(name)
