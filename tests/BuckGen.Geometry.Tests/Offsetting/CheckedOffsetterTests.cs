using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class CheckedOffsetterTests
{
    private static readonly Region Source = Shapes.Rectangle(100, 60);

    [Theory]
    [InlineData(-0.003)]
    [InlineData(-0.01)]
    [InlineData(0.003)]
    public void Walls_of_no_width_leave_nothing_of_their_sides(double distance)
    {
        // A panel drawn twice, one corner 0.25 mm aside: three of its sides run along each other, between them is air.
        var panel = Shapes.Polygon((5, 5), (75, 7.5), (65, 45), (10, 47.5));
        var twice = Region.FromLoops([.. panel.Loops, Loop.Polygon(new(4.75, 5), new(75, 7.5), new(65, 45), new(10, 47.5))]);

        var moved = CheckedOffsetter.Standard(Tolerance.Default).Offset(twice, distance, CornerJoin.Round);

        Assert.InRange(moved.Area, 0, twice.Area + twice.Perimeter * 0.01);
        Assert.Null(OffsetCheck.Fault(twice, moved, distance, CornerJoin.Round, 0.01));
    }

    [Fact]
    public void The_first_rung_that_keeps_the_law_is_taken()
    {
        var offsetter = new CheckedOffsetter(0.01, new ArcOffsetter(), new Broken());

        Assert.Equal(8, offsetter.Offset(Source, 3, CornerJoin.Round).Segments.Count());
    }

    [Fact]
    public void A_rung_that_breaks_the_law_is_skipped()
    {
        var offsetter = new CheckedOffsetter(0.01, new Wrong(), new ArcOffsetter());

        Assert.Equal(6000 + 320 * 3 + Math.PI * 9, offsetter.Offset(Source, 3, CornerJoin.Round).Area, 1e-6);
    }

    [Fact]
    public void A_rung_that_gives_up_is_skipped()
    {
        var offsetter = new CheckedOffsetter(0.01, new Broken(), new ArcOffsetter());

        Assert.Equal(6000 + 320 * 3 + Math.PI * 9, offsetter.Offset(Source, 3, CornerJoin.Round).Area, 1e-6);
    }

    [Fact]
    public void When_no_rung_is_left_every_fault_is_reported()
    {
        var offsetter = new CheckedOffsetter(0.01, new Broken(), new Wrong());

        var message = Assert.Throws<OffsetFailedException>(() => offsetter.Offset(Source, 3, CornerJoin.Round)).Message;

        Assert.Contains("could not be offset by 3 mm", message);
        Assert.Contains("gave up; ", message);
        Assert.Contains("from the outline", message);
    }

    /// <summary>Found among damaged drawings: a word could be offset by 0.05 mm and not by 0.0008 mm.</summary>
    [Theory]
    [InlineData(0.0025)]
    [InlineData(-0.0025)]
    public void A_quarter_of_the_tolerance_is_as_good_as_nothing_when_no_rung_is_left(double distance)
    {
        var offsetter = new CheckedOffsetter(0.01, new Broken());

        Assert.Same(Source, offsetter.Offset(Source, distance, CornerJoin.Mitre));
        Assert.Throws<OffsetFailedException>(() => offsetter.Offset(Source, distance * 1.01, CornerJoin.Mitre));
    }

    private sealed class Broken : IOffsetter
    {
        public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default) =>
            throw new OffsetFailedException("gave up");
    }

    private sealed class Wrong : IOffsetter
    {
        public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default) =>
            new ArcOffsetter().Offset(region, distance * 1.5, join, cancellation);
    }
}
