using BenchmarkDotNet.Attributes;
using BuckGen.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>Reading and healing an SVG outline, against one polygon buffer of the same outline.</summary>
[MemoryDiagnoser]
public class IntakeBenchmarks
{
    private byte[] svg = null!;
    private NetTopologySuite.Geometries.Geometry polygon = null!;

    [Params(500, 5000)]
    public int Segments { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        svg = BumpyOutline.Svg(Segments);
        polygon = PolygonBuffer.Polygon(BumpyOutline.Points(Segments));
    }

    [Benchmark(Baseline = true)]
    public double OnePolygonBuffer() => polygon.Buffer(1.05).Area;

    [Benchmark]
    public int ReadAndHeal() => OutlineReader.Read(svg, "bumpy.svg").LoopCount;
}
