using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>A line from (0, 0) to (10, 0) and a half circle of 5 mm round the origin, from (5, 0) to (-5, 0).</summary>
public class IntersectionsTests
{
    private static readonly Segment Line = new(new(0, 0), new(10, 0)), Half = new(new(5, 0), new(-5, 0), 1);

    [Theory]
    // Half of the chord is √(25 - 9) = 4 mm.
    [InlineData(5, 3, 5, new[] { 0.1, 0.9 })]
    [InlineData(2, 0, 5, new[] { 0.7 })]
    [InlineData(8, 0, 5, new[] { 0.3 })]
    // At both ends of the line, and nowhere.
    [InlineData(5, 0, 5, new double[0])]
    [InlineData(5, 6, 5, new double[0])]
    [InlineData(5, 0, 0, new double[0])]
    // A miss by less than 0.000001 mm is rounding.
    [InlineData(5, 5.0000005, 5, new[] { 0.5, 0.5 })]
    [InlineData(5, 5.000002, 5, new double[0])]
    public void A_circle_meets_a_line(double x, double y, double radius, double[] at) =>
        AssertAt(at, WithCircle(Line, new(x, y), radius));

    [Theory]
    // At (4, 3): acos(4/5) is 36.87 of 180°. At (4, -3) there is no arc.
    [InlineData(8, 0, 5, new[] { 0.204833 })]
    [InlineData(0, 8, 5, new[] { 0.295167, 0.704833 })]
    [InlineData(0, 0, 4, new double[0])]
    [InlineData(0, 11, 5, new double[0])]
    [InlineData(0, 10.0000005, 5, new[] { 0.5, 0.5 })]
    public void A_circle_meets_an_arc(double x, double y, double radius, double[] at) =>
        AssertAt(at, WithCircle(Half, new(x, y), radius));

    [Theory]
    [InlineData(0, 3, new[] { 0.204833, 0.795167 })]
    [InlineData(0, -3, new double[0])]
    [InlineData(0, 6, new double[0])]
    public void A_level_line_meets_an_arc(double x, double y, double[] at) => AssertAt(at, WithLine(Half, new(x, y), new(2, 0)));

    [Fact]
    public void A_line_meets_a_line()
    {
        AssertAt([0.4], WithLine(Line, new(1, -3), new(1, 1)));
        AssertAt([], WithLine(Line, new(1, -3), new(1, 0)));
        AssertAt([], WithLine(Line, new(-1, -3), new(0, 1)));
    }

    private static void AssertAt(double[] expected, double[] found)
    {
        Assert.Equal(expected.Length, found.Length);
        Assert.All(expected.Zip(found), p => Assert.Equal(p.First, p.Second, 1e-4));
    }

    private static double[] WithCircle(Segment piece, Vec2 centre, double radius)
    {
        Span<double> space = stackalloc double[4];
        var found = new ParameterList(space);
        Intersections.WithCircle(new(piece), centre, radius, ref found);
        return found.Sorted.ToArray();
    }

    private static double[] WithLine(Segment piece, Vec2 point, Vec2 direction)
    {
        Span<double> space = stackalloc double[4];
        var found = new ParameterList(space);
        Intersections.WithLine(new(piece), point, direction, ref found);
        return found.Sorted.ToArray();
    }
}
