using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class FlatArcOffsetterTests
{
    /// <summary>
    /// Found by a damaged file: a spike of five metres whose side was an arc of 80 km radius. Here a plate with a tail of 1.65 m,
    /// and such an arc on the tail's side behind an inside corner.
    /// </summary>
    private static readonly Region Tailed = Region.FromLoops([Loop.FromSegments(
    [
        new(new(0, 0), new(10, 0)), new(new(10, 0), new(10.16, -1654), 5e-6), new(new(10.16, -1654), new(60, -1654)),
        new(new(60, -1654), new(60, 40)), new(new(60, 40), new(0, 40)), new(new(0, 40), new(0, 0)),
    ])]);

    [Theory]
    [InlineData(0.26, Corners.Mitre)]
    [InlineData(0.26, Corners.Round)]
    [InlineData(-0.26, Corners.Mitre)]
    [InlineData(5, Corners.Mitre)]
    public void A_very_flat_arc_gives_way_to_chords(double distance, Corners corners)
    {
        CornerJoin join = new(corners);
        var offset = new FlatArcOffsetter(new ArcOffsetter(), 0.0025).Offset(Tailed, distance, join);

        Assert.Null(OffsetCheck.Fault(Tailed, offset, distance, join, 0.01));
        // 5e-6 · 1654 / 2 = 0.0041 mm of height: two chords come within 0.0025 mm, one does not.
        Assert.Equal(corners == Corners.Mitre ? 7 : 7 + 5, offset.Segments.Count());
        Assert.All(offset.Segments, s => Assert.True(!s.IsArc || s.Radius < 1));
    }

    [Fact]
    public void Other_arcs_stay_arcs()
    {
        var disc = Region.FromLoops([Loop.Circle(new(0, 0), 20)]);

        Assert.Equal(Math.PI * 21 * 21,
            new FlatArcOffsetter(new ArcOffsetter(), 0.0025).Offset(disc, 1, CornerJoin.Round).Area, 1e-9);
    }

    [Fact]
    public void The_usual_offset_of_it_keeps_its_laws() =>
        Assert.False(CheckedOffsetter.Standard(Tolerance.Default).Offset(Tailed, 0.26, CornerJoin.Mitre).IsEmpty);
}
