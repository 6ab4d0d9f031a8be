using BenchmarkDotNet.Attributes;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>What the prediction of the wall adds to a design, tool and net included.</summary>
[MemoryDiagnoser]
public class PredictionBenchmarks
{
    private BuckDesign design = null!;

    /// <summary>Over a buck or into a cavity.</summary>
    [Params(BuckKind.Male, BuckKind.Female)]
    public BuckKind Kind { get; set; }

    /// <summary>Makes the design.</summary>
    [GlobalSetup]
    public void Make() => design = BuckDesign.Create(Outline.FromRegion("tray", Region.FromLoops([Loop.Rectangle(new(0, 0, 200, 120))])),
        new BuckSpec { Kind = Kind, Depth = 24, Stock = [new("6 mm", 6)], Sheet = new() { Gauge = 1 }, Base = new(new("6 mm", 6)) });

    /// <summary>The quick way, with the coarser net it is held against.</summary>
    [Benchmark(Baseline = true)]
    public double? Quick() => design.WithFormedPart().Formed!.Thinnest?.Thickness;

    /// <summary>The fine way, with the quick net it is held against.</summary>
    [Benchmark]
    public double? Fine() => design.WithFormedPart(new() { Detail = FormingDetail.Fine }).Formed!.Thinnest?.Thickness;
}
