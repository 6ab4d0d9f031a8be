using BuckGen.Geometry;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Intake.Measuring;

/// <summary>Shapes whose measures can be computed by hand, and their measures.</summary>
internal static class Measured
{
    /// <summary>What rounding may change, mm or degrees.</summary>
    public const double Near = 1e-6;

    public static OutlineMeasures Measure(Region region) => OutlineMeasures.Measure(Outline.FromRegion("a shape", region));

    public static Neck NeckOf(Region region) => Assert.IsType<Neck>(Measure(region).NarrowestNeck);

    public static Gap GapOf(Region region) => Assert.IsType<Gap>(Measure(region).NarrowestGap);

    public static void Width(double expected, Neck neck) => Assert.Equal(expected, neck.Width, Near);

    public static void At(double x, double y, Vec2 place)
    {
        Assert.Equal(x, place.X, Near);
        Assert.Equal(y, place.Y, Near);
    }

    /// <summary>Two 40 mm squares joined by a bar 10 mm wide and 20 mm long.</summary>
    public static Loop Dumbbell { get; } = Loop.Polygon(
        new(0, 0), new(40, 0), new(40, 15), new(60, 15), new(60, 0), new(100, 0), new(100, 40), new(60, 40), new(60, 25),
        new(40, 25), new(40, 40), new(0, 40));

    /// <summary>A wedge that points left along the x axis, its tip in the origin, 100 mm long.</summary>
    /// <param name="degrees">The angle of its tip.</param>
    /// <param name="tip">The corners that stand in the place of the tip, from the upper side to the lower; none leaves it
    /// sharp.</param>
    public static Region Wedge(double degrees, params (Vec2 Point, double Bulge)[] tip)
    {
        var height = 100 * Math.Tan(degrees * Math.PI / 360);
        (Vec2, double)[] ends = [(new(100, -height), 0), (new(100, height), 0)];
        return Region.FromLoops([Loop.FromCorners([.. ends, .. tip.Length == 0 ? [(new Vec2(0, 0), 0.0)] : tip])]);
    }

    /// <summary>A wedge whose tip is rounded.</summary>
    public static Region RoundedWedge(double degrees, double radius)
    {
        var half = degrees * Math.PI / 360;
        var touch = new Vec2(radius / Math.Tan(half), 0).Turned(half);
        return Wedge(degrees, (touch, Math.Tan((Math.PI - 2 * half) / 4)), (new(touch.X, -touch.Y), 0));
    }

    /// <summary>A regular polygon round the origin.</summary>
    public static Loop Regular(int corners, double radius) =>
        Loop.Polygon(Enumerable.Range(0, corners).Select(i => new Vec2(radius, 0).Turned(2 * Math.PI * i / corners)));

    /// <summary>An ellipse of many lines, its half axes along x and y.</summary>
    public static Loop Ellipse(int corners, double a, double b) => Loop.Polygon(Enumerable.Range(0, corners).Select(i =>
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * i / corners);
        return new Vec2(a * cos, b * sin);
    }));
}
