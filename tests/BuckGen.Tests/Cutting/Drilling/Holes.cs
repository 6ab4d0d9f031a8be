using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Cutting.Drilling;
using BuckGen.Geometry;

namespace BuckGen.Tests.Cutting.Drilling;

/// <summary>Holes for the tests of drill files.</summary>
internal static class Holes
{
    /// <summary>Two layers, two bits, a negative zero, and reasons that need quotation marks.</summary>
    public static DrillHole[] Few { get; } =
    [
        new(new(30, 10), 3, 12, 1, "relief bore"),
        new(new(10, -0.0), 3, 12, 1, "relief bore"),
        new(new(10, 0), 1.5, 6, 2, "foot of the wall"),
        new(new(30.1235, 10.00049), 1.5, 5.25, 2, "corner, inside"),
        new(new(-5, 20), 1.5, 6, 2, "counter of \"O\""),
    ];

    /// <summary>Holes of one layer and one bit at given points, of three depths.</summary>
    public static DrillHole[] At(IEnumerable<Vec2> points) =>
        [.. points.Select((p, i) => new DrillHole(p, 1.5, 4 + i % 3 * 1.25, 1, "vent"))];

    public static string Text(this ImmutableArray<byte> bytes) => Encoding.UTF8.GetString(bytes.AsSpan());

    public static T Under<T>(string culture, Func<T> work)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
