using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>What becomes of pieces that lie on each other.</summary>
public class CoincidentPiecesTests
{
    private static readonly Segment Line = new(new(0, 0), new(10, 0));

    private static readonly Segment HalfCircle = new(new(5, 0), new(-5, 0), 1);

    [Fact]
    public void Opposite_pieces_both_go() => Assert.Empty(Resolved(Line, Line.Reversed()));

    [Fact]
    public void Opposite_arcs_both_go() => Assert.Empty(Resolved(HalfCircle, HalfCircle.Reversed()));

    [Fact]
    public void Of_two_in_one_direction_the_first_stays()
    {
        Assert.Equal([Line], Resolved(Line, Line));
        Assert.Equal([HalfCircle], Resolved(HalfCircle, HalfCircle));
    }

    [Fact]
    public void Only_the_shared_stretch_goes()
    {
        var left = Resolved(Line, new(new(7, 0), new(4, 0)));

        Assert.Equal(2, left.Length);
        Assert.Equal(4, left[0].Length, 1e-9);
        Assert.Equal(7, left[1].Start.X, 1e-9);
    }

    [Fact]
    public void Of_an_arc_the_shared_angle_goes()
    {
        var left = Resolved(HalfCircle, HalfCircle.Part(0, 0.25).Reversed());

        Assert.Equal(0.75 * HalfCircle.Length, Assert.Single(left).Length, 1e-9);
    }

    [Theory]
    [InlineData(5e-7, 0)]
    [InlineData(2e-6, 2)]
    public void Pieces_a_millionth_apart_lie_on_each_other(double apart, int left) =>
        Assert.Equal(left, Resolved(Line, new(new(10, apart), new(0, apart))).Length);

    [Fact]
    public void Lines_and_arcs_and_other_circles_leave_each_other_alone()
    {
        Assert.Equal(2, Resolved(Line, new(new(10, 0), new(0, 0), 0.001)).Length);
        Assert.Equal(2, Resolved(Line, new(new(10, 0), new(0, 0), 1e-9)).Length);
        Assert.Equal(2, Resolved(HalfCircle, new(new(-5.00001, 0), new(5.00001, 0), -1)).Length);
        Assert.Equal(2, Resolved(HalfCircle, new(new(-5 + 1e-4, 0), new(5 + 1e-4, 0), -1)).Length);
        Assert.Equal(2, Resolved(Line, new(new(5, -5), new(5, 5))).Length);
    }

    [Theory]
    [InlineData(false, false, 0)]
    [InlineData(true, true, 0)]
    [InlineData(true, false, 1)]
    [InlineData(false, true, 0)]
    public void The_side_of_a_mitre_yields_to_any_other(bool first, bool second, int stays)
    {
        var left = CoincidentPieces.Resolve(
            [new(Line, 0, Kind(first)), new(Line, 1, Kind(second))], TestContext.Current.CancellationToken);

        Assert.Equal(stays, Assert.Single(left).Zone);

        static RawPieceKind Kind(bool isMitre) => isMitre ? RawPieceKind.Mitre : RawPieceKind.Side;
    }

    private static Segment[] Resolved(params Segment[] pieces) =>
        [.. CoincidentPieces.Resolve(
            [.. pieces.Select((s, i) => new RawPiece(s, i, RawPieceKind.Side))], TestContext.Current.CancellationToken)
            .Select(p => p.Segment)];
}
