using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>
/// A long counter with upright walls, as a whole job forms it, against the exact solution of a channel into which a sheet is
/// drawn and sticks. The solution is derived here: a half circle of length π·a goes down and loses 2·t for every ds of both
/// walls, so t = 2/π·exp(-2·z/(π·a)). Then a quarter circle of radius r fills the corners, t ~ r^(4/π - 1).
/// </summary>
[Trait("Tier", "slow")]
public class CounterTests
{
    private const double HalfWidth = 8, Depth = 12, Gauge = 1;

    private static readonly Region Block = Shapes.Counter(130, 56, 90, 2 * HalfWidth);

    [Theory]
    [InlineData(FormingDetail.Quick, 0.06)]
    [InlineData(FormingDetail.Fine, 0.03)]
    public void The_walls_of_a_counter_are_as_thin_as_those_of_a_channel(FormingDetail detail, double maxMeanError)
    {
        var part = Predict(detail);

        var errors = Walls(part).Select(w => w.Thickness / Exact(w.Below) - 1).ToArray();

        Assert.True(errors.Length > 60, $"only {errors.Length} triangles lie on the walls");
        Assert.InRange(errors.Average(), -maxMeanError, maxMeanError);
        Assert.InRange(errors.Average(Math.Abs), 0, 2 * maxMeanError);
    }

    [Fact]
    public void The_quick_range_holds_what_the_fine_mesh_finds()
    {
        var (quick, fine) = (Predict(FormingDetail.Quick), Predict(FormingDetail.Fine));

        Assert.InRange(fine.Thinnest!.Thickness, quick.ThinnestRange!.Value.Low, quick.ThinnestRange.Value.High);
        Assert.True(quick.ThinnestRange.Value.Low < quick.Thinnest!.Thickness);
        Assert.True(quick.Thinnest.Thickness < quick.ThinnestRange.Value.High);
        // The ball enters the counter.
        Assert.InRange(quick.BallRadius, 1, HalfWidth / 2);
        Assert.True(Inside(quick.Thinnest.Place), $"the thinnest place lies at {quick.Thinnest.Place}");
    }

    [Fact]
    public void Little_of_the_area_is_as_thin_as_the_thinnest_place()
    {
        var part = Predict(FormingDetail.Quick);

        // By the definition, from the triangles on the wood: the floor of the counter is flange.
        var wood = new PlanDistance(Block, Block.Bounds.Grown(50));
        var rising = part.Triangles.Where(t => wood.At(Centroid(part, t).Plan) <= 0.05)
            .Select(t => (t.Thickness, Area: Area(part, t))).OrderBy(t => t.Thickness).ToArray();
        double Of(double share)
        {
            var left = share * rising.Sum(t => t.Area);
            return rising.First(t => (left -= t.Area) <= 0).Thickness;
        }

        var (one, five) = (part.ThicknessOf1Percent!.Value, part.ThicknessOf5Percent!.Value);
        Assert.InRange(Of(0.01), one.Low, one.High);
        Assert.InRange(Of(0.05), five.Low, five.High);
        Assert.InRange(Of(0.01), part.Thinnest!.Thickness, Of(0.05));
        Assert.InRange(one.High / one.Low, 1.1, 3);
        Assert.InRange(five.High / five.Low, 1.1, 3);
    }

    private static FormedPart Predict(FormingDetail detail) =>
        Formed.Design(Block,
            Formed.Spec(BuckKind.Male, Depth, gauge: Gauge) with
            {
                Stock = [Formed.Mdf6],
                Prediction = new() { Detail = detail, Modulus = 0.1 },
            }).Formed!;

    private static double Exact(double below)
    {
        var straight = Math.Min(below, Depth - HalfWidth);
        var onWall = Gauge * 2 / Math.PI * Math.Exp(-2 * straight / (Math.PI * HalfWidth));
        return below == straight ? onWall : onWall * Math.Pow((Depth - below) / HalfWidth, 4 / Math.PI - 1);
    }

    /// <summary>Triangles of the long walls, away from the ends of the counter, from its edge and from its floor.</summary>
    private static IEnumerable<(double Below, double Thickness)> Walls(FormedPart part)
    {
        foreach (var triangle in part.Triangles)
        {
            var middle = Centroid(part, triangle);
            var below = Depth - middle.Z;
            if (Inside(middle.Plan) && Math.Abs(middle.X - 65) < 20 && Math.Abs(Math.Abs(middle.Y - 28) - HalfWidth) < 0.2
                && below is > 1 and < Depth - 1.5)
                yield return (below, triangle.Thickness);
        }
    }

    private static bool Inside(Vec2 p) => Math.Abs(p.X - 65) <= 45.01 && Math.Abs(p.Y - 28) <= HalfWidth + 0.01;

    private static Vec3 Centroid(FormedPart part, FormedTriangle t) =>
        (At(part, t.A) + At(part, t.B) + At(part, t.C)) * (1.0 / 3);

    private static double Area(FormedPart part, FormedTriangle t) =>
        (At(part, t.B) - At(part, t.A)).Cross(At(part, t.C) - At(part, t.A)).Length / 2;

    private static Vec3 At(FormedPart part, int node) => new(part.Points[node].X, part.Points[node].Y, part.Points[node].Z);
}
