"""Measures finished parts from the written layers. Reads a listing, prints one JSON object a job.

Listing: {catalog, jobs: [{name, folder, width, height}]}. A folder holds job.toml, summary.json and the written files; width and
height are those of the drawing. All figures of a part come from the order in job.toml, the outlines in layers/*.dxf, and the
thickness of the boards. The summary gives the stock of each board, what the boards miss, and what is compared with the result.
Where the flange stays, the mouth is measured in the plane in which the flange touched the wood.

Heights over the flange: 0 is the plane in which the flange touched the wood, the face is at the depth of the stack.
"""
import json
import math
import re
import sys
import tomllib
from fractions import Fraction
from pathlib import Path

from shapely.affinity import scale
from shapely.geometry import Polygon

from layer_file import wood

LIMIT = 0.1  # mm, from the order
REPORT_LIMIT = 0.02  # mm, from what the program reports, and between layers
ARC_STEPS = 32  # in a quarter of a circle
JOINS = {"round": 1, "mitre": 2}
UNITS = {"mm": 1, "in": 25.4}
WITHIN = {"outside": 0, "middle": 0.5, "inside": 1}  # share of a layer's thickness at which its outline is drawn


def length(text):
    """mm from text such as "12mm", "1/4in" or "2 1/4in"."""
    number, unit = re.fullmatch(r"([\d./ ]+?) *([a-z]*)", text).groups()
    return float(sum(Fraction(part) for part in number.split())) * UNITS[unit]


class Buck:
    """The stack of boards: which outline the wood has at which height."""

    def __init__(self, folder, order, summary):
        buck = order["buck"]
        self.male = buck.get("kind", "male") == "male"
        self.slope = math.tan(math.radians(float(buck["draft"].removesuffix("deg"))))
        self.join = JOINS[buck.get("corners", "round")]
        self.thickness = {s["name"]: length(s["thickness"]) for s in order["stock"]}
        plates = ("base" in order) + ("under" in order.get("base", {}))
        found = sorted(folder.glob("layers/layer-*.dxf"))
        below, layers = found[:plates], found[plates:]
        stocks = {x["file"]: x["stock"] for x in summary["layers"]}
        boards = [self.thickness[stocks[f"layers/{layer.name}"]] for layer in layers]
        # Rectangular plates, which go through the frame under a male buck: the sheet covers their sides.
        self.plate_sides = sum(wood(p).envelope.length * self.thickness[stocks[f"layers/{p.name}"]] for p in below if self.male)
        self.depth = sum(boards)
        self.outlines = []
        for k, layer in enumerate(layers):
            drawn = sum(boards[:k]) + boards[k] * WITHIN[buck.get("steps", "outside")]
            self.outlines.append((drawn if self.male else self.depth - drawn, self.shape(layer)))

    def shape(self, layer):
        """What the sheet is formed over or into: the wood of a male buck, the cavity in the block of a female one."""
        found = wood(layer)
        if self.male:
            return found
        (block,) = found.geoms
        return Polygon(block.exterior).difference(found)

    def at(self, height):
        """The shape at a height over the flange, from the nearest layer: away from the flange it grows narrower."""
        drawn, outline = min(self.outlines, key=lambda o: abs(o[0] - height))
        return moved(outline, (drawn - height) * self.slope, self.join)

    def mean_wall(self, gauge, frame):
        """Gauge of the sheet over the ratio by which its area grows. Between layers the perimeter changes evenly.

        Over a male buck all that lies free in the frame is formed, over its plates too, in a cavity what lies over its mouth.
        """
        flange, face = self.at(0), self.at(self.depth)
        around = sorted([(0, flange.length), (self.depth, face.length), *((h, o.length) for h, o in self.outlines)])
        wall = sum((h2 - h1) * (p1 + p2) / 2 for (h1, p1), (h2, p2) in zip(around, around[1:])) * math.hypot(1, self.slope)
        flat = frame if self.male else flange.area
        return gauge * flat / (flat - flange.area + face.area + wall + self.plate_sides)


def moved(region, distance, join):
    return region.buffer(distance, ARC_STEPS, join_style=join, mitre_limit=5) if abs(distance) > 1e-9 else region


def size(region):
    left, low, right, high = region.bounds
    return right - left, high - low


def cut_height(folder, order, summary, buck, gauge):
    """Where the part ends. It stands on its flange: the wood touched the underside over a male buck, the top of a cavity's."""
    under = 0 if buck.male else -gauge
    if "cut-height" in order["part"]:
        return length(order["part"]["cut-height"]) + under
    if "jig" not in order:
        return under
    stocks = {x["file"]: x["stock"] for x in summary["accessories"]}
    boards = [buck.thickness[stocks[f"jig/{ring.name}"]] for ring in sorted(folder.glob("jig/ring-*.dxf"))]
    # A ring of one board has no room for the flange and stands on it.
    return sum(boards) + under + (gauge if len(boards) == 1 else 0)


