using BuckGen.Geometry;
using BuckGen.Geometry.Polygonal;
using NetTopologySuite.Geometries;
using NetTopologySuite.Noding;
using NetTopologySuite.Noding.Snapround;

namespace BuckGen.Output.Models.Meshing;

/// <summary>Rounds all plans of a solid to the grid together, so that wherever two of them meet both have a corner.</summary>
internal static class Noding
{
    /// <summary>The contour of each plan.</summary>
    /// <param name="plans">The plans, each once.</param>
    /// <param name="origin">The grid's origin, mm.</param>
    public static IReadOnlyDictionary<Region, Contour> Contours(IReadOnlyCollection<Region> plans, Vec2 origin)
    {
        var strings = new List<ISegmentString>();
        foreach (var plan in plans)
        {
            foreach (var loop in plan.Loops)
            {
                var points = PolygonConversion.Flattened(loop, SolidBuilder.ChordError)
                    .Select(p => GridPoint.Nearest(p, origin)).ToList();
                var corners = points.Append(points[0]).Select(p => p.ToCoordinate()).ToArray();
                strings.Add(new NodedSegmentString(CoordinateArrays.RemoveRepeatedPoints(corners), plan));
            }
        }

        var noder = new SnapRoundingNoder(new PrecisionModel(1));
        noder.ComputeNodes([.. strings.Where(s => s.Count > 1)]);
        var pieces = noder.GetNodedSubstrings()
            .ToLookup(s => (Region)s.Context, (IEqualityComparer<Region>)ReferenceEqualityComparer.Instance);
        return plans.ToDictionary(p => p, p => new Contour(pieces[p].SelectMany(Pieces)),
            (IEqualityComparer<Region>)ReferenceEqualityComparer.Instance);
    }

    private static IEnumerable<(GridPoint From, GridPoint To)> Pieces(ISegmentString line)
    {
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var (from, to) = (GridPoint.FromCoordinate(line.Coordinates[i]), GridPoint.FromCoordinate(line.Coordinates[i + 1]));
            if (from != to) yield return (from, to);
        }
    }
}
