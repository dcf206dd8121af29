"""Writes two drawings of one spline: by the points that it goes through, by control points of ezdxf's."""
import math
import sys

import ezdxf
from ezdxf.math import fit_points_to_cad_cv

told = sys.argv[3] == "told"
points = [(120 * math.cos(a), 80 * math.sin(a) + 9 * math.sin(3 * a))
          for a in (0, 0.35, 0.9, 1.3, 1.9, 2.2, 2.8, math.pi)]
tangents = [(0.2, 1), (-0.1, -1)] if told else None
for by, name in (("points", sys.argv[1]), ("control", sys.argv[2])):
    document = ezdxf.new("R2010", units=4)
    space = document.modelspace()
    if by == "points":
        spline = space.add_spline(points)
        if told:
            spline.dxf.start_tangent, spline.dxf.end_tangent = tangents
    else:
        unit = tangents and [ezdxf.math.Vec3(t).normalize() for t in tangents]
        space.add_open_spline(fit_points_to_cad_cv(points, unit).control_points, degree=3)
        spline = space[-1]
        spline.knots = fit_points_to_cad_cv(points, unit).knots()
    space.add_line(points[-1], points[0])
    document.saveas(name)
