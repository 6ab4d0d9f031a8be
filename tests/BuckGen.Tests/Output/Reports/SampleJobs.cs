using System.Collections.Concurrent;
using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.Tests.Design.Bucks;
using BuckGen.Tests.Intake.Outlines;
using BuckGen.Tests.Output.Pictures;

namespace BuckGen.Tests.Output.Reports;

/// <summary>Jobs that between them make every kind of report: plain, awkward, forced, withheld, read from a file.</summary>
internal static class SampleJobs
{
    private static readonly Region Awkward = Shapes.Union(
        Shapes.Counter(60, 60, 3, 30), Shapes.DiscAt(90, 30, 2), Shapes.RectangleAt(63, 0, 20, 20));

    private static readonly Dictionary<string, (Func<CutPlan> Plan, OutputOptions Options, bool Force)> All = new()
    {
        ["plain"] = (() => Plan(Shapes.Rectangle(100, 60), PlainBuck.Spec), new(), false),
        ["awkward, with SVG"] = (() => Plan(Awkward, PlainBuck.Spec with { Depth = 40, Steps = Steps.Middle }),
            new("An awkward one", DxfVersion.R2000, true) { Model = true }, false),
        ["cavity with a base"] = (() => Plan(Shapes.Slot(60, 30),
            PlainBuck.Spec with
            {
                Kind = BuckKind.Female,
                Base = new(new("ply 6", 6)),
                Corners = CornerJoin.Mitre,
                Steps = Steps.Inside
            }), new(), false),
        ["vented"] = (() => Plan(Shapes.Counter(80, 60, 40, 20), PlainBuck.Spec with
        {
            Base = new(new("ply 6", 6), 20, new("MDF 9", 9)),
            Sheet = new(),
            Vents = new(),
            Plenum = new(PlainBuck.Mdf12),
        }), new(), false),
        ["with jigs and a panel"] = (() => Plan(Shapes.Counter(80, 60, 40, 20), PlainBuck.Spec with
        {
            Depth = 36,
            Part = new() { Side = PartSide.Outside, At = PartEnd.Face },
            Shrinkage = 0.5,
            Sheet = new() { Plastic = Catalog.BuiltIn.FindPlastic("petg"), MinWall = 0.5, Sizes = [new(1220, 610)] },
            Jig = new() { TrimHeight = 24 },
            Flange = new(PlainBuck.Mdf12),
            Panel = new(PlainBuck.Mdf12),
        }), new("A framed one"), false),
        ["reckoned"] = (() => Plan(Shapes.Counter(80, 60, 40, 20), PlainBuck.Spec with
        {
            Kind = BuckKind.Female,
            Depth = 36,
            Stock = [PlainBuck.Mdf12 with { Price = 12.4, CutFeed = 500 }],
            Base = new(new("ply 6", 6)),
            Corners = CornerJoin.Mitre,
            Sheet = new() { PricePerSquareMetre = 11, Sizes = [new(1220, 610)] },
            Vents = new(),
            Former = new() { PlugGap = 4 },
        }, new() { Bed = new(450, 390) }), new()
        {
            Rates = new()
            {
                Currency = "EUR",
                Machine = 30,
                GlueMinutes = 4,
                DrillSeconds = 10
            }
        }, false),
        ["formed"] = (() => CutPlan.Create(BuckDesign.Create(Outline.FromRegion("drawn", Shapes.Slot(60, 30)),
            PlainBuck.Spec with { Kind = BuckKind.Female, Sheet = new() { MinWall = 0.9 }, Prediction = new() { Modulus = 1 } }),
            new()), new() { Model = true }, false),
        ["for a router"] = (() =>
            Plan(Shapes.Ring(40, 20), PlainBuck.Spec with { OutlineAt = OutlineAt.Base, Shrinkage = 0.5 }, new(Machine.Router)),
            new(), false),
        ["in thirds of an inch"] = (() => Plan(Shapes.Rectangle(100, 60),
            PlainBuck.Spec with { Depth = 25.4, Draft = 10.0 / 3, Stock = [new("third", 25.4 / 3, 25.4 * 70 / 3, 400)] },
            new(Kerf: 0.1 / 3, Spacing: 25.4 / 6)), new(), false),
        ["withheld"] = (() => Plan(Shapes.Rectangle(100, 4), PlainBuck.Spec with { OutlineAt = OutlineAt.Base }), new(), false),
        ["forced"] = (() => Plan(Shapes.Rectangle(100, 4), PlainBuck.Spec with { OutlineAt = OutlineAt.Base }), new(), true),
        ["nothing left at all"] = (() =>
            Plan(Shapes.Rectangle(100, 1), PlainBuck.Spec with { OutlineAt = OutlineAt.Base, Steps = Steps.Inside }),
            new(), false),
        ["part larger than its board"] = (() => Plan(Shapes.Rectangle(700, 500), PlainBuck.Spec), new(), true),
        ["with ledges on a base in pieces"] = (() => Plan(
            Shapes.Union(Shapes.RectangleAt(0, 0, 300, 60), Shapes.RectangleAt(360, 0, 300, 60)),
            PlainBuck.Spec with
            {
                Side = [new() { Draft = 5 }, new() { Height = 0, Inset = 8 }, new() { Height = 12, Draft = 20 }],
                EdgeRadius = 2,
                Base = new(new("ply 6", 6)),
            }, new() { Seams = new() }), new(), false),
        ["a lid with a predicted wall"] = (() => CutPlan.Create(Lid(), new()), new("A lid"), false),
        [InTwoBucks] = (() => Plan(Shapes.Union(Shapes.RectangleAt(0, 0, 100, 100), Shapes.RectangleAt(110, 0, 100, 100)),
            PlainBuck.Spec with
            {
                Depth = 12,
                Corners = CornerJoin.Mitre,
                Base = new(new("ply 6", 6), 8),
                Sheet = new(),
                Former = new() { Opening = new(150, 150) },
                Groups = new(PlainBuck.Mdf12),
                Panel = new(PlainBuck.Mdf12),
            }), new("A wide one"), false),
        ["read with repairs and notes"] = (() => CutPlan.Create(
            BuckDesign.Create(OutlineReader.Read(Corpus.File("dxf/ez_gap_0p01.dxf").Content, "ez_gap_0p01.dxf"), PlainBuck.Spec),
            new()), new(), false),
    };

