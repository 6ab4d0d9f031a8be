using System.Collections.Immutable;
using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>The form of a polyline that all readers take: no piece without length, no bulge near zero or above one.</summary>
internal static class PolylineCleaning
{
    // As many decimals as are written: vertices that agree in these are the same place in the file.
    private const int Decimals = 6;

    public static DxfPolyline Clean(DxfPolyline polyline)
    {
        var distinct = Distinct(polyline);
        if (distinct.Length < 2)
        {
            throw new DxfException(
                $"it has fewer than two vertices apart from each other (layer {polyline.Layer}); leave it out",
                polyline.Line, polyline.Type);
        }

        var last = polyline.Closed ? distinct.Length : distinct.Length - 1;
        var pieces = Enumerable.Range(0, distinct.Length)
            .SelectMany(i => Piece(distinct[i], distinct[(i + 1) % distinct.Length], leaves: i < last));
        return polyline with { Vertices = [.. pieces] };
    }

    // A vertex is dropped when the next one lies on it, because the piece between them has no length and its bulge no meaning.
    private static ImmutableArray<DxfVertex> Distinct(DxfPolyline polyline)
    {
        var vertices = polyline.Vertices;
        return [.. vertices.Where((vertex, i) => i == vertices.Length - 1
            ? !polyline.Closed || !SamePlace(vertex, vertices[0])
            : !SamePlace(vertex, vertices[i + 1]))];
    }

    private static bool SamePlace(DxfVertex a, DxfVertex b) =>
        Math.Round(a.X, Decimals) == Math.Round(b.X, Decimals) && Math.Round(a.Y, Decimals) == Math.Round(b.Y, Decimals);

    private static IEnumerable<DxfVertex> Piece(DxfVertex start, DxfVertex end, bool leaves)
    {
        var (dx, dy, bulge) = (end.X - start.X, end.Y - start.Y, start.Bulge);
        var sagitta = Math.Abs(bulge) * Math.Sqrt((dx * dx) + (dy * dy)) / 2;
        if (!leaves || sagitta < DxfWriteLimits.FlatSagitta)
            return [start with { Bulge = 0 }];
        if (Math.Abs(bulge) <= 1)
            return [start];
        var half = Math.Tan(Math.Atan(bulge) / 2);
        var middle = new DxfVertex(((start.X + end.X) + (dy * bulge)) / 2, ((start.Y + end.Y) - (dx * bulge)) / 2, half);
        return [start with { Bulge = half }, middle];
    }
}
