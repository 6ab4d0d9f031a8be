using System.Diagnostics;
using System.Globalization;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Benchmarks.Comparing;

/// <summary>
/// Ten checked round offsets of one outline, on all cores as the program makes them, against ten unchecked polygon buffers.
/// </summary>
internal static class OffsetComparison
{
    private static readonly double Step = 12 * Math.Tan(5 * Math.PI / 180);

    public static void Run(int vertices, int rounds, string temporary)
    {
        var (region, work) = (BumpyOutline.Region(vertices), $"ten checked offsets, {vertices} vertices");
        var polygon = PolygonBuffer.Polygon(BumpyOutline.Points(vertices));
        // The first run compiles.
        TenOffsets(region);
        PolygonBuffer.TenLayers(polygon);
        Comparison.Alternate(work, "NetTopologySuite", rounds,
            () => Timed(() => TenOffsets(region)), () => Timed(() => PolygonBuffer.TenLayers(polygon)));
        if (Peers.NodeScript() is { } script)
        {
            var rings = Peers.WriteRings(Path.Combine(temporary, $"{vertices}.txt"), [BumpyOutline.Points(vertices)]);
            Comparison.Alternate(
                work, "clipper2-wasm", rounds, () => Timed(() => TenOffsets(region)), () => InNode(script, rings));
        }
        else Console.WriteLine($"| {work} | | clipper2-wasm: run npm ci in {Peers.Folder} | | |");
    }

    /// <summary>A fresh offsetter, so that nothing is known from the round before.</summary>
    private static void TenOffsets(Region region)
    {
        var offsetter = CheckedOffsetter.Standard(Tolerance.Default);
        Parallel.For(1, 11, layer => offsetter.Offset(region, layer * Step, CornerJoin.Round));
    }

    /// <summary>The script measures itself, without its start.</summary>
    private static double InNode(string script, string rings) => Peers.Run("node", [script, rings], out var output) == 0
        ? double.Parse(output, CultureInfo.InvariantCulture) : throw new InvalidOperationException($"{script} failed");

    private static double Timed(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }
}
