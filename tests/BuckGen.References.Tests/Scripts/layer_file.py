"""A file written by BuckGen, read back by ezdxf."""
import functools
import math

import ezdxf
from shapely.geometry import Polygon

from curves import CORNER, FLATNESS
from regions import polygons

CHORD = 0.002


@functools.lru_cache(maxsize=32)
def entities(file):
    """All that is drawn in a file. A board asks for its file and those of its layers many times over."""
    return list(ezdxf.readfile(file).modelspace())


def wood(file):
    """What is left of the board: inside an odd number of cuts. Dowel holes and marks don't count."""
    whole = Polygon()
    for entity in entities(file):
        if entity.dxf.layer in ("CUT_OUTER", "CUT_INNER"):
            whole = whole.symmetric_difference(sound(Polygon(points(entity))))
    return polygons(whole)


def sound(polygon):
    """Chords of two arcs that touch may cross by less than their sagitta."""
    return polygon if polygon.is_valid else polygon.buffer(0)


def points(entity):
    """Points along a circle or polyline, arcs as chords."""
    if entity.dxftype() == "CIRCLE":
        (x, y, _), r = entity.dxf.center, entity.dxf.radius
        return arc((x + r, y), (x - r, y), 1) + arc((x - r, y), (x + r, y), 1)
    if entity.dxftype() == "POLYLINE":
        vertices = [(*v.dxf.location.vec2, v.dxf.bulge) for v in entity.vertices]
    else:
        vertices = list(entity.get_points("xyb"))
    ends = vertices[1:] + vertices[:1] if entity.is_closed else vertices[1:]
    line = [p for (x, y, bulge), end in zip(vertices, ends) for p in arc((x, y), end[:2], bulge)]
    return line if entity.is_closed else [*line, vertices[-1][:2]]


def arc(start, end, bulge):
    """Points along an arc whose angle is four times the arc tangent of the bulge; the end is left out."""
    if not bulge:
        return [tuple(start)]
    (x1, y1), (x2, y2) = start, end
    angle = 4 * math.atan(bulge)
    lift = (1 / bulge - bulge) / 4  # centre to chord, over the chord, to the left
    x, y = (x1 + x2) / 2 - (y2 - y1) * lift, (y1 + y2) / 2 + (x2 - x1) * lift
    radius = math.hypot(x1 - x, y1 - y)
    step = min(2 * math.acos(max(0, 1 - CHORD / radius)), 8 * FLATNESS)
    steps = max(1, math.ceil(abs(angle) / step))
    first = math.atan2(y1 - y, x1 - x)
    shares = [CORNER, *(k / steps for k in range(1, steps)), 1 - CORNER]
    return [(x1, y1), *((x + radius * math.cos(first + angle * s), y + radius * math.sin(first + angle * s)) for s in shares)]
