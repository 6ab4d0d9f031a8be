using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>
/// A ring that stands round the part, exactly as high as the cut: a knife or saw that lies flat on it cuts one straight line.
/// A core inside holds the wall. It is glued on a bed, on lines marked there: the part set over it is located by it and can
/// neither slide nor tip.
/// </summary>
/// <param name="TrimHeight">Wanted height of the cut over what the ring stands on, mm.</param>
/// <param name="Height">Height that the stock gives, from the same face, mm.</param>
/// <param name="Ring">The layers of the ring, lowest first.</param>
/// <param name="Core">The layers of the core, lowest first; none when not wanted or when there is no room.</param>
/// <param name="Bed">The bed under ring and core; null without a core.</param>
/// <param name="Findings">What its maker should know.</param>
public sealed record TrimJig(
    double TrimHeight, double Height, ImmutableArray<Layer> Ring, ImmutableArray<Layer> Core, Layer? Bed,
    ImmutableArray<Finding> Findings)
    : JigParts([.. Ring, .. Core, .. Bed is null ? Array.Empty<Layer>() : [Bed]], Findings)
{
    /// <summary>The part's outside where the ring has it cut.</summary>
    public Region TrimLine { get; init; } = Region.Empty;

    /// <summary>
    /// The face of the flange from which both heights are measured: the one that is level with what the ring stands on.
    /// </summary>
    public FlangeFace HeightFrom { get; init; }

    /// <summary>The boards of the ring.</summary>
    internal static StackPlan PlanOf(JigSpec jig, StackSpec spec) =>
        StackPlan.Choose(
            jig.TrimHeight ?? RingHeight.Usual, spec.Stock, jig.HeightTolerance ?? spec.DepthTolerance);

    /// <summary>True when the flange lies under the ring: there is a layer above that holds the part.</summary>
    internal static bool GivesWay(StackPlan plan) => plan.LayerStocks.Length > 1;

    /// <summary>What the ring stands on: a single board, with no room for the flange below it, lies on the flange.</summary>
    internal static FlangeFace FaceUnder(StackPlan plan, JigSpec jig) =>
        !GivesWay(plan) && jig.FlangeRoom > 0 ? FlangeFace.Upper : FlangeFace.Underside;

    /// <summary>Designs the jig. The part stands on its flange; the ring stands on the bed or on the table.</summary>
    internal static TrimJig Create(PartShell shell, JigSpec jig, StackSpec spec)
    {
        var height = jig.TrimHeight ?? RingHeight.Usual;
        if (height >= shell.Depth)
            throw new SpecException(FormattableString.Invariant(
                $"The trim height is {height} mm, but the part is only {shell.Depth:0.##} mm deep; cut lower."));
        var plan = PlanOf(jig, spec);
        var relieved = GivesWay(plan);
        if (relieved && jig.FlangeRoom >= jig.Land)
            throw new SpecException(FormattableString.Invariant(
                $"The flange room of the jig is {jig.FlangeRoom:0.##} mm, its land only {jig.Land:0.##} mm: no wood is left of ")
                + "the lowest layer of the ring. Use less flange room or more land.");
        var outer = shell.Moved(PartShell.Filled(shell.Outside(0)), jig.Clearance + jig.Land);
        var blanks = new List<(Stock Stock, double Bottom, Region Wood)>();
        var bottom = 0.0;
        foreach (var stock in plan.LayerStocks)
        {
            // The part is widest at the lower face of a layer: what passes there passes.
            var room = jig.Clearance + (relieved && bottom == 0 ? jig.FlangeRoom : 0);
            var opening = shell.Moved(PartShell.Filled(shell.Outside(bottom)), room);
            blanks.Add((stock, bottom, Region.FromLoops(outer.Loops.Concat(opening.Islands.Select(i => i.Outer)))));
            bottom += stock.Thickness;
        }

        if (blanks.Any(b => b.Wood.IsEmpty))
            throw new SpecException("Next to nothing is left of the part at its flange, so a jig has nothing to stand round; "
                + "leave the jig off, or change draft or depth.");
        var dowels = Dowels(blanks.Select(b => b.Wood), spec.Dowels, shell);
        ImmutableArray<Layer> ring =
            [.. blanks.Select((b, i) =>
                PlainLayers.Create(i + 1, LayerRole.Jig, "RING", b.Stock, b.Bottom, b.Wood, dowels, spec.LetterHeight))];
        var core = jig.Core ? CoreOf(shell, jig, spec, bottom) : [];
        var bed = jig.Bed && !core.IsEmpty ? BedOf(core, outer, spec) : null;
        return new(height, bottom, ring, core, bed, [.. JigFindings.Find(jig, plan, spec, core)])
        {
            HeightFrom = FaceUnder(plan, jig),
            // Whole boards may come out higher than the part is deep.
            TrimLine = PartShell.Filled(shell.Outside(Math.Min(bottom, shell.Depth))),
        };
    }

    /// <summary>The layers inside the part, as high as whole boards come without reaching the blade.</summary>
    private static ImmutableArray<Layer> CoreOf(PartShell shell, JigSpec jig, StackSpec spec, double cut)
    {
        var room = cut - jig.BladeRoom;
        if (room < spec.Stock.Min(s => s.Thickness)) return [];
        var blanks = new List<(Stock Stock, double Bottom, Region Wood)>();
        var bottom = 0.0;
        foreach (var stock in StackPlan.Choose(room, spec.Stock, 0, neverMore: true).LayerStocks)
        {
            // The part is narrowest at the upper face of a layer.
            var wood = shell.Moved(PartShell.Filled(shell.Inside(bottom + stock.Thickness)), -jig.Clearance);
            if (wood.IsEmpty) break;
            blanks.Add((stock, bottom, wood));
            bottom += stock.Thickness;
        }

        var dowels = Dowels(blanks.Select(b => b.Wood), spec.Dowels, shell);
        return [.. blanks
            .Select((b, i) =>
                PlainLayers.Create(i + 1, LayerRole.Jig, "CORE", b.Stock, b.Bottom, b.Wood, dowels, spec.LetterHeight))];
    }

    /// <summary>A board as large as the ring, on which the place of the core is marked.</summary>
    private static Layer BedOf(ImmutableArray<Layer> core, Region outer, StackSpec spec)
    {
        ImmutableArray<Loop> footprint = [.. core[0].Region.Loops];
        // The gaps between separate rings are filled: one board carries them all.
        var board = outer.Islands.Length == 1 ? outer : new([new(Loop.Rectangle(outer.Bounds), [])]);
        return PlainLayers.Create(1, LayerRole.Jig, "BED", core[0].Stock, -core[0].Stock.Thickness, board, [],
            spec.LetterHeight, footprint);
    }

    /// <summary>Dowels through every layer of a stack, placed where the narrowest of them has room.</summary>
    private static ImmutableArray<DowelHole> Dowels(IEnumerable<Region> layers, DowelSpec dowels, PartShell shell)
    {
        var stack = layers.ToList();
        if (stack.Count < 2) return [];
        var inside = dowels.HoleDiameter / 2 + dowels.Wall;
        var allowed = shell.Moved(stack.MinBy(l => l.Area)!, -inside);
        return [.. allowed.Islands.SelectMany(i => DowelPlacement.Choose(new([i]), 2 * dowels.HoleDiameter))
            .Where(p => stack.All(l => l.Contains(p) && l.DistanceToEdge(p) >= inside - 1e-6))
            .Select(p => new DowelHole(p, dowels.HoleDiameter))];
    }
}
