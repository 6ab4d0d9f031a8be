using BenchmarkDotNet.Attributes;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>Narrow places, radii and corners of an outline, against one polygon buffer of the same outline.</summary>
[MemoryDiagnoser]
public class MeasureBenchmarks
{
    private Outline outline = null!;
    private NetTopologySuite.Geometries.Geometry polygon = null!;

    [Params(1_000, 10_000, 100_000)]
    public int Segments { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        outline = BumpyOutline.Outline(Segments);
        polygon = PolygonBuffer.Polygon(BumpyOutline.Points(Segments));
    }

    [Benchmark(Baseline = true)]
    public double OnePolygonBuffer() => polygon.Buffer(1.05).Area;

    [Benchmark]
    public double Measures() => OutlineMeasures.Measure(outline).SharpestCorner?.Angle ?? 0;
}
