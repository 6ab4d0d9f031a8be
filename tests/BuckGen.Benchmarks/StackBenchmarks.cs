using BenchmarkDotNet.Attributes;
using BuckGen.Design;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>A drafted stack of ten layers with dowels, marks and findings, against nothing but ten polygon buffers.</summary>
[MemoryDiagnoser]
public class StackBenchmarks
{
    private static readonly double Step = 12 * Math.Tan(5 * Math.PI / 180);

    private Outline outline = null!;
    private NetTopologySuite.Geometries.Geometry polygon = null!;
    private BuckSpec spec = null!;

    [Params(500, 5000)]
    public int Segments { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        outline = BumpyOutline.Outline(Segments);
        polygon = PolygonBuffer.Polygon(BumpyOutline.Points(Segments));
        spec = new() { Depth = 120, Draft = 5, Stock = [new("MDF 12", 12, 600, 600)] };
    }

    [Benchmark(Baseline = true)]
    public double TenPolygonBuffers() => PolygonBuffer.TenLayers(polygon);

    [Benchmark]
    public double TenCheckedOffsets()
    {
        var offsetter = CheckedOffsetter.Standard(Tolerance.Default);
        return Enumerable.Range(1, 10).Sum(layer => offsetter.Offset(outline.Region, layer * Step, CornerJoin.Round).Area);
    }

    [Benchmark]
    public int WholeDesign() => BuckDesign.Create(outline, spec).Layers.Length;
}
