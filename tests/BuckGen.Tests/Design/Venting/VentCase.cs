using System.Collections.Concurrent;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;

namespace BuckGen.Tests.Design.Venting;

/// <summary>A vented buck of an outline of tests/corpus; the laws are checked on many of them.</summary>
internal sealed record VentCase(string Name, BuckDesign Design)
{
    // Outlines of more pieces are left out: each is judged at every vent.
    private const int MaxPieces = 150;

    private static readonly Lazy<IReadOnlyList<VentCase>> Made = new(Make);

    /// <summary>All cases: every readable outline, brought to the size of a workshop piece, male and female.</summary>
    public static IReadOnlyList<VentCase> All => Made.Value;

    public BuckSpec Spec => Design.Spec;

    public VentDesign Vents => Design.Vents!;

    public bool IsMale => Spec.Kind == BuckKind.Male;

    /// <summary>The layer that the sheet seals on.</summary>
    public Layer Surface => Design.Layers.Last(l => l.Role == LayerRole.Base);

    /// <summary>The foot of the smooth wall: drafted here once more, without the stack.</summary>
    public Region Foot => foot.Value;

    /// <summary>From the foot of a wall to the centre of a vent.</summary>
    public double Distance => Vents.Spec.WallDistance + Vents.Diameter / 2;

    /// <summary>What is reported about vents that could not be placed as they should be.</summary>
    public IEnumerable<Findings.Finding> ReportedFindings =>
        Design.Findings.Where(f => f.Id.StartsWith("vent-", StringComparison.Ordinal));

    private readonly Lazy<Region> foot = new(() => DraftedFoot(Design));

    /// <summary>Outlines of the corpus with the longest side from 60 to 300 mm.</summary>
    public static IEnumerable<(string Name, Region Region)> Outlines()
    {
        var seen = new HashSet<(int, double, double)>();
        foreach (var file in Corpus.Files)
        {
            Region region;
            try
            {
                region = OutlineReader.Read(file.Content, file.Name, OutlineOptions.Default with { Units = file.Unit }).Region;
            }
            catch (OutlineException)
            {
                continue; // The intake tests say which files must be read.
            }

            // Squares that share an edge have no air between them to speak of, and no law says on which side it lies.
            if (region.IsEmpty || region.Segments.Count() > MaxPieces || file.Name == "dxf/ez_touching.dxf") continue;
            var longest = Math.Max(region.Bounds.Width, region.Bounds.Height);
            // Many files show one shape as many programs write it.
            if (!seen.Add(
                (region.Segments.Count(), Math.Round(region.Area / longest / longest, 3),
                    Math.Round(region.Perimeter / longest, 2)))) continue;
            var factor = Math.Clamp(longest, 60, 300) / longest;
            yield return (file.Name, factor == 1 ? region : region.Transformed(Affine.Scaling(factor, region.Bounds.Centre)));
        }
    }

    private static IReadOnlyList<VentCase> Make()
    {
        var made = new ConcurrentBag<(int Order, VentCase Case)>();
        Parallel.ForEach(Outlines().Index(),
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, numbered =>
        {
            foreach (var kind in Enum.GetValues<BuckKind>())
            {
                var spec = SpecOf(2 * numbered.Index + (int)kind, kind, numbered.Item.Region);
                try
                {
                    made.Add((2 * numbered.Index + (int)kind, new(
                        $"{numbered.Item.Name} {kind} {spec.Steps} {spec.Plenum!.Kind}",
                        Vented.Design(numbered.Item.Region, spec))));
                }
                catch (OutlineException)
                {
                    // The offset tests say which outlines must be offset.
                }
            }
        });
        return [.. made.OrderBy(m => m.Order).Select(m => m.Case)];
    }

    /// <summary>Each outline in another way: steps, draft, plates, plenum, stacks of many thin layers, keep-out areas.</summary>
    private static BuckSpec SpecOf(int number, BuckKind kind, Region region)
    {
        var outline = number / 2;
        var (thin, steep, plain) = (outline % 8 == 5, outline % 4 == 1, outline % 3 == 0);
        var middle = region.Bounds.Centre;
        return new()
        {
            Kind = kind,
            Depth = thin ? 20 : steep ? 24 : 12,
            Draft = steep ? 12 : 5,
            Steps = (outline % 7) switch { 3 => Steps.Inside, 5 => Steps.Middle, _ => Steps.Outside },
            OutlineAt = outline % 5 == 2 ? OutlineAt.Base : OutlineAt.Face,
            Stock = [thin ? new("MDF 2", 2, 2000, 2000) : Vented.Mdf6],
            Base = new(Vented.Mdf6, 20, plain ? null : Vented.Mdf6),
            Sheet = new SheetSpec { Gauge = 1.5 },
            Vents = new VentSpec
            {
                WallDistance = outline % 6 == 4 ? 2 : 0.5,
                KeepOut = outline % 9 == 1 ? [new(middle.X, middle.Y, middle.X + 40, middle.Y + 40)] : [],
                // The shape alone rules most; the flow rules some.
                Air = new() { WantedTime = outline % 10 == 0 ? 1 : 60 },
            },
            Plenum = new PlenumSpec(Vented.Mdf6, (number + outline) % 2 == 0 ? PlenumKind.Feet : PlenumKind.Channels),
        };
    }

    private static Region DraftedFoot(BuckDesign design)
    {
        var spec = design.Spec;
        if (spec.OutlineAt == OutlineAt.Base) return design.Outline.Region;
        var run = design.Plan.Depth * Math.Tan(spec.Draft * Math.PI / 180);
        return CheckedOffsetter.Standard(spec.Tolerance)
            .Offset(design.Outline.Region, spec.Kind == BuckKind.Male ? run : -run, spec.Corners);
    }
}
