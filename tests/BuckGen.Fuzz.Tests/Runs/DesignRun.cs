using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;

namespace BuckGen.Fuzz.Tests.Runs;

/// <summary>A case taken all the way from the drawing to the files, and what laws need to judge it.</summary>
internal sealed class DesignRun
{
    private readonly Dictionary<Layer, Shape> woods = new(ReferenceEqualityComparer.Instance);

    /// <summary>A design that was made, with the files made from it.</summary>
    public DesignRun(BuckDesign design, CutPlan plan, MadeFiles files)
    {
        (Design, Plan, Files) = (design, plan, files);
        Wall = new(design);
        Walls = [.. design.Layers.Where(l => l.Role == LayerRole.Wall)];
        Boards = [.. files.Boards.Select(b => BoardFile.Read(b.Board, b.Dxf))];
        Parts = design.Layers
            .SelectMany(l => l.Parts.Select(p => (Name: FormattableString.Invariant($"{l.Number}{p.Letter}"), p)))
            .Concat(design.Accessories
                .SelectMany(l => l.Parts.Select(p => (Name: FormattableString.Invariant($"{p.Letter}{l.Number}"), p))))
            .ToDictionary(n => n.Name, n => n.p);
        Block = Wall.IsMale || Walls.IsEmpty ? default : Wood(Walls[^1]).Box;
    }

    public BuckDesign Design { get; }

    public CutPlan Plan { get; }

    public MadeFiles Files { get; }

    public DraftedWall Wall { get; }

    /// <summary>The layers of the drafted wall, lowest first.</summary>
    public ImmutableArray<Layer> Walls { get; }

    /// <summary>The boards as written.</summary>
    public IReadOnlyList<BoardFile> Boards { get; }

    /// <summary>Every piece of the buck, of jigs and panel by its lettering.</summary>
    public IReadOnlyDictionary<string, LayerPart> Parts { get; }

    /// <summary>Bounds of the block round a cavity.</summary>
    public Bounds Block { get; }

    /// <summary>Reads, designs, lays out and makes the files, as the command line does.</summary>
    public static DesignRun Create(DesignCase made, StepClock clock, CancellationToken cancellation)
    {
        var outline = OutlineReader.Read(made.Drawing.Content, made.Drawing.FileName, Reading(made.Drawing), cancellation);
        var design = BuckDesign.Create(outline, made.Buck, null, clock, cancellation);
        clock.Mark("lay out");
        var plan = CutPlan.Create(design, made.Cutting, cancellation: cancellation);
        clock.Mark("make files");
        return new(design, plan, made.Whole ? MadeFiles.Whole(plan, made.Output, cancellation)
            : MadeFiles.Few(plan, made.Output));
    }

    /// <summary>The wood of a layer.</summary>
    public Shape Wood(Layer layer)
    {
        if (!woods.TryGetValue(layer, out var wood)) woods.Add(layer, wood = Shape.FromRegion(layer.Region));
        return wood;
    }

    // Damage takes the unit from many drawings; it is no use to refuse them all.
    private static OutlineOptions Reading(RandomDrawing drawing) =>
        drawing.FileName.EndsWith(".dxf", StringComparison.Ordinal) ? OutlineOptions.Default with { Units = "mm" }
            : OutlineOptions.Default;
}
