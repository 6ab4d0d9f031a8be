using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>What every offsetter does with nothing, with no distance and when it is stopped.</summary>
public class OffsetterArgumentTests
{
    private static readonly Region Source = Shapes.Rectangle(100, 60);

    private static readonly IOffsetter[] All =
        [new ArcOffsetter(), new PolygonOffsetter(0.01), CheckedOffsetter.Standard(Tolerance.Default),
            new TidiedOffsetter(new ArcOffsetter())];

    [Fact]
    public void Nothing_is_refused()
    {
        foreach (var offsetter in All)
        {
            Assert.Throws<ArgumentNullException>(() => offsetter.Offset(null!, 1, CornerJoin.Round));
            Assert.Throws<ArgumentNullException>(() => offsetter.Offset(Source, 1, null!));
        }

        Assert.Throws<ArgumentNullException>(() => CheckedOffsetter.Standard(null!));
        Assert.Throws<ArgumentNullException>(() => new CheckedOffsetter(0.01).Offset(null!, 1, CornerJoin.Round));
        Assert.Throws<ArgumentNullException>(() => OffsetCheck.Fault((Region)null!, Source, 1, CornerJoin.Round, 0.01));
        Assert.Throws<ArgumentNullException>(() => OffsetCheck.Fault(Source, null!, 1, CornerJoin.Round, 0.01));
        Assert.Throws<ArgumentNullException>(() => OffsetCheck.Fault(Source, Source, 1, null!, 0.01));
    }

    [Fact]
    public void Each_step_can_be_stopped()
    {
        var stopped = new CancellationToken(true);
        var edges = new SegmentIndex(Source.Segments);

        foreach (var offsetter in All)
            Assert.Throws<OperationCanceledException>(() => offsetter.Offset(Source, 3, CornerJoin.Round, stopped));
        foreach (var offsetter in All[..2])
            Assert.Throws<OperationCanceledException>(() => offsetter.Offset(Source, 0, CornerJoin.Round, stopped));
        Assert.Throws<OperationCanceledException>(
            () => CoincidentPieces.Resolve([new(Source.Segments.First(), 0, RawPieceKind.Side)], stopped));
        Assert.Throws<OperationCanceledException>(() =>
            OffsetCheck.Fault(Source, Shapes.RectangleAt(-3, -3, 106, 66), 3, CornerJoin.Mitre, 0.01, stopped));
        Assert.Throws<OperationCanceledException>(() =>
            new SideLaw(edges, new(Source), 3, null, 0.01).Fault(Source.OnlyLoop(), stopped));
        Assert.Throws<OperationCanceledException>(() =>
            new MissingEdges(Source, edges, new(Source), 3, null, 0.01).Fault(Source, stopped));
    }

    [Fact]
    public void No_distance_changes_nothing()
    {
        Assert.Same(Source, new PolygonOffsetter(0.01).Offset(Source, 0, CornerJoin.Round));
        Assert.Same(Region.Empty, new PolygonOffsetter(0.01).Offset(Region.Empty, 5, CornerJoin.Round));
        Assert.Null(OffsetCheck.Fault(Source, Source, 0, CornerJoin.Round, 0.01));
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(0.1)]
    public void The_polygon_rung_keeps_its_chord_error_round_corners(double chord)
    {
        // Half-way along every piece and at every corner the edge is 50 mm away.
        var grown = new PolygonOffsetter(chord).Offset(Source, 50, CornerJoin.Round);

        Assert.All(grown.Segments, s => Assert.Equal(50, Source.DistanceToEdge(s.PointAt(0.5)), chord));
        Assert.All(grown.Segments, s => Assert.Equal(50, Source.DistanceToEdge(s.Start), chord));
        Assert.Equal(6000 + 320 * 50 + Math.PI * 2500, grown.Area, chord * 100 * Math.PI);
    }

    [Fact]
    public void The_polygon_rung_mitres_on_request() =>
        Assert.Equal(120 * 80, new PolygonOffsetter(0.01).Offset(Source, 10, CornerJoin.Mitre).Area, 1e-6);

    [Fact]
    public void What_counts_as_rounding_follows_from_the_depth()
    {
        // At 2 mm: 2·√(8e-9 / 2) radians, and 3·√(2·2·1e-9) mm; ends are joined within 0.00001 mm in any case.
        Assert.Equal(1.2649e-4, Precision.SmoothTurn(2), 1e-8);
        Assert.Equal(1.8974e-4, Precision.Reach(2), 1e-8);
        Assert.Equal(1.8974e-4, Precision.Reach(-2), 1e-8);
        Assert.Equal(1e-5, Precision.Reach(1e-4));
    }
}
