"""Outline files read without BuckGen: DXF by ezdxf, SVG by librsvg. Millimetres, y up."""
import re
import subprocess
import xml.etree.ElementTree as xml

import ezdxf
from ezdxf import disassemble, path
from ezdxf.math import Bezier4P, Vec2
from shapely.geometry import Polygon

import curves
from regions import enclosed, painted

CHORD = 0.002  # mm, farthest a flattened curve leaves the true one
ZOOM = 32  # librsvg rounds to 1/256 pixel: draw large, so that this is nothing
PIXEL = 25.4 / 96 / ZOOM


def read(file, mm_per_unit):
    """The region that a file encloses."""
    return read_svg(file) if file.endswith((".svg", ".svgz")) else read_dxf(file, mm_per_unit)


def read_dxf(file, mm_per_unit):
    document = ezdxf.readfile(file)
    chains = []
    for entity in disassemble.recursive_decompose(document.modelspace()):
        if is_visible(entity, document):
            chains += chains_of(entity, CHORD / mm_per_unit)
    return enclosed([[(x * mm_per_unit, y * mm_per_unit) for x, y in c] for c in chains])


def is_visible(entity, document):
    layer = entity.dxf.layer
    shown = layer not in document.layers or not (document.layers.get(layer).is_off() or document.layers.get(layer).is_frozen())
    return shown and layer.lower() != "defpoints" and not entity.dxf.get("invisible", 0)


def chains_of(entity, chord):
    """Points along a line, curve or polyline; nothing for other kinds."""
    kind = entity.dxftype()
    if kind == "SPLINE":
        return [along_spline(entity.construction_tool(), chord)]
    if kind not in ("LINE", "ARC", "CIRCLE", "ELLIPSE", "LWPOLYLINE", "POLYLINE"):
        return []
    if kind == "POLYLINE" and not (entity.is_2d_polyline or entity.is_3d_polyline):
        return []
    points = along_path(path.make_path(entity), chord)
    return [points] if len(points) > 1 else []


def along_spline(spline, chord):
    """Knot by knot, since a spline may have a corner at a knot."""
    knots = sorted({k for k in spline.knots() if spline.knots()[spline.degree] <= k <= spline.knots()[-spline.degree - 1]})
    points = []
    for low, high in zip(knots, knots[1:]):
        points += curves.along(lambda t: spline.point(low + (high - low) * t).vec2, chord)
    return [tuple(p) for p in points]


def along_path(drawn, chord):
    points = [drawn.start.vec2]
    for step in drawn.commands():
        if step.type == path.Command.LINE_TO:
            points.append(step.end.vec2)
        else:
            points += curves.along(Bezier4P([points[-1], step.ctrl1.vec2, step.ctrl2.vec2, step.end.vec2]).point, chord)[1:]
    return [tuple(p) for p in points]


def read_svg(file):
    """librsvg resolves style, size, transforms and references and hands out plain paths in pixels, 96 an inch."""
    plain = xml.fromstring(subprocess.run([
        "rsvg-convert", "--zoom", str(ZOOM), "--format", "svg", file], check=True, capture_output=True, timeout=60).stdout)
    height = float(plain.get("height"))
    regions, seen = [], set()
    for shape in plain.iterfind("{*}g//{*}path"):
        style = dict(item.split(":") for item in shape.get("style").replace(" ", "").split(";") if item)
        rings, closed = svg_rings(shape.get("d"), svg_matrix(shape.get("transform")))
        rings = [[(x * PIXEL, (height - y) * PIXEL) for x, y in r] for r in rings]
        if style.get("fill") == "none":
            rings = [r for r, is_closed in zip(rings, closed) if is_closed]
        key = frozenset((round(x, 2), round(y, 2)) for r in rings for x, y in r)
        if key in seen:
            continue
        seen.add(key)
        regions.append(painted(rings, "evenodd" if style.get("fill") == "none" else style.get("fill-rule", "nonzero")))
    whole = Polygon()
    for region in regions:
        whole = whole.symmetric_difference(region)
    return whole


def svg_rings(data, matrix):
    """The subpaths of a path that has only absolute M, L, C and Z, and whether each is closed."""
    rings, closed = [], []
    a, b, c, d, e, f = matrix
    for command, numbers in re.findall(r"([MLCZ])([^MLCZ]*)", data):
        v = [float(n) for n in numbers.split()]
        points = [Vec2(a * x + c * y + e, b * x + d * y + f) for x, y in zip(v[::2], v[1::2])]
        if command == "M":
            rings.append(points)
            closed.append(False)
        elif command == "L":
            rings[-1] += points
        elif command == "C":
            rings[-1] += curves.along(Bezier4P([rings[-1][-1], *points]).point, CHORD / PIXEL)[1:]
        else:
            closed[-1] = True
    shapes = [[(p.x, p.y) for p in r] for r in rings]
    return shapes, [z or r[0] == r[-1] for z, r in zip(closed, shapes)]


def svg_matrix(text):
    return [float(n) for n in text[len("matrix("):-1].split(",")] if text else [1, 0, 0, 1, 0, 0]
