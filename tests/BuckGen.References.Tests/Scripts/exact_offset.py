"""The offset of a region by GEOS, in two ways.

The quick one is GEOS' own buffer of the whole region, which first simplifies it by 1 % of the distance. The exact one joins one
exact piece an edge and a corner. A single edge has nothing to simplify, so this union is as true as its arcs are fine.
"""
import math

from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.geometry.polygon import orient
from shapely.ops import unary_union

from regions import polygons, rings

QUARTER_STEPS = 32
SMOOTH_TURN = math.radians(3)


def quick_offset(region, distance, mitre_limit=None):
    """The region grown by a positive distance or shrunk by a negative one, true to about 1 % of the distance."""
    if abs(distance) < 1e-12:
        return region
    return mitred(region, region.buffer(distance, QUARTER_STEPS), distance, mitre_limit)


def exact_offset(region, distance, mitre_limit=None):
    """The region grown by a positive distance or shrunk by a negative one; corners round, or mitred up to the limit."""
    if abs(distance) < 1e-12:
        return region
    moved = unary_union([band for wall in walls(region) for band in bands(wall, abs(distance))])
    return mitred(region, region.union(moved) if distance > 0 else region.difference(moved), distance, mitre_limit)


def mitred(region, rounded, distance, mitre_limit):
    """What is rounded, with its corners drawn out to the mitre limit; as it is where there is no limit."""
    if mitre_limit:
        tips = unary_union([wedge for wall in walls(region) for wedge in wedges(wall, distance, mitre_limit)])
        rounded = rounded.union(tips) if distance > 0 else rounded.difference(tips)
    return polygons(rounded)


def walls(region):
    return rings(MultiPolygon([orient(p) for p in polygons(region).geoms]))


def bands(wall, distance):
    """All points within the distance of each edge."""
    points = wall.coords
    return [LineString(pair).buffer(distance, QUARTER_STEPS) for pair in zip(points, points[1:]) if pair[0] != pair[1]]


def wedges(wall, distance, limit):
    """At each corner that opens, what lies between the two tangents, cut square to the bisector at limit times the distance.

    Material lies to the left, so a left turn opens when the region grows and a right turn when it shrinks.
    """
    points = [p for p, q in zip(wall.coords, wall.coords[1:]) if p != q]
    for before, corner, after in zip([points[-1], *points[:-1]], points, [*points[1:], points[0]]):
        come, go = direction(before, corner), direction(corner, after)
        turn = math.remainder(go - come, 2 * math.pi)
        if abs(turn) > SMOOTH_TURN and (turn > 0) == (distance > 0):
            out = math.copysign(abs(distance), -turn)
            yield Polygon([corner, aside(corner, come, out), *tip(corner, come, turn, out, limit), aside(corner, go, out)])


def tip(corner, come, turn, out, limit):
    """The point where the tangents meet, or the two where they are cut off."""
    reach, half = abs(out), abs(turn) / 2
    middle = come + turn / 2 + math.copysign(math.pi / 2, out)
    if limit * math.cos(half) >= 1:
        return [along(corner, middle, reach / math.cos(half))]
    foot = along(corner, middle, limit * reach)
    width = math.copysign((reach - limit * reach * math.cos(half)) / math.sin(half), out)
    return [aside(foot, middle, width), aside(foot, middle, -width)]


def direction(a, b):
    return math.atan2(b[1] - a[1], b[0] - a[0])


def along(p, angle, length):
    return p[0] + math.cos(angle) * length, p[1] + math.sin(angle) * length


def aside(p, angle, left):
    return along(p, angle + math.pi / 2, left)