    /// <summary>A sign in several bucks: its main folder has a summary of another shape and lists only its own files.</summary>
    public const string InTwoBucks = "in two bucks";

    /// <summary>All but the sign in several bucks.</summary>
    public static Xunit.TheoryData<string> Names => [.. All.Keys.Where(k => k != InTwoBucks)];

    private static readonly ConcurrentDictionary<string, Lazy<ImmutableArray<OutputFile>>> Made = new();

    /// <summary>Its files, made once for all tests.</summary>
    public static ImmutableArray<OutputFile> Files(string name) => Made.GetOrAdd(name, n => new(() => FilesAnew(n))).Value;

    /// <summary>Its files, made anew.</summary>
    public static ImmutableArray<OutputFile> FilesAnew(string name) =>
        OutputFiles.Create(All[name].Plan(), All[name].Options, All[name].Force);

    public static byte[] Summary(string name) => [.. Files(name).Single(f => f.Path == OutputFiles.SummaryPath).Content];

    /// <summary>Into a part 120 mm wide, with a wall of invented numbers, each of which is found nowhere else.</summary>
    private static BuckDesign Lid() => PlainBuck.Create(Shapes.Rectangle(120, 80), PlainBuck.Spec with
    {
        Depth = 48,
        Sheet = new() { Plastic = Catalog.BuiltIn.FindPlastic("petg") },
        Jig = new(),
        Part = new(),
    }).CreateLid(new() { Fit = LidFit.Into, Skirt = 12, Clearance = 0.3 }) with
    {
        Formed = ThicknessTests.Sheet(p => 0.4 + p.X / 200) with
        {
            Spec = new() { Detail = FormingDetail.Fine, Stepped = true, Modulus = 0.21, Stiffening = 0.13, Friction = 0.37 },
            Gauge = 1.01,
            FrameHeight = 7.1,
            Thinnest = new(0.41, new(11.5, 21.5), 31.5),
            ThinnestOfSheet = new(0.31, new(12.25, 22.25), 32.25),
            MeshSensitivity = -0.125,
            MaterialSensitivity = new(0.875, 1.5),
            Modulus = new(0.1, 1),
            MeanRange = new(0.79, 0.91),
            ThicknessOf1Percent = new(0.43, 0.47),
            ThicknessOf5Percent = new(0.53, 0.57),
            MeanThickness = 0.83,
            MeanThicknessOfSheet = 0.73,
            VolumeError = 0.0021,
            RequiredGauge = 1.37,
            MinEdgeLength = 2.3,
            BallRadius = 1.9,
            Bridged = [new(new(41.5, 42.5), 43.5, 0.94)],
            Webs = [new(new(51.5, 52.5), 53.5)],
        },
    };

    private static CutPlan Plan(Region region, BuckSpec buck, CuttingSpec? cutting = null) =>
        CutPlan.Create(BuckDesign.Create(Outline.FromRegion("drawn", region), buck), cutting ?? new());
}
