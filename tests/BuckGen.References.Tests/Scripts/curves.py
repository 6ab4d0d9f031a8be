"""Points along curves."""

CORNER = 0.0005  # share of a curve
FLATNESS = 0.004  # height of an arc over its chord: 1.8 degrees from chord to chord


def along(curve, chord):
    """Points of a curve, given as a function from 0..1, so that no chord leaves it by more than `chord`.

    Mitres depend on directions: so the first and the last step are very short and run along the curve's own tangent, and from
    chord to chord the direction turns too little to be taken for a corner.
    """
    stops = [0, CORNER, 0.25, 0.5, 0.75, 1 - CORNER, 1]
    points = [curve(0)]
    for start, end in zip(stops, stops[1:]):
        points += between(curve, start, points[-1], end, curve(end), chord, 12)
    return points


def between(curve, t1, p1, t2, p2, chord, halvings):
    """The points after p1 up to p2."""
    middle = (t1 + t2) / 2
    point = curve(middle)
    if halvings == 0 or point.distance(p1.lerp(p2)) <= min(chord, FLATNESS * p1.distance(p2)):
        return [p2]
    return [*between(curve, t1, p1, middle, point, chord, halvings - 1), *between(curve, middle, point, t2, p2, chord, halvings - 1)]
