using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>What lies behind a moved piece keeps the distance from all of it: judged point by point.</summary>
public class BehindTests
{
    private const double Distance = 2;

    public static TheoryData<double, double> Sources => new()
    {
        { 0, Distance }, { 0, -Distance }, { 0.3, Distance }, { -0.3, -Distance }, { 0.3, -Distance }, { 0.95, Distance },
        { -0.95, -Distance },
    };

    [Theory]
    [MemberData(nameof(Sources))]
    public void What_lies_behind_keeps_the_distance(double bulge, double distance)
    {
        var source = new Carrier(new(new(0, 0), new(6, 1), bulge));
        var moved = Moved(source.Segment, distance);
        AssertHolds(
            Behind.FromPiece(new(moved, 0, RawPieceKind.Side), source), moved, isConvex: bulge == 0 || bulge > 0 == distance > 0);
    }

    [Fact]
    public void What_lies_behind_a_corner_keeps_the_distance_from_the_arc_round_it()
    {
        var source = new Carrier(new(new(-5, 0), new(0, 0)));
        var moved = Segment.Arc(new(0, -Distance), new(Distance, 0), Math.PI / 2);
        AssertHolds(Behind.FromPiece(new(moved, 0, RawPieceKind.RoundJoin), source), moved, isConvex: true);
    }

    [Fact]
    public void Behind_a_mitre_is_nothing() =>
        Assert.False(Behind.FromPiece(new(new(new(0, 0), new(1, 0)), 0, RawPieceKind.Mitre), new(new(new(0, 2), new(1, 2))))
            .Holds(new Bounds(0, 90, 1, 91)));

    private static void AssertHolds(Behind behind, Segment moved, bool isConvex)
    {
        var (random, held, all) = (new Random(1), 0, 20_000);
        for (var i = 0; i < all; i++)
        {
            var p = new Vec2(random.NextDouble() * 30 - 12, random.NextDouble() * 30 - 15);
            var box = Bounds.FromCorners(p, p + new Vec2(random.NextDouble(), random.NextDouble()));
            if (!behind.Holds(box)) continue;
            held++;
            Vec2[] corners = [box.LowerLeft, new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)];
            foreach (var corner in corners)
                Assert.InRange(moved.DistanceTo(corner), Distance - 1e-9, double.PositiveInfinity);
        }

        // Inward an arc has nothing behind it.
        if (isConvex) Assert.InRange(held, all / 10, all);
        else Assert.Equal(0, held);
    }

    private static Segment Moved(Segment s, double distance) => new(
        s.Start - s.DirectionAt(0).Left * distance, s.End - s.DirectionAt(1).Left * distance, s.Bulge);
}
