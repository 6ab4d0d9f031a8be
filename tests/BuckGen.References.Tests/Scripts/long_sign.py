"""Judges a sign made in several bucks from its drawing, its job and the files written. Prints one JSON object with its faults.

Arguments: the drawing (SVG of straight paths in mm, y down), the job (TOML), the folder of the results.
"""
import glob
import json
import os
import re
import sys
import tomllib

import ezdxf
from shapely.affinity import scale, translate
from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union

from layer_file import points, sound, wood

LIMIT = 0.1  # mm, what the register openings may be off
SHRUNK = 1 - 0.45 / 100  # PETG: the middle of 0.3 to 0.6 per cent (catalog.toml)
FINE = 0.02  # mm, rounding of files and chords


def length(text):
    return float(text.removesuffix("mm"))


def drawn(file):
    """The islands of the drawing, y up."""
    text = open(file).read()
    height = float(re.search(r'viewBox="0 0 \S+ (\S+)"', text)[1])
    paths = re.findall(r' d="M ([^Z]*)Z"', text)
    return [Polygon([(float(x), height - float(y)) for x, y in (p.split() for p in path.split("L"))]) for path in paths]


def loops(file, layer):
    return [sound(Polygon(points(e))) for e in ezdxf.readfile(file).modelspace() if e.dxf.layer == layer]


def judge(drawing, job, folder):
    islands, spec = drawn(drawing), tomllib.load(open(job, "rb"))
    faults = [*openable(folder), *on_the_bed(spec, folder), *grouped(islands, spec, folder)]
    register, missing = registered(islands, spec, folder)
    faults += register
    faults += seams(spec, folder)
    return {"file": folder, "islands": len(islands), "bucks": len(glob.glob(f"{folder}/buck-*")), "farthest": missing, "faults": faults}


def openable(folder):
    files = glob.glob(f"{folder}/**/*.dxf", recursive=True)
    if len(files) < 20:
        yield f"only {len(files)} DXF files"
    for file in files:
        if ezdxf.readfile(file).audit().has_errors:
            yield f"{file} has errors"


def on_the_bed(spec, folder):
    """All that is cut lies on the bed, with its margin; nothing overlaps."""
    width, height = map(length, spec["cutting"]["bed"])
    usable = box(5 - FINE, 5 - FINE, width - 5 + FINE, height - 5 + FINE)
    boards = glob.glob(f"{folder}/**/cut/*.dxf", recursive=True)
    if not boards:
        yield "nothing is cut"
    for board in boards:
        pieces = loops(board, "CUT_OUTER")
        for piece in pieces:
            if not usable.contains(piece):
                yield f"{board}: a piece at {piece.bounds} leaves the bed"
        if sum(p.area for p in pieces) - unary_union(pieces).area > 1e-3:
            yield f"{board}: pieces overlap"


def grouped(islands, spec, folder):
    """Every island is the top layer of exactly one buck, and what stands under the sheet fits the frame."""
    frame = sorted(map(length, spec["former"]["frame"]))
    summary = json.load(open(f"{folder}/summary.json"))
    listed = sorted(numbered(islands, i) for g in summary["groups"] for i in g["islands"])
    if listed != list(range(len(islands))):
        yield f"the summary lists the islands {listed}"
    tops = {}
    for group in summary["groups"]:
        layers = sorted(glob.glob(f"{folder}/{group['folder']}/layers/layer-*.dxf"))
        tops[group["folder"]] = list(wood(layers[-1]).geoms)
        base = wood(layers[0])
        size = sorted((base.bounds[2] - base.bounds[0] + 6, base.bounds[3] - base.bounds[1] + 6))
        if size[0] > frame[0] + FINE or size[1] > frame[1] + FINE:
            yield f"{group['folder']}: the base with 3 mm of room needs {size}"
        if len(tops[group["folder"]]) != len(group["islands"]):
            yield f"{group['folder']}: {len(tops[group['folder']])} islands are cut, {group['islands']} are listed"
    for island in islands:
        holders = [f for f, woods in tops.items() for w in woods if w.contains(island.buffer(-FINE)) and w.area < 1.3 * island.area]
        if len(holders) != 1:
            yield f"the island at {island.bounds} is in {holders}"