def shrinkage(order, buck, catalog):
    """Of the plastic's range the middle, where the order gives none."""
    if "shrinkage" in order["buck"]:
        return order["buck"]["shrinkage"]
    plastic = next(p for p in catalog["plastic"] if p["id"] == order["sheet"]["plastic"])
    low, high = (not buck.male and plastic.get("shrinkage-female") or plastic["shrinkage"])["value"]
    return (low + high) / 2


def measured(buck, gauge, frame, cut, cooled):
    """Depths and sizes of the cooled and cut part on both sides, mm.

    The inside of a cavity's part ends on its floor, a wall above the wood. The outer edge of a male part's face is round: it is
    measured where the rounding begins, level with the wood.
    """
    wall = buck.mean_wall(gauge, frame)
    level = wall * math.hypot(1, buck.slope)  # the wall is measured square to its slope
    touched = buck.depth * cooled
    own, other = ("inside", "outside") if buck.male else ("outside", "inside")
    sign = 1 if buck.male else -1

    def at(height, aside):
        return size(moved(scale(buck.at(height / cooled), cooled, cooled), aside, JOINS["round"]))

    return wall, {
        own: {"depth": touched - cut, "mouth": at(max(0, cut), 0), "face": at(touched, 0)},
        other: {"depth": touched - cut + sign * wall, "mouth": at(max(0, cut), sign * level),
                "face": at(touched, sign * level if buck.male else wall * buck.slope - level)},
    }


def judge(job, catalog):
    folder = Path(job["folder"])
    order = tomllib.loads((folder / "job.toml").read_text())
    summary = json.loads((folder / "summary.json").read_text())
    buck = Buck(folder, order, summary)
    gauge = length(order["sheet"]["gauge"])
    cut = cut_height(folder, order, summary, buck, gauge)
    cooled = 1 - shrinkage(order, buck, catalog) / 100
    frame = math.prod(map(length, order["former"]["frame"]))
    wall, part = measured(buck, gauge, frame, cut, cooled)
    side, end = order["part"].get("drawn", "inside"), order["part"].get("at", "mouth")
    drawn = map(length, order["part"]["size"]) if "size" in order["part"] else (job["width"], job["height"])
    ordered = [*drawn, length(order["part"]["depth"])]
    found = [*part[side][end], part[side]["depth"]]
    report = summary["part"]
    reported = [report[end][f"{side}Width"], report[end][f"{side}Height"], report[f"{side}Depth"]]
    boards = summary["buck"]["depthMiss"] * cooled
    faults = [
        *misses(ordered, found, boards, length(order["buck"].get("depth-tolerance", "0.5mm"))),
        *differences(part, report, cut, None if order.get("forming", {}).get("predict", True) else wall),
        *bends(buck),
    ]
    return {"job": job["name"], "ordered": ordered, "measured": found, "reported": reported, "boards": boards, "wall": wall,
            "faults": faults}


def misses(ordered, found, boards, tolerance):
    """What differs from the order. The boards may miss the depth by what the order allows."""
    for what, wanted, is_ in zip(("width", "height"), ordered, found):
        if abs(is_ - wanted) > LIMIT:
            yield f"{what} {is_:.3f} mm, ordered {wanted:.3f}"
    miss = found[2] - ordered[2]
    if abs(miss - boards) > LIMIT:
        yield f"depth {found[2]:.3f} mm, ordered {ordered[2]:.3f}, of which the boards miss {boards:.3f}"
    if abs(miss) > tolerance + LIMIT:
        yield f"depth {found[2]:.3f} mm, ordered {ordered[2]:.3f} within {tolerance:.2f}"


def differences(part, report, cut, wall):
    """What the program reports otherwise. Of a predicted wall (None) only the side on the wood is compared."""
    pairs = [("cut", cut, report["cutHeight"])] + ([("wall", wall, report["faceWall"])] if wall else [])
    for side in ("inside", "outside") if wall else ("inside",):
        pairs.append((f"{side} depth", part[side]["depth"], report[f"{side}Depth"]))
        for end in ("mouth", "face"):
            pairs += [(f"{side} {end} {what.lower()}", found, report[end][side + what])
                      for what, found in zip(("Width", "Height"), part[side][end])]
    yield from (f"{what} {found:.3f} mm, reported {reported:.3f}" for what, found, reported in pairs
                if abs(found - reported) > REPORT_LIMIT)


def bends(buck):
    """Layers that don't stand on one straight wall: each, moved to the flange, has the size there."""
    wanted = size(buck.at(0))
    for number, (height, outline) in enumerate(buck.outlines, 1):
        found = size(moved(outline, height * buck.slope, buck.join))
        if max(abs(a - b) for a, b in zip(wanted, found)) > REPORT_LIMIT:
            yield f"wall layer {number} is {found} mm at the flange, the nearest layer {wanted}"


if __name__ == "__main__":
    listing = json.loads(Path(sys.argv[1]).read_text())
    known = tomllib.loads(Path(listing["catalog"]).read_text())
    for each in listing["jobs"]:
        print(json.dumps(judge(each, known)))
