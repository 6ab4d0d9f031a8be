using BenchmarkDotNet.Attributes;
using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Benchmarks;

/// <summary>
/// A sheet formed into a box and over a block with draft, at three sizes of mesh. The exponent by which the time grows follows
/// from the rows: steps go with the root of the number of triangles, so it is about 1.5.
/// </summary>
public class MembraneBenchmarks
{
    private ClampedSheet sheet = null!;

    [Params(2_000, 8_000, 50_000)]
    public int Triangles { get; set; }

    [GlobalSetup]
    public void Prepare() => sheet = ClampedSheet.FromMesh(
        FrameMesh.CrissCross(new(-150, -100, 150, 100), Math.Sqrt(300 * 200 * 4.0 / Triangles)),
        HyperelasticMaterial.NeoHookean(0.2), 1.5);

    [Benchmark(Baseline = true)]
    public int Male() => Steps(new Block(), 25);

    [Benchmark]
    public int Female() => Steps(new Hole(), 0);

    private int Steps(ITool tool, double rise)
    {
        var formed = MembraneForming.Form(sheet, tool, new(90_000) { Rise = rise });
        return formed.Outcome == FormingOutcome.Converged ? formed.Steps
            : throw new InvalidOperationException(formed.FailureMessage);
    }

    /// <summary>A block of 200 × 100 × 25 mm with 3 degrees of draft.</summary>
    private sealed class Block : ITool
    {
        private static readonly double Slope = Math.Tan(3 * Math.PI / 180), Cos = Math.Cos(3 * Math.PI / 180);

        public double SignedDistance(Vec3 point) => Math.Min(point.Z, Math.Max(
            point.Z - 25, (Math.Max(Math.Abs(point.X) - 100, Math.Abs(point.Y) - 50) - (25 - point.Z) * Slope) * Cos));
    }

    /// <summary>A box of 280 × 180 × 50 mm.</summary>
    private sealed class Hole : ITool
    {
        public double SignedDistance(Vec3 point) => Math.Max(
            Math.Min(Math.Min(140 - Math.Abs(point.X), 90 - Math.Abs(point.Y)), point.Z + 50), point.Z);
    }
}