def registered(islands, spec, folder):
    """Every opening is its island after cooling, set off evenly, at its true place."""
    openings, faults, worst = loops(f"{folder}/jig/register-01.dxf", "CUT_INNER"), [], 0.0
    if len(openings) != len(islands):
        faults.append(f"{len(openings)} openings for {len(islands)} islands")
    for island in cooled(islands, folder):
        opening = min(openings, key=lambda o: o.symmetric_difference(island).area)
        grown = (opening.bounds[2] - opening.bounds[0] - island.bounds[2] + island.bounds[0]) / 2
        # The face, its wall leaning out by the draft over the depth, the wall of the sheet, and the room asked for.
        if not length(spec["groups"]["fit"]) + 1.05 < grown < length(spec["groups"]["fit"]) + 1.05 + 1.1:
            faults.append(f"the opening at {opening.bounds} is {grown:.3f} mm larger than its island")
        off = opening.hausdorff_distance(island.buffer(grown, 64))
        worst = max(worst, off)
        if off > LIMIT:
            faults.append(f"the opening at {opening.bounds} is {off:.3f} mm off its place")
    return faults, worst


def numbered(islands, listed):
    """The island with these bounds."""
    bounds = (listed["minX"], listed["minY"], listed["maxX"], listed["maxY"])
    return min(range(len(islands)), key=lambda n: max(abs(a - b) for a, b in zip(islands[n].bounds, bounds)))


def cooled(islands, folder):
    """The islands when every formed piece has shrunk toward its own middle."""
    for group in json.load(open(f"{folder}/summary.json"))["groups"]:
        members = [islands[numbered(islands, i)] for i in group["islands"]]
        (x1, y1, x2, y2) = unary_union(members).bounds
        yield from (scale(m, SHRUNK, SHRUNK, origin=((x1 + x2) / 2, (y1 + y2) / 2)) for m in members)


def seams(spec, folder):
    """The pieces together are the board, and no seam comes near an opening."""
    board = max(wood(f"{folder}/jig/register-01.dxf").geoms, key=lambda w: w.area)
    kerf, play = length(spec["cutting"]["kerf"]), length(spec["seams"]["clearance"])
    summary = json.load(open(f"{folder}/summary.json"))
    plate = next(p for p in summary["plates"] if p["name"].startswith("REGISTER"))
    names = [n for b in summary["boards"] for n in b["parts"]]
    if sorted(names) != sorted(plate["pieces"]) or len(plate["seams"]) != len(names) - 1:
        yield f"{names} are cut, {plate['pieces']} are listed with {len(plate['seams'])} seams"
    cut = [w.buffer(-kerf / 2) for b in summary["boards"] for w in wood(f"{folder}/{b['file']}").geoms]
    edges = [-1e9, *(s["at"] for s in plate["seams"]), 1e9]
    ends = [board.bounds[0], *(s["at"] for s in plate["seams"])]
    placed = []
    for piece in cut:
        # A piece lies where its own openings are those of the board: tried at the start of every stretch.
        ways = [translate(piece, x - piece.bounds[0], board.bounds[1] - piece.bounds[1]) for x in ends]
        placed.append(max(ways, key=lambda w: board.intersection(w).area))
    joints = sum(len(s["joints"]) for s in plate["seams"])
    if not joints:
        yield "no key holds the pieces"
    # Round a key of 20 mm lie some 45 mm of edge.
    slits = joints * 60 * play
    missing, beyond = board.difference(unary_union(placed)).area, unary_union(placed).difference(board).area
    if missing > slits + FINE * board.length or beyond > FINE * board.length:
        yield f"the pieces miss {missing:.3f} mm² of the board and have {beyond:.3f} mm² too many; slits are {slits:.3f} mm²"
    if missing < joints * 20 * play:
        yield f"there is no play: only {missing:.3f} mm² are missing"
    if sum(p.area for p in placed) - unary_union(placed).area > FINE:
        yield "the pieces overlap"
    for seam in plate["seams"]:
        line = LineString([(seam["at"], seam["from"]), (seam["at"], seam["to"])])
        near = min(line.distance(Polygon(hole)) for hole in board.interiors)
        if near < 5 - FINE:
            yield f"the seam at {seam['at']} comes within {near:.2f} mm of an opening"
    keys = [p.exterior for p in placed]
    if any(k.distance(Polygon(h)) < 5 - FINE for k in keys for h in board.interiors):
        yield "a key comes near an opening"


if __name__ == "__main__":
    print(json.dumps(judge(*sys.argv[1:4])))
