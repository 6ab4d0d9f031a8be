using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Fuzz.Tests.Cases;

/// <summary>What a maker might decide about a buck, sensible mostly.</summary>
internal static class RandomBuck
{
    private const double MinThicknessOverPlenum = 2.5;

    public static BuckSpec Create(RandomSource dice)
    {
        var stock = Stocks(dice);
        var (depth, draft) = (Depth(dice, stock), dice.Chance(0.05) ? dice.Between(-5, 0) : dice.Said(0, 15));
        // A wall that moves far is checked in many steps; a few such are enough.
        if (dice.Chance(0.9)) draft = Math.Clamp(draft, -5, Math.Atan(dice.Between(0.2, 1.5) / depth) * 180 / Math.PI);
        var plate = dice.Chance(0.65)
            ? new BasePlate(AnyStock(dice), dice.Said(0, 40), dice.Chance(0.3) ? AnyStock(dice) : null) : null;
        var sheet = dice.Chance(0.6) ? new SheetSpec { Gauge = dice.Said(0.3, 4) } : null;
        return Shaped(dice, new()
        {
            Kind = dice.Any(BuckKind.Male, BuckKind.Male, BuckKind.Female),
            Depth = depth,
            Draft = dice.Chance(0.01) ? dice.Between(20, 45) : draft,
            OutlineAt = dice.Any(OutlineAt.Face, OutlineAt.Base),
            Stock = stock,
            Corners = dice.Chance(0.7) ? CornerJoin.Round : new(Corners.Mitre, dice.Said(1, 8)),
            Steps = dice.Any(Steps.Outside, Steps.Inside, Steps.Middle),
            Shrinkage = dice.Chance(0.2) ? dice.Said(0, 3) : null,
            Base = plate,
            Sheet = sheet,
            Part = sheet is not null && dice.Chance(0.15)
                ? new() { Side = dice.Any(PartSide.Inside, PartSide.Outside), At = dice.Any(PartEnd.Mouth, PartEnd.Face) }
                : null,
            Vents = plate is not null && sheet is not null && dice.Chance(0.3) ? Vents(dice) : null,
            Plenum = plate is not null && (plate.Under ?? plate.Stock).Thickness >= MinThicknessOverPlenum
                && dice.Chance(0.2) ? Plenum(dice) : null,
            Jig = sheet is not null && dice.Chance(0.12)
                ? new()
                {
                    TrimHeight = dice.Said(2, Math.Max(2, depth)),
                    Clearance = dice.Between(0, 1),
                    Land = dice.Said(10, 50),
                    Core = dice.Chance(0.7),
                    Bed = dice.Chance(0.5)
                }
                : null,
            Flange = sheet is not null && dice.Chance(0.1)
                ? new(AnyStock(dice))
                {
                    Width = dice.Said(2, 30),
                    Bushing = dice.Said(6, 30),
                    Bit = dice.Said(2, 6),
                    Rim = dice.Any(FlangeRim.Offset, FlangeRim.Rectangle),
                    CornerRadius = dice.Any(0, 0, dice.Said(1, 20)),
                }
                : null,
            Panel = sheet is not null && dice.Chance(0.12) ? Panel(dice) : null,
            BlockMargin = dice.Said(5, 40),
            Dowels = new(dice.Said(1, 10), dice.Between(0, 0.4), dice.Said(0.5, 8)) { ThroughFace = dice.Chance(0.3) },
            LetterHeight = dice.Said(4, 12),
        });
    }

    /// <summary>Now and then a side with bends and ledges, or a round upper edge.</summary>
    private static BuckSpec Shaped(RandomSource dice, BuckSpec spec)
    {
        if (dice.Chance(0.15)) spec = spec with { EdgeRadius = dice.Said(0.2, Math.Max(0.3, spec.Depth / 3)) };
        if (spec.Draft < 0 || !dice.Chance(0.15)) return spec;
        var side = Enumerable.Range(0, dice.Whole(1, 3)).Select(_ => new SideStretch
        {
            Height = dice.Between(0.06, 0.3 * Math.Max(1, spec.Depth)),
            Inset = dice.Between(0, 1.5),
        }).Prepend(new() { Draft = spec.Draft }).ToList();
        if (dice.Chance(0.5)) side.Insert(1, new() { Height = 0, Inset = dice.Between(0.1, 6) });
        return spec with { Side = [.. side] };
    }

    private static ImmutableArray<Stock> Stocks(RandomSource dice) =>
        [.. Enumerable.Range(0, dice.Whole(1, 3)).Select(_ => AnyStock(dice))];

    private static Stock AnyStock(RandomSource dice)
    {
        var thickness = dice.Chance(0.8) ? dice.Any(2, 2.7, 3, 4, 5.6, 6, 9, 12, 18) : dice.Said(1, 25);
        var name = FormattableString.Invariant($"board {thickness:0.###}");
        return dice.Whole(0, 3) switch
        {
            0 => new(name, thickness) { SizeIsAssumed = true },
            1 => new(name, thickness, dice.Said(60, 400), dice.Said(60, 400)),
            _ => new(name, thickness, dice.Said(400, 2500), dice.Said(400, 2500)),
        };
    }

    /// <summary>So deep that the stack has some five layers, now and then many.</summary>
    private static double Depth(RandomSource dice, ImmutableArray<Stock> stock)
    {
        var thickest = stock.Max(s => s.Thickness);
        return dice.Chance(0.03) ? dice.Scaled(0.1, 100)
            : Math.Min(1000, dice.Said(thickest / 2, thickest * dice.Any(1, 2, 3, 6)));
    }

    private static VentSpec Vents(RandomSource dice) => new()
    {
        Pattern = dice.Any(VentPatterns.All),
        Spacing = dice.Said(8, 60),
        GridPitch = dice.Said(15, 80),
        WallDistance = dice.Any(0.5, 0.5, 0, 2),
        Diameter = dice.Chance(0.3) ? dice.Between(0.4, 3) : null,
        Drills = dice.Any(Drills.Metric, Drills.Number),
        BoreDiameter = dice.Said(3, 8),
        Land = dice.Said(0.5, 4),
        Air = new() { WantedTime = dice.Any(1, 10, 60) },
        Points = dice.Chance(0.2) ? [new(dice.Between(-60, 60), dice.Between(-60, 60))] : [],
        KeepOut = dice.Chance(0.2)
            ? [Bounds.FromCorners(new(dice.Between(-60, 60), dice.Between(-60, 60)),
                new(dice.Between(-60, 60), dice.Between(-60, 60)))] : [],
    };

    private static PlenumSpec Plenum(RandomSource dice) =>
        new(AnyStock(dice), dice.Chance(0.95) ? PlenumKind.Channels : PlenumKind.Feet)
        {
            Width = dice.Said(5, 25),
            PortDiameter = dice.Said(8, 40),
            MaxBow = dice.Any(0.3, 1),
        };

    private static PanelSpec Panel(RandomSource dice) => new(AnyStock(dice))
    {
        Fit = dice.Chance(0.5) ? dice.Between(0, 1) : null,
        Plane = dice.Any(0, 0, dice.Said(0, 10)),
        Edge = dice.Any(PanelEdge.Rectangle, PanelEdge.Offset),
        Margin = dice.Said(5, 60),
        CornerRadius = dice.Any(0, 0, dice.Said(1, 20)),
        Bit = dice.Any(0, 0, dice.Said(1, 6)),
        Flange = dice.Said(0, 25),
    };
}
