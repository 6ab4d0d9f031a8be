namespace BuckGen.Geometry.Tests;

/// <summary>Regions whose offsets can be computed by hand.</summary>
internal static class Shapes
{
    /// <summary>The bulge of a quarter turn to the left: tan(90°/4).</summary>
    public static double QuarterTurn { get; } = Math.Tan(Math.PI / 8);

    public static Region Rectangle(double width, double height) => RectangleAt(0, 0, width, height);

    public static Region RectangleAt(double x, double y, double width, double height) =>
        Region.FromLoops([Loop.Rectangle(new(x, y, x + width, y + height))]);

    public static Region Disc(double radius) => DiscAt(0, 0, radius);

    public static Region DiscAt(double x, double y, double radius) => Region.FromLoops([Loop.Circle(new(x, y), radius)]);

    public static Region Ring(double outer, double inner) =>
        Region.FromLoops([Loop.Circle(new(0, 0), outer), Loop.Circle(new(0, 0), inner)]);

    /// <summary>Two lines and two half circles that meet smoothly.</summary>
    public static Region Slot(double betweenCentres, double radius) => Region.FromLoops(
        [Loop.FromCorners(
            [(new(0, -radius), 0), (new(betweenCentres, -radius), 1), (new(betweenCentres, radius), 0), (new(0, radius), 1)])]);

    /// <summary>A block letter O: a rectangle with a rectangular counter in its middle.</summary>
    public static Region Counter(double width, double height, double counterWidth, double counterHeight) => Region.FromLoops(
    [
        Loop.Rectangle(new(0, 0, width, height)),
        Loop.Rectangle(
            new((width - counterWidth) / 2, (height - counterHeight) / 2, (width + counterWidth) / 2,
                (height + counterHeight) / 2)),
    ]);

    public static Region Polygon(params (double X, double Y)[] corners) =>
        Region.FromLoops([Loop.Polygon(corners.Select(c => new Vec2(c.X, c.Y)))]);

    public static Region Union(params Region[] apart) => Region.FromLoops(apart.SelectMany(r => r.Loops));

    public static Region Moved(this Region region, double x, double y) => region.Transformed(Affine.Translation(new(x, y)));

    /// <summary>The one loop of a region that has only one.</summary>
    public static Loop OnlyLoop(this Region region) => region.Loops.Single();
}
