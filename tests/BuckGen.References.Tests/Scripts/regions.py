"""Regions of the plane from drawn lines, and how far two regions differ."""
import math

import numpy as np
from scipy.spatial import cKDTree
from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.ops import polygonize, unary_union


def enclosed(chains, join=0.02):
    """What a set of drawn point chains encloses, even-odd: a face is inside when a ray from it crosses an odd number of lines.

    Ends nearer than `join` count as one. Lines drawn twice count once.
    """
    chains = with_common_ends([c for c in chains if len(c) > 1], join)
    faces = list(polygonize(unary_union([LineString(c) for c in chains])))
    edges = segments(unary_union([f.boundary for f in faces]))
    return unary_union([f for f in faces if crossings(f.representative_point(), edges).sum() % 2])


def painted(rings, rule):
    """What one filled SVG path paints, by its fill rule."""
    rings = [[*r, r[0]] for r in rings if len(r) > 2]
    faces = list(polygonize(unary_union([LineString(r) for r in rings])))
    edges = np.vstack([np.hstack([np.array(r[:-1]), np.array(r[1:])]) for r in rings]) if rings else np.empty((0, 4))
    inside = []
    for face in faces:
        point = face.representative_point()
        crossed = crossings(point, edges)
        up = edges[:, 3] > edges[:, 1]
        winding = crossed[up].sum() - crossed[~up].sum()
        if crossed.sum() % 2 if rule == "evenodd" else winding:
            inside.append(face)
    return unary_union(inside)


def with_common_ends(chains, join):
    """The chains with ends nearer than `join` moved onto each other."""
    ends = np.array([c[k] for c in chains for k in (0, -1)])
    known = [None] * len(ends)
    for i, near in enumerate(cKDTree(ends).query_ball_point(ends, join) if len(ends) else []):
        known[i] = next((known[j] for j in sorted(near) if known[j] is not None), tuple(ends[i]))
    return [[known[2 * i], *map(tuple, c[1:-1]), known[2 * i + 1]] for i, c in enumerate(chains)]


def segments(lines):
    """The two-point pieces of lines as rows x1, y1, x2, y2."""
    parts = getattr(lines, "geoms", [lines])
    rows = [np.hstack([c[:-1], c[1:]]) for c in (np.array(p.coords) for p in parts) if len(c) > 1]
    return np.vstack(rows) if rows else np.empty((0, 4))


def crossings(point, edges):
    """For each edge, whether a ray from the point to the right crosses it."""
    x1, y1, x2, y2 = edges.T
    with np.errstate(divide="ignore", invalid="ignore"):
        at = x1 + (point.y - y1) / (y2 - y1) * (x2 - x1)
        return ((y1 > point.y) != (y2 > point.y)) & (at > point.x)


def rings(region):
    """Every closed boundary of a region, outer and inner."""
    polygons = region.geoms if hasattr(region, "geoms") else [region]
    return [r for p in polygons if isinstance(p, Polygon) and not p.is_empty for r in (p.exterior, *p.interiors)]


def polygons(region):
    """Only the parts of a region that have an area."""
    return MultiPolygon([p for p in getattr(region, "geoms", [region]) if isinstance(p, Polygon) and not p.is_empty])


CLOSE = 0.003  # mm; what is nearer is not measured better


def farthest(a, b):
    """Hausdorff distance of two boundaries, seen from points a millimetre apart and from all corners; below CLOSE a bound of it."""
    if a.is_empty or b.is_empty:
        return 0.0 if a.is_empty and b.is_empty else math.inf
    return max(one_way(a, b), one_way(b, a))


def differ_across(a, b, width):
    """Whether two regions differ anywhere by as much as a disc of that diameter."""
    return not a.symmetric_difference(b).buffer(-width / 2).is_empty


def one_way(a, b, step=0.25):
    """The farthest that a point of one boundary is from the other.

    The edges of the nearest sample bound a distance from above. The nearest edge has a sample within that and a step. Points are
    looked at from the largest bound down, until no bound is larger than what was found, or all are below CLOSE.
    """
    points, edges = sampled(a, 1.0)[0], boundary(b)
    samples, edge_of = sampled(b, step)
    tree = cKDTree(samples, compact_nodes=False, balanced_tree=False)
    nearest = edge_of[tree.query(points)[1]]
    # A corner is the first sample of one edge, and the end of the one before.
    bounds = np.minimum(from_edges(points, edges[nearest]), from_edges(points, edges[nearest - 1]))
    found = min(CLOSE, float(bounds.max()))
    for i in np.argsort(-bounds):
        if bounds[i] <= found:
            break
        near = np.unique(edge_of[tree.query_ball_point(points[i], bounds[i] + step)])
        found = max(found, float(from_edges(points[i], edges[near]).min()))
    return found


def from_edges(points, edges):
    """The distance of each point from the edge beside it."""
    start, way = edges[:, :2], edges[:, 2:] - edges[:, :2]
    length = np.maximum((way * way).sum(axis=1), 1e-30)
    share = np.clip(((points - start) * way).sum(axis=1) / length, 0, 1)
    return np.hypot(*(points - start - way * share[:, None]).T)


def boundary(region):
    """All edges of a region as rows x1, y1, x2, y2."""
    return np.vstack([segments(r) for r in rings(region)])


def sampled(region, step):
    """Points along the boundary at most `step` apart, corners included, and the edge of each."""
    edges = boundary(region)
    counts = np.maximum(1, np.ceil(np.hypot(edges[:, 2] - edges[:, 0], edges[:, 3] - edges[:, 1]) / step)).astype(int)
    edge_of = np.repeat(np.arange(len(edges)), counts)
    rows = edges[edge_of]
    share = (np.arange(counts.sum()) - np.repeat(np.cumsum(counts) - counts, counts)) / counts[edge_of]
    return rows[:, :2] + (rows[:, 2:] - rows[:, :2]) * share[:, None], edge_of
