using System.Collections.Immutable;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Thickness;

/// <summary>The parts of a net of triangles whose thickness lies in the same band, each with its outline.</summary>
/// <remarks>
/// Thickness runs evenly over each triangle. Its share of a band is a polygon; sides that two polygons of a band have in common
/// cancel, and what is left are the outlines.
/// </remarks>
internal sealed class ThicknessBands
{
    private readonly FormedPart part;
    private readonly ThicknessScale scale;
    private readonly Func<FormedPoint, Vec2> map;
    private readonly int[] bands;

    private ThicknessBands(FormedPart part, ThicknessScale scale, Func<FormedPoint, Vec2> map)
    {
        (this.part, this.scale, this.map) = (part, scale, map);
        bands = [.. part.Points.Select(p => scale.BandOf(p.Thickness))];
    }

    /// <summary>The bands, thinnest first, filled.</summary>
    /// <param name="part">The part.</param>
    /// <param name="scale">The bands' limits.</param>
    /// <param name="map">Where a point stands on paper.</param>
    public static IEnumerable<PictureShape> Draw(FormedPart part, ThicknessScale scale, Func<FormedPoint, Vec2> map)
    {
        var bands = new ThicknessBands(part, scale, map);
        for (var band = 0; band < ThicknessColours.Count; band++)
        {
            var outlines = bands.Outlines(band);
            // A hairline of the same colour, so that no white shows between bands.
            if (outlines.Length > 0)
                yield return new(outlines, new(ThicknessColours.ForBand(band), 0.08, ThicknessColours.ForBand(band)));
        }
    }

    private ImmutableArray<PicturePath> Outlines(int band)
    {
        var sides = new Dictionary<Corner, List<Corner>>();
        foreach (var triangle in part.Triangles)
        {
            var polygon = Share(triangle, band);
            for (var i = 0; i < polygon.Count; i++) Add(sides, polygon[i], polygon[(i + 1) % polygon.Count]);
        }
        var paths = ImmutableArray.CreateBuilder<PicturePath>();
        foreach (var start in sides.Keys.Order().ToArray())
            while (sides[start].Count > 0)
                if (Chain(sides, start) is { Length: > 2 } loop) paths.Add(new(Closed(loop), true));
        return paths.ToImmutable();
    }

    /// <summary>A side that two triangles share, in opposite directions, is not part of an outline.</summary>
    private static void Add(Dictionary<Corner, List<Corner>> sides, Corner from, Corner to)
    {
        if (from == to) return;
        if (sides.TryGetValue(to, out var back) && back.Remove(from)) return;
        if (!sides.TryGetValue(from, out var next)) sides[from] = next = [];
        next.Add(to);
        if (!sides.ContainsKey(to)) sides[to] = [];
    }

    private ImmutableArray<Vec2> Chain(Dictionary<Corner, List<Corner>> sides, Corner start)
    {
        var places = ImmutableArray.CreateBuilder<Vec2>();
        var at = start;
        do
        {
            places.Add(Place(at));
            var next = sides[at];
            at = next[^1];
            next.RemoveAt(next.Count - 1);
        }
        while (at != start);
        return places.ToImmutable();
    }

    private static ImmutableArray<Segment> Closed(ImmutableArray<Vec2> places) =>
        [.. places.Select((p, i) => new Segment(p, places[(i + 1) % places.Length]))];

    /// <summary>
    /// The part of a triangle within a band: on a walk round it, the corners in the band and where the sides enter and leave it.
    /// </summary>
    private List<Corner> Share(FormedTriangle triangle, int band)
    {
        var polygon = new List<Corner>();
        foreach (var (from, to) in (ReadOnlySpan<(int, int)>)[(triangle.A, triangle.B), (triangle.B, triangle.C),
            (triangle.C, triangle.A)])
        {
            var (here, next) = (bands[from], bands[to]);
            if (here == band) polygon.Add(new(from, from, 0));
            if (here < next) AddCrossings(band, band + 1);
            else if (here > next) AddCrossings(band + 1, band);

            void AddCrossings(int first, int second)
            {
                foreach (var limit in (ReadOnlySpan<int>)[first, second])
                    if (limit > Math.Min(here, next) && limit <= Math.Max(here, next))
                        polygon.Add(new(Math.Min(from, to), Math.Max(from, to), limit));
            }
        }
        return polygon;
    }

    private Vec2 Place(Corner corner)
    {
        var (from, to) = (part.Points[corner.From], part.Points[corner.To]);
        if (corner.From == corner.To) return map(from);
        var share = Math.Clamp((scale.Limit(corner.Limit) - from.Thickness) / (to.Thickness - from.Thickness), 0, 1);
        var (a, b) = (map(from), map(to));
        return a + (b - a) * share;
    }

    /// <summary>A point of the net, or where the line between two of them crosses a limit.</summary>
    private readonly record struct Corner(int From, int To, int Limit) : IComparable<Corner>
    {
        public int CompareTo(Corner other) => (From, To, Limit).CompareTo((other.From, other.To, other.Limit));
    }
}
