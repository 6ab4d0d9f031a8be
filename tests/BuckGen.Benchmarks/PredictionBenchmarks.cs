using BenchmarkDotNet.Attributes;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>What the prediction of the wall adds to a design, tool and net included.</summary>
[MemoryDiagnoser]
public class PredictionBenchmarks
{

    /// <summary>Over a buck or into a cavity.</summary>
    [Params(BuckKind.Male, BuckKind.Female)]
    public BuckKind Kind { get; set; }

    private FormedPart Predict(FormingSpec how) =>
        BuckDesign.Create(Outline.FromRegion("tray", Region.FromLoops([Loop.Rectangle(new(0, 0, 200, 120))])),
        new BuckSpec
        {
            Prediction = how,
            Kind = Kind,
            Depth = 24,
            Stock = [new("6 mm", 6)],
            Sheet = new() { Gauge = 1 },
            Base = new(new("6 mm", 6))
        }).Formed!;

    /// <summary>The quick way, with the coarser net it is compared with.</summary>
    [Benchmark(Baseline = true)]
    public double? Quick() => Predict(new()).Thinnest?.Thickness;

    /// <summary>The fine way, with the quick net it is compared with.</summary>
    [Benchmark]
    public double? Fine() => Predict(new() { Detail = FormingDetail.Fine }).Thinnest?.Thickness;
}
