"""Looks for what spoils a cut: open contours, doubled or overlapping paths, dots, holes cut after their part has come loose.

Prints one JSON object a file with the list of faults.
"""
import json
import os
import sys

from shapely.geometry import LinearRing, LineString, Polygon

from layer_file import entities, points

THROUGH = ("CUT_OUTER", "CUT_INNER", "DOWEL", "VENT")
NARROWEST = {"cut": 0.05, "layers": 0.002, "jig": 0.002, "panel": 0.002}  # mm across, on average; a nominal layer may show a counter that has all but closed
COMMON = 0.01  # mm of path that two paths may share, where contours touch in a point


def faults(file):
    drawing = entities(file)
    cuts = [e for e in drawing if e.dxf.layer in THROUGH]
    yield from (f"{e.dxf.layer} {e} is open" for e in cuts if e.dxftype() != "CIRCLE" and not e.is_closed)
    rings = [LinearRing(points(e)) for e in cuts if e.dxftype() == "CIRCLE" or e.is_closed]
    yield from (f"{place(r)} is only a dot or a slit" for r in rings if 2 * Polygon(r).area / r.length < NARROWEST[os.path.basename(os.path.dirname(file))])
    yield from (f"{place(r)} runs over itself" for r in rings if not Polygon(r).buffer(0).length > r.length - COMMON)
    drawn = [*rings, *(line_of(e) for e in drawing if e.dxf.layer not in THROUGH)]
    for i, a in enumerate(drawn):
        for b in drawn[i + 1:]:
            if boxes_meet(a, b) and a.intersection(b).length > COMMON:
                yield f"{place(a)} and {place(b)} run along each other"
    for i, (e, ring) in enumerate(zip(cuts, rings)):
        late = [k for k in range(i + 1, len(cuts)) if cuts[k].dxf.layer != "CUT_OUTER"] if e.dxf.layer == "CUT_OUTER" else []
        part = Polygon(ring).buffer(0)
        yield from (f"{place(rings[k])} is cut after the part round it" for k in late if part.contains(rings[k]))


def line_of(entity):
    line = points(entity)
    return LinearRing(line) if entity.dxftype() == "CIRCLE" or entity.is_closed else LineString(line)


def boxes_meet(a, b):
    (l, u, r, o), (p, q, s, t) = a.bounds, b.bounds
    return l <= s and p <= r and u <= t and q <= o


def place(line):
    return "the path round ({:.2f}, {:.2f})".format((line.bounds[0] + line.bounds[2]) / 2, (line.bounds[1] + line.bounds[3]) / 2)


for file in sys.argv[1:]:
    print(json.dumps({"file": file, "faults": list(faults(file))}))
