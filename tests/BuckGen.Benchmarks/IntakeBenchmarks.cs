using BenchmarkDotNet.Attributes;
using BuckGen.Intake.Reading;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Polygonize;

namespace BuckGen.Benchmarks;

/// <summary>
/// Reading and healing one outline, as shuffled loose lines in a DXF and as a path in an SVG. The peer is NetTopologySuite's
/// polygonizer on the same shuffled lines: it joins them to a polygon, and neither reads, fits, nor looks for duplicates and
/// crossings.
/// </summary>
[MemoryDiagnoser]
public class IntakeBenchmarks
{
    private byte[] dxf = null!;
    private byte[] svg = null!;
    private byte[] discs = null!;
    private LineString[] lines = null!;

    [Params(1_000, 10_000, 100_000)]
    public int Segments { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        (dxf, svg) = (BumpyOutline.ExplodedDxf(Segments), BumpyOutline.Svg(Segments));
        // Each disc is two arcs; a drawing has at most this many of them.
        discs = BumpyOutline.Discs(Math.Min(Segments, 10_000));
        var factory = new GeometryFactory(new PrecisionModel(1e4));
        lines = [.. BumpyOutline.Lines(Segments).Select(l => factory.CreateLineString(
            [new(Rounded(l.From.X), Rounded(l.From.Y)), new(Rounded(l.To.X), Rounded(l.To.Y))]))];

        static double Rounded(double value) => Math.Round(value, 4);
    }

    [Benchmark(Baseline = true)]
    public double PolygonizerAlone()
    {
        var polygonizer = new Polygonizer();
        polygonizer.Add([.. lines]);
        return polygonizer.GetPolygons().Sum(p => p.Area);
    }

    [Benchmark]
    public int ExplodedDxf() => OutlineReader.Read(dxf, "bumpy.dxf").LoopCount;

    [Benchmark]
    public int SvgPath() => OutlineReader.Read(svg, "bumpy.svg").LoopCount;

    [Benchmark]
    public int ManyDiscs() => OutlineReader.Read(discs, "discs.dxf").LoopCount;
}
