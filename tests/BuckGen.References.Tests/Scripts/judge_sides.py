"""Compares layers of bucks whose sides have stretches with the offset of their outline. Prints one JSON object a layer.

Listing: {depth, thickness, bucks: [{file, outline, kind, side: [{height, draft, inset}], layers: [path, ...]}]}. Stretches stand
from the flange to the face; the one without a height takes the rest. The outline is to size at the upper plane, and layers are
cut at their lower face. The side is walked here anew.
"""
import json
import math
import sys
from multiprocessing import Pool

from shapely.geometry import Polygon, box

from exact_offset import exact_offset, quick_offset
from layer_file import wood
from regions import farthest

LIMIT = 0.05  # mm
MAX_AREA_MISS = 0.0005  # of the area; half of what the test allows
JUST_OVER = 1e-6  # mm: of two walls that meet at a ledge the upper one counts


def inset(side, depth, from_flange):
    """How far the wall stands inside the outline at the flange."""
    rest = depth - sum(s["height"] or 0 for s in side)
    at, total = 0.0, 0.0
    for stretch in side:
        height = rest if stretch["height"] is None else stretch["height"]
        across = height * math.tan(math.radians(stretch["draft"])) if stretch["inset"] is None else stretch["inset"]
        if from_flange < at + height:
            return total + across * (from_flange - at) / height
        at, total = at + height, total + across
    return total


def agree(expected, written):
    return abs(expected.area - written.area) <= MAX_AREA_MISS * expected.area and farthest(expected, written) <= LIMIT


def judge(task):
    job, buck = task
    outline, depth, lines = wood(buck["outline"]), job["depth"], []
    male = buck["kind"] == "Male"
    at_face = inset(buck["side"], depth, depth if male else 0)
    for k in range(round(depth / job["thickness"])):
        height = k * job["thickness"] + JUST_OVER
        moved = at_face - inset(buck["side"], depth, height if male else depth - height)
        written = wood(buck["layers"][k]) if k < len(buck["layers"]) else Polygon()
        if not male:
            written = box(*written.bounds).difference(written)
        # What agrees with GEOS' buffer is right; what doesn't is compared with the exact offset, which takes far longer.
        expected = quick_offset(outline, moved)
        if not agree(expected, written):
            expected = exact_offset(outline, moved)
        distance = farthest(expected, written)
        lines.append({"buck": f'{buck["kind"]} {buck["file"]}, layer {k + 1}', "expectedArea": expected.area,
                      "area": written.area, "distance": min(distance, 1e9)})
    return lines


if __name__ == "__main__":
    with open(sys.argv[1]) as listing:
        job = json.load(listing)
    with Pool(2) as pool:
        for lines in pool.imap_unordered(judge, [(job, b) for b in job["bucks"]]):
            for line in lines:
                print(json.dumps(line))
