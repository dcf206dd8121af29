"""Reads a DXF file with ezdxf and prints what it found, a line an entity."""
import sys

import ezdxf
from ezdxf.math import bulge_to_arc

document = ezdxf.readfile(sys.argv[1])
auditor = document.audit()
for error in auditor.errors + auditor.fixes:
    print("complaint", error.message)
print("version", document.dxfversion)
print("units", document.header.get("$INSUNITS", 0))
for layer in document.layers:
    print("layer", layer.dxf.name)
for entity in document.modelspace():
    kind, layer = entity.dxftype(), entity.dxf.layer
    if kind == "CIRCLE":
        print("circle", layer, entity.dxf.center.x, entity.dxf.center.y, entity.dxf.radius)
    elif kind == "LINE":
        start, end = entity.dxf.start, entity.dxf.end
        print("line", layer, start.x, start.y, end.x, end.y)
    elif kind == "ARC":
        dxf = entity.dxf
        print("arc", layer, dxf.center.x, dxf.center.y, dxf.radius, dxf.start_angle, dxf.end_angle)
    elif kind == "POLYLINE":
        vertices = list(entity.vertices)
        print("polyline", layer, int(entity.is_closed), len(vertices))
        for at, vertex in enumerate(vertices):
            start = vertex.dxf.location
            end = vertices[(at + 1) % len(vertices)].dxf.location
            bulge = vertex.dxf.get("bulge", 0.0)
            if bulge == 0:
                print("edge", layer, start.x, start.y, end.x, end.y)
            else:
                centre, _, _, radius = bulge_to_arc(start.vec2, end.vec2, bulge)
                sign = 1 if bulge > 0 else -1
                print("bend", layer, start.x, start.y, end.x, end.y, centre.x, centre.y,
                      radius, sign)
    else:
        print("complaint unexpected", kind)
