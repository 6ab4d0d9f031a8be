"""Measures the play between a part and its lid from the written layers. Reads a listing, prints one JSON object a job.

The listing is that of finished_part.py. The lid's files are in the folder lid of the job. All figures come from the order, the
outlines in layers/*.dxf and the thickness of the boards; the summary gives the stock of each board and what is compared.
"""
import json
import math
import sys
import tomllib
from pathlib import Path

from shapely.affinity import scale
from shapely.geometry import Point

from finished_part import JOINS, Buck, cut_height, length, moved, shrinkage

LIMIT = 0.05  # mm
HEIGHTS = 13
STEP = 0.5  # mm, along the outline


class Part:
    """The cooled part: both sides of its wall at each height over the plane in which the flange touched the wood."""

    def __init__(self, folder, order, catalog):
        self.summary = json.loads((folder / "summary.json").read_text())
        self.buck = Buck(folder, order, self.summary)
        self.gauge = length(order["sheet"]["gauge"])
        self.cooled = 1 - shrinkage(order, self.buck, catalog) / 100
        wall = self.buck.mean_wall(self.gauge, math.prod(map(length, order["former"]["frame"])))
        self.level = wall * math.hypot(1, self.buck.slope)
        self.depth = self.buck.depth * self.cooled

    def inside(self, height):
        return scale(self.buck.at(height / self.cooled), self.cooled, self.cooled, origin=(0, 0))

    def outside(self, height):
        return moved(self.inside(height), self.level, JOINS["round"])


def judge(job, catalog):
    folder = Path(job["folder"])
    order = tomllib.loads((folder / "job.toml").read_text())
    part, lid = Part(folder, order, catalog), Part(folder / "lid", order, catalog)
    cut = cut_height(folder, order, part.summary, part.buck, part.gauge)
    fit, skirt = order["lid"]["fit"], length(order["lid"]["skirt"])
    reach = min(skirt, lid.depth if fit == "over" else lid.depth - lid.gauge)
    plays = []
    for below in (reach * k / (HEIGHTS - 1) for k in range(HEIGHTS)):
        # Over the part, the lid's floor lies on the mouth; into it, the lid's flange does.
        inner, outer = (
            (part.outside(cut + below), lid.inside(lid.depth - below)) if fit == "over"
            else (lid.outside(lid.gauge + below), part.inside(cut + below)))
        plays += list(between(inner, outer))
    report = lid.summary["part"]["mating"]
    found = {"minPlay": min(plays), "maxPlay": max(plays)}
    faults = [f"{what} {found[what]:.3f} mm, reported {report[what]:.3f}" for what in found if abs(found[what] - report[what]) > LIMIT]
    if abs(found["minPlay"] - length(order["lid"]["clearance"])) > LIMIT:
        faults.append(f"minPlay {found['minPlay']:.3f} mm, ordered {order['lid']['clearance']}")
    return {"job": job["name"], **found, "faults": faults}


def between(inner, outer):
    """The distances from the outline of the inner to that of the outer; below 0 where the inner reaches out of it."""
    (island,), edge = getattr(inner, "geoms", [inner]), outer.boundary
    ring = island.exterior
    for k in range(int(ring.length / STEP)):
        place = Point(ring.interpolate(k * STEP))
        yield place.distance(edge) * (1 if outer.contains(place) else -1)


if __name__ == "__main__":
    listing = json.loads(Path(sys.argv[1]).read_text())
    known = tomllib.loads(Path(listing["catalog"]).read_text())
    for each in listing["jobs"]:
        print(json.dumps(judge(each, known)))
