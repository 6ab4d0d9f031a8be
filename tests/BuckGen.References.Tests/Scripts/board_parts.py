"""Looks at boards with parts laid out: kerf, spacing, margin. Prints one JSON object a board with its faults and largest misses.

Listing: [{file, width, height, spacing, margin, kerf, parts: [{name, layerFile, island, map: [xx, xy, yx, yy, x, y]}]}].
A part is the island of that number, in file order, of a nominal layer; the map takes it to the board.
"""
import json
import sys

from shapely.affinity import affine_transform
from shapely.geometry import Point, Polygon, box

from exact_offset import quick_offset
from layer_file import entities, points, wood
from regions import farthest

LIMIT = 0.01  # mm
DOT = 0.055  # mm across on average: a hole as narrow as that is told of and not cut


def without_dots(part):
    return Polygon(part.exterior, [r for r in part.interiors if 2 * Polygon(r).area / r.length >= DOT])


def judge(board):
    parts = [Part(board, p) for p in board["parts"]]
    cut = list(wood(board["file"]).geoms)
    faults, worst = [], 0.0
    if len(cut) != len(parts):
        faults.append(f"{len(cut)} parts are cut, {len(parts)} were laid out")
    for part in parts:
        found = min(cut, key=lambda c: c.symmetric_difference(part.expected).area)
        distance = farthest(without_dots(found), without_dots(part.expected))
        worst = max(worst, distance)
        if distance > LIMIT:
            faults.append(f"part {part.name} is {distance:.3f} mm off its nominal outline moved by half the kerf")
        faults += part.holes_missing(circles(board["file"]))
    usable = box(0, 0, board["width"], board["height"]).buffer(-board["margin"] + LIMIT, join_style=2)
    faults += [f"a part at {c.bounds} comes too near the edge of the board" for c in cut if not usable.contains(c)]
    near = min([a.distance(b) for i, a in enumerate(cut) for b in cut[i + 1:]], default=None)
    if near is not None and near < board["spacing"] - LIMIT:
        faults.append(f"two parts are only {near:.3f} mm apart")
    return {"file": board["file"], "parts": len(parts), "farthest": worst, "nearest": near, "faults": faults}


class Part:
    """A part as it ought to be on the board."""

    def __init__(self, board, part):
        self.name, self.map, self.kerf = part["name"], part["map"], board["kerf"]
        outers = [Polygon(points(e)) for e in entities(part["layerFile"]) if e.dxf.layer == "CUT_OUTER"]
        outer = outers[part["island"]].buffer(0)
        island = max(wood(part["layerFile"]).geoms, key=lambda w: w.symmetric_difference(outer).area * -1 if outer.covers(w) else -1e12)
        self.expected = affine_transform(quick_offset(island, self.kerf / 2), self.map).geoms[0] if self.kerf else affine_transform(island, self.map)
        self.holes = [(k, affine_transform(Point(x, y), self.map), r) for k, x, y, r in circles(part["layerFile"]) if island.contains(Point(x, y))]

    def holes_missing(self, found):
        """Dowel and vent holes, smaller by half the kerf all round."""
        for kind, centre, radius in self.holes:
            if not any(k == kind and centre.distance(Point(x, y)) < LIMIT and abs(r - radius + self.kerf / 2) < LIMIT for k, x, y, r in found):
                yield f"part {self.name} lacks a {kind} hole of radius {radius - self.kerf / 2:.3f} at ({centre.x:.2f}, {centre.y:.2f})"


def circles(file):
    return [(e.dxf.layer, e.dxf.center.x, e.dxf.center.y, e.dxf.radius)
            for e in entities(file) if e.dxf.layer == "DOWEL" and e.dxftype() == "CIRCLE"]


if __name__ == "__main__":
    with open(sys.argv[1]) as listing:
        for board in json.load(listing):
            print(json.dumps(judge(board)))
