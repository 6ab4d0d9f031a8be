"""Compares written layers with the offset of their source. Reads a listing, prints one JSON object a layer.

Listing: {depth, draft, thickness, mitreLimit, blockMargin, outlines: [{file, source, exported, mmPerUnit, area, cases: [
{kind, at, steps, corners, layers: [path, ...]}]}]}. `exported` is BuckGen's own reading of the file: it stands in where the
independent reader does not find the area that the corpus states, or where the corpus says that readers differ (area null).

A layer that agrees with GEOS' buffer is right. One that doesn't is compared with the exact offset, which takes far longer.
Edges more than LIMIT apart are looked at again. Where two edges meet at a sharp angle, a hair across either moves their meeting
point a long way along; so there the regions must differ by less than LIMIT across.
"""
import json
import math
import sys
from multiprocessing import Pool

from shapely.geometry import Polygon, box

import outlines
from exact_offset import exact_offset, quick_offset
from layer_file import wood
from regions import differ_across, farthest, polygons

LIMIT = 0.05  # mm
MAX_AREA_MISS = 0.0005  # of the area; half of what the test allows


def judge_outline(task):
    job, outline = task
    region, read_by = source_region(outline)
    known = {}

    def at(height, case, offset):
        reference = job["depth"] if case["at"] == "Face" else 0
        distance = (height - reference) * math.tan(math.radians(job["draft"])) * (-1 if case["kind"] == "Male" else 1)
        key = round(distance, 6), case["corners"], offset
        if key not in known:
            known[key] = offset(region, distance, job["mitreLimit"] if case["corners"] == "Mitre" else None)
        return known[key]

    return [line for case in outline["cases"] for line in judge_case(job, outline["file"], read_by, case, at)]


def source_region(outline):
    try:
        region = outlines.read(outline["source"], outline["mmPerUnit"])
        if outline["area"] and abs(region.area - outline["area"]) <= 0.001 * outline["area"]:
            return polygons(region), "an independent reader"
    except Exception:  # whatever ails the other reader, BuckGen's own tests hold its reading against the corpus
        pass
    return wood(outline["exported"]), "BuckGen"


def judge_case(job, file, read_by, case, at):
    """One line a layer. Of a female buck the areas are those of the cavity, the distance that of the wood."""
    count = round(job["depth"] / job["thickness"])
    for k in range(count):
        bottom, top = k * job["thickness"], (k + 1) * job["thickness"]
        height = {"Outside": bottom, "Inside": top, "Middle": (bottom + top) / 2}[case["steps"]]
        written = wood(case["layers"][k]) if k < len(case["layers"]) else Polygon()
        verdict = compare(job, case, written, lambda z: at(z, case, quick_offset), height)
        if verdict["maxDistance"] > LIMIT or abs(verdict["area"] - verdict["expectedArea"]) > MAX_AREA_MISS * verdict["expectedArea"]:
            verdict = compare(job, case, written, lambda z: at(z, case, exact_offset), height)
        yield {"file": file, "readBy": read_by, "case": {k: v for k, v in case.items() if k != "layers"}, "layer": k + 1, **verdict}


def compare(job, case, written, at, height):
    expected = at(height)
    areas = expected.area, written.area
    if case["kind"] == "Female":
        areas = expected.area, box(*written.bounds).area - written.area
        rim = box(*at(job["depth"]).bounds)
        expected = rim.buffer(job["blockMargin"], join_style=2).difference(expected)
    distance = farthest(expected, written)
    return {
        "expectedArea": areas[0], "area": areas[1], "maxDistance": min(distance, 1e9),
        "differsAcross": distance > LIMIT and differ_across(expected, written, LIMIT),
    }


if __name__ == "__main__":
    with open(sys.argv[1]) as listing:
        job = json.load(listing)
    shared = {k: v for k, v in job.items() if k != "outlines"}
    with Pool(2) as pool:
        for lines in pool.imap_unordered(judge_outline, [(shared, o) for o in job["outlines"]]):
            for line in lines:
                print(json.dumps(line))
