using System.Collections.Immutable;
using BuckGen.Cancellation;
using BuckGen.Cutting.Seams;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Grouping;
using BuckGen.Findings;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Cutting.Boards;

/// <summary>Which parts of a design are laid out.</summary>
public enum CutScope
{
    /// <summary>The buck, jigs and panel.</summary>
    Everything,

    /// <summary>Jigs and panel alone.</summary>
    Accessories,
}

/// <summary>The parts of a design laid out on the boards they are cut from.</summary>
/// <param name="Design">The design.</param>
/// <param name="Spec">How it is cut.</param>
/// <param name="Boards">The boards, grouped by stock, thickest first.</param>
/// <param name="Findings">Parts that fit on no board.</param>
public sealed record CutPlan(
    BuckDesign Design, CuttingSpec Spec, ImmutableArray<BoardLayout> Boards, ImmutableArray<Finding> Findings)
{
    /// <summary>Plates that are cut in pieces; none when all fit.</summary>
    public ImmutableArray<SeamedPlate> Plates { get; init; } = [];

    /// <summary>The bucks of a sign that is made in several, each on boards of its own; none for one buck.</summary>
    public ImmutableArray<CutPlan> Groups { get; init; } = [];

    /// <summary>The boards of all bucks.</summary>
    internal IEnumerable<BoardLayout> AllBoards => Boards.Concat(Groups.SelectMany(g => g.Boards));

    /// <summary>Length cut through in all boards, mm.</summary>
    public double CutLength => AllBoards.SelectMany(s => s.Placements).Sum(p => p.Part.CutLength);

    /// <summary>The findings of the design and of the plan together, the gravest first.</summary>
    public ImmutableArray<Finding> AllFindings => FindingList.Append(Design.Findings, Findings);

    /// <summary>True when the design or the plan has a finding of severity error.</summary>
    public bool HasErrors => AllFindings.Any(f => f.Severity == Severity.Error);

    /// <summary>Lays out the parts of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="spec">How it is cut.</param>
    /// <param name="scope">Which of its parts.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    /// <exception cref="SpecException">A number of the spec is out of range.</exception>
    public static CutPlan Create(BuckDesign design, CuttingSpec spec, CutScope scope = CutScope.Everything,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(spec);
        spec.Validate();
        if (spec.Compensation * 2 >= design.Spec.Dowels.HoleDiameter)
            throw new SpecException(FormattableString.Invariant(
                $"The kerf of {spec.Kerf} mm leaves nothing of a dowel hole of {design.Spec.Dowels.HoleDiameter} mm; use a ")
                + "smaller kerf or thicker dowels.");
        return CancellableWork.Run(
            () => WithGroups(LaidOut(design, spec, scope, cancellation), scope, cancellation), cancellation);
    }

    /// <summary>The plan with its bucks; what was found on laying them out names the buck.</summary>
    private static CutPlan WithGroups(CutPlan plan, CutScope scope, CancellationToken cancellation)
    {
        if (plan.Design.Groups.IsEmpty) return plan;
        var groups = plan.Design.Groups
            .Select(g => (g.Number, Plan: LaidOut(g.Design, plan.Spec, scope, cancellation))).ToArray();
        return plan with
        {
            Groups = [.. groups.Select(g => g.Plan)],
            Findings =
            [
                .. plan.Findings,
                .. GroupFindings.Named(groups.SelectMany(g => g.Plan.Findings.Select(f => (g.Number, f))), groups.Length),
            ],
        };
    }

    private static CutPlan LaidOut(BuckDesign design, CuttingSpec spec, CutScope scope, CancellationToken cancellation)
    {
        ImmutableArray<Layer> layers = [.. scope == CutScope.Accessories ? [] : design.Layers, .. design.Accessories];
        var seamed = layers.Select(l => PlateSeaming.Apply(l, PlateRoom.Find(l.Stock, spec), spec.Seams,
            design.Spec.LetterHeight, cancellation)).ToArray();
        var parts = Parts(design, layers, seamed, spec, cancellation);
        var boards = ImmutableArray.CreateBuilder<BoardLayout>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(layers.Select(l => l.Stock).DistinctBy(s => s.Name).Select(s => LaserCheck.Run(s, spec))
            .OfType<Finding>());
        findings.AddRange(layers.Select(l => DrillByHand(l, spec)).OfType<Finding>());
        findings.AddRange(parts.Where(p => p.Lost is not null).Select(p => NarrowerThanKerf(p, spec)));
        foreach (var group in parts.GroupBy(p => p.Stock).OrderByDescending(g => g.Key.Thickness))
        {
            var stock = Sized(group.Key, group, spec);
            var piece = MachineBed.Piece(stock, spec);
            var (laidOut, tooLarge) = ShelfLayout.Arrange(group, piece, spec, cancellation);
            foreach (var placements in laidOut) boards.Add(new(boards.Count + 1, stock, [.. placements]) { Piece = piece });
            // Of a plate in which no seam can stand a finding of its own says why.
            tooLarge.RemoveAll(p => seamed.Any(s => s.Findings.Any(f => f.Id == PlateSeaming.NoPlaceId) && s.Holds(p.Name)));
            if (tooLarge.MaxBy(p => Math.Max(p.Bounds.Width, p.Bounds.Height)) is { } largest)
                findings.Add(PlateRoom.TooLarge(largest, [.. tooLarge.Select(p => p.Name)], piece, spec,
                    layers.Any(l => PlateSeaming.IsPlate(l) && l.Parts.Any(p => l.NameOf(p) == largest.Name))));
            if (MachineBed.Finding(stock, piece, spec) is { } cut) findings.Add(cut);
            if (stock != group.Key) findings.Add(SizeAssumed(stock));
        }

        findings.AddRange(seamed.SelectMany(s => s.Findings));
        return new(design, spec, boards.ToImmutable(), [.. findings]) { Plates = [.. seamed.SelectMany(s => s.Plates)] };
    }

    private static Finding NarrowerThanKerf(CutPart part, CuttingSpec spec) =>
        new("narrower-than-kerf", Severity.Warning,
            FormattableString.Invariant(
                $"Part {part.Name} has a hole or a slot narrower than the kerf of {spec.Kerf:0.###} mm; it can't be cut ")
                + "to size.",
            "Make it wider, or drill or file it by hand.")
        {
            Place = part.Lost,
            Limit = spec.Kerf,
        };

    private static Finding? DrillByHand(Layer layer, CuttingSpec spec)
    {
        var smallest = spec.MinHoleDiameter(layer.Thickness);
        var narrow = layer.Parts.SelectMany(p => p.Vents).Where(v => v.Diameter < smallest).ToArray();
        return narrow.Length == 0
            ? null
            : new("vents-drill-by-hand", Severity.Note,
                FormattableString.Invariant(
                    $"{narrow.Length} holes of {narrow[0].Diameter:0.##} mm in layer {layer.Number} are narrower than the ")
                    + FormattableString.Invariant(
                        $"machine can cut through {layer.Thickness:0.##} mm ({smallest:0.##} mm); they are marked with crosses."),
                "Drill them by the drill map, or use a thinner stock for the surface of the base.")
            {
                Height = layer.Top,
                Value = narrow[0].Diameter,
                Limit = smallest,
                Source = "common practice, no source",
            };
    }

    private static CutPart[] Parts(BuckDesign design, ImmutableArray<Layer> layers, SeamedLayer[] seamed, CuttingSpec spec,
        CancellationToken cancellation)
    {
        try
        {
            var offsetter = CheckedOffsetter.Standard(design.Spec.Tolerance);
            var pieces = layers.SelectMany((layer, i) => seamed[i].Parts.Select(piece => (layer, piece))).ToArray();
            return
            [
                .. ParallelWork.Select(
                    pieces, p => CutPart.FromPiece(p.layer, p.piece, spec, offsetter, cancellation), cancellation),
            ];
        }
        catch (OffsetFailedException failure)
        {
            throw new OutlineException($"{design.Outline.Name}: the kerf could not be allowed for. {failure.Message}", failure);
        }
    }

    /// <summary>A board without a stated size is made as large as its largest part needs.</summary>
    private static Stock Sized(Stock stock, IEnumerable<CutPart> parts, CuttingSpec spec)
    {
        if (!stock.SizeIsAssumed) return stock;
        var width = parts.Max(p => Math.Max(p.Bounds.Width, p.Bounds.Height)) + 2 * spec.EdgeMargin;
        var height = parts.Max(p => Math.Min(p.Bounds.Width, p.Bounds.Height)) + 2 * spec.EdgeMargin;
        return width <= stock.BoardWidth && height <= stock.BoardHeight
            ? stock
            : stock with
            {
                BoardWidth = UpToTen(Math.Max(width, stock.BoardWidth)),
                BoardHeight = UpToTen(Math.Max(height, stock.BoardHeight))
            };
    }

    private static double UpToTen(double length) => Math.Ceiling(length / 10) * 10;

    private static Finding SizeAssumed(Stock stock) =>
        new("board-size-assumed", Severity.Warning,
            FormattableString.Invariant(
                $"The size of the boards of {stock.Name} is not given; {stock.BoardWidth:0} x {stock.BoardHeight:0} mm is ")
                + "assumed, so that the largest part fits.",
            "Give the size of your boards.")
        {
            Value = stock.BoardWidth,
        };
}
