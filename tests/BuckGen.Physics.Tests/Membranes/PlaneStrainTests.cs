using BuckGen.Physics.Membranes;
using Xunit;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>
/// Long tools whose sheet sticks where it touches. The free sheet has one tension, so it is an arc of even thickness, and only
/// geometry matters, for any material: while a length ds on each side comes to rest, the plastic of the free arc, t·L, loses
/// 2·t·ds.
/// </summary>
[Trait("Tier", "slow")]
public class PlaneStrainTests
{
    /// <summary>Pressure that fills the corners: the arc left has a radius of about a hundredth of the width.</summary>
    private const double Filling = 100 * Formed.PressureUnit;

    /// <summary>Where the tip of a trough and the foot of a block begin, as a share of the width.</summary>
    private const double NearTip = 0.1;

    private static readonly FormingLoad Slow = new(Filling) { PathTolerance = 0.02 };

    /// <summary>
    /// Upright walls: a half circle goes down, L = π·a: t = 2/π·exp(-2·z/(π·a)); then a quarter circle fills the corner, t ~
    /// r^(4/π - 1).
    /// </summary>
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.5)]
    public void A_channel_with_upright_walls(double depth)
    {
        var formed = MembraneForming.Form(Formed.Strip(160), new Cavity(Formed.Size, depth * Formed.Size), Slow);

        var last = 2 / Math.PI * Math.Exp(-2 * (depth - 1) / Math.PI);
        AssertProfile(formed, (x, z) => z > 0.98 * depth
            ? x < 0.9 ? last * Math.Pow(1 - x, 4 / Math.PI - 1) : null
            : z < depth - 1 ? 2 / Math.PI * Math.Exp(-2 * z / Math.PI)
            : z < depth - 0.1 ? last * Math.Pow(depth - z, 4 / Math.PI - 1) : null);
    }

    /// <summary>
    /// Sloping walls at the angle b: the arc of half-angle b shrinks, t = sin b/b·(1 - s·cos b/a)^(tan b/b - 1).
    /// </summary>
    [Theory]
    [InlineData(45, 160, 0.005)]
    // The steeper, the more thins at the end, and the slower and finer the sheet must be to stay near rest.
    [InlineData(60, 240, 0.005)]
    public void A_trough_with_sloping_walls(double degrees, int cells, double pathTolerance)
    {
        var slope = degrees * Math.PI / 180;
        var load = Slow with { PathTolerance = pathTolerance };
        var formed = MembraneForming.Form(Formed.Strip(cells), new Pit(Formed.Size, slope, round: false), load);

        AssertProfile(formed, (x, _) => x > NearTip ? Math.Sin(slope) / slope * Math.Pow(x, Math.Tan(slope) / slope - 1) : null);
    }

    /// <summary>
    /// A block that rises first: the top keeps its thickness, the web has w/√(w² + H²); then the arc, tangent to the wall at the
    /// height y and still clamped, rolls down: L = R·θ with R = (w² + y²)/(2·w), and on down to y = w; the last quarter circle
    /// fills the corner.
    /// </summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(1.0)]
    public void A_block_that_rises_through_the_frame(double height)
    {
        const double width = 0.5;
        var formed =
            MembraneForming.Form(Formed.Strip(220), Block.Strip(0.5 * Formed.Size, height * Formed.Size), Slow
            with
            { Rise = height * Formed.Size, PathTolerance = 0.005 });

        var corner = OnWall(width, width, height);
        AssertProfile(formed, (x, z) => -z > 0.995 * height
            ? x < 0.45 ? 1 : null
            : x > 0.52 ? x > 0.5 + NearTip * width && z > -0.01 ? corner * Math.Pow((x - 0.5) / width, 4 / Math.PI - 1) : null
            : -z < NearTip * width ? null
            : -z < width ? corner * Math.Pow(-z / width, 4 / Math.PI - 1) : -z < height - 0.05
            ? OnWall(-z, width, height) : null);
    }

    private static double OnWall(double y, double width, double height)
    {
        double Arc(double at)
        {
            var radius = (width * width + at * at) / (2 * width);
            return radius * Math.Atan2(at, radius - width);
        }

        const int parts = 400;
        var lost = 0.0;
        for (var i = 0; i < parts; i++) lost += (height - y) / parts / Arc(y + (i + 0.5) * (height - y) / parts);
        return width / Arc(y) * Math.Exp(-lost);
    }

    /// <summary>
    /// Holds the triangles to an exact thickness, given x and depth z in half widths; null where it says nothing.
    /// </summary>
    private static void AssertProfile(FormedSheet formed, Func<double, double, double?> exact)
    {
        var errors = formed.ThicknessRatios()
            .Select(p => (Exact: exact(p.Position.X / Formed.Size, -p.Position.Z / Formed.Size), p.ThicknessRatio, p.Position))
            .Where(p => p.Exact is not null).Select(p => (Error: p.ThicknessRatio / p.Exact!.Value - 1, p.Position)).ToArray();
        Assert.Equal(FormingOutcome.Converged, formed.Outcome);
        Assert.InRange(errors.Length, formed.Thickness.Length / 2, int.MaxValue);
        var worst = errors.MaxBy(e => Math.Abs(e.Error));
        Assert.True(errors.Average(e => Math.Abs(e.Error)) < 0.007 && Math.Abs(worst.Error) < 0.02,
            $"mean error {errors.Average(e => Math.Abs(e.Error)):P2}, worst {worst.Error:P2} at {worst.Position}");
    }
}
