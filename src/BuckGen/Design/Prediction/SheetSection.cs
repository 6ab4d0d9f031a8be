using System.Collections.Immutable;

namespace BuckGen.Design.Prediction;

/// <summary>
/// Section through the formed sheet in a plane y = const: polylines in the upright plane, from left to right where they do not
/// close.
/// </summary>
internal static class SheetSection
{
    /// <summary>The polylines, the longest first.</summary>
    /// <param name="part">The part.</param>
    /// <param name="y">Position of the plane, mm.</param>
    public static ImmutableArray<ImmutableArray<SectionPoint>> AtY(FormedPart part, double y)
    {
        var successors = new Dictionary<(int, int), (int, int)>();
        foreach (var triangle in part.Triangles)
            if (EdgesCrossed(part, triangle, y) is { } piece) successors[piece.From] = piece.To;
        var ends = successors.Values.ToHashSet();
        var starts = successors.Keys.Where(k => !ends.Contains(k)).Order().ToList();
        var lines = ImmutableArray.CreateBuilder<ImmutableArray<SectionPoint>>();
        while (successors.Count > 0)
        {
            // What is left when no polyline has a start is closed.
            var at = starts.Count > 0 ? starts[0] : successors.Keys.Order().First();
            if (starts.Count > 0) starts.RemoveAt(0);
            var line = ImmutableArray.CreateBuilder<SectionPoint>();
            line.Add(PointOn(part, at, y));
            while (successors.Remove(at, out var following))
            {
                var point = PointOn(part, following, y);
                var length = Math.Sqrt(Square(point.X - line[^1].X) + Square(point.Z - line[^1].Z));
                line.Add(point with { ArcLength = line[^1].ArcLength + length });
                at = following;
            }
            lines.Add(line[0].X <= line[^1].X ? line.ToImmutable() : Reversed(line));
        }
        return [.. lines.OrderByDescending(l => l[^1].ArcLength)];
    }

    private static ImmutableArray<SectionPoint> Reversed(IReadOnlyList<SectionPoint> line) =>
        [.. line.Reverse().Select(p => p with { ArcLength = line[^1].ArcLength - p.ArcLength })];

    /// <summary>The edges by which the section enters and leaves a triangle, with larger y to its left.</summary>
    private static ((int, int) From, (int, int) To)? EdgesCrossed(FormedPart part, FormedTriangle t, double y)
    {
        (int, int)? from = null, to = null;
        foreach (var (a, b) in t.Corners.Edges())
        {
            var (isBehind, isNextBehind) = (part.Points[a].Y >= y, part.Points[b].Y >= y);
            if (isBehind && !isNextBehind) from = (Math.Min(a, b), Math.Max(a, b));
            else if (!isBehind && isNextBehind) to = (Math.Min(a, b), Math.Max(a, b));
        }
        return from is { } f && to is { } u ? (f, u) : null;
    }

    private static SectionPoint PointOn(FormedPart part, (int A, int B) side, double y)
    {
        var (a, b) = (part.Points[side.A], part.Points[side.B]);
        var share = (y - a.Y) / (b.Y - a.Y);
        return new(0, a.X + (b.X - a.X) * share, a.Z + (b.Z - a.Z) * share, a.Thickness + (b.Thickness - a.Thickness) * share);
    }

    private static double Square(double length) => length * length;
}

/// <summary>A point of the section.</summary>
/// <param name="ArcLength">Arc length from the start of the polyline, mm.</param>
/// <param name="X">Position, mm, as in the design.</param>
/// <param name="Z">Height above the bottom of the stack, mm.</param>
/// <param name="Thickness">Thickness, mm.</param>
internal readonly record struct SectionPoint(double ArcLength, double X, double Z, double Thickness);
