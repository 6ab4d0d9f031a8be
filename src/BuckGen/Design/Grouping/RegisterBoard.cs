using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Trimming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Grouping;

/// <summary>The board that holds the formed pieces of a sign in place: an opening for each, marked with its buck.</summary>
/// <param name="Openings">What is cut out of it.</param>
/// <param name="Fit">Room between piece and opening on every side, mm.</param>
/// <param name="Board">The board.</param>
/// <param name="Findings">What its maker should know.</param>
internal sealed record RegisterBoard(Region Openings, double Fit, Layer Board, ImmutableArray<Finding> Findings)
    : JigParts([Board], Findings)
{
    /// <summary>Makes it.</summary>
    /// <param name="pieces">Outside of every formed piece at its mouth, by the number of its buck from 1.</param>
    /// <param name="shell">All formed pieces.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="trimming">Stock, sheet and limits.</param>
    public static RegisterBoard Create(
        ImmutableArray<Region> pieces, PartShell shell, GroupSpec spec, TrimmingSpec trimming)
    {
        var fit = spec.Fit ?? pieces.Max(p => FacePanel.FitFor(p.Bounds, spec.Stock, trimming.Sheet));
        var openings = PartShell.Filled(shell.Moved(new([.. pieces.SelectMany(p => p.Islands)]), fit));
        var edge = Loop.Rectangle(openings.Bounds.Grown(spec.Margin));
        var wood = Region.FromLoops(openings.Loops.Prepend(edge));
        var plain = PlainLayers.Create(
            1, LayerRole.Jig, "REGISTER", spec.Stock, 0, wood, [], trimming.Stack.LetterHeight);
        var board = plain with { Parts = [.. plain.Parts.Select(p => Marked(p, openings, pieces, trimming.Stack))] };
        return new(openings, fit, board,
            [.. PanelFindings.ThinBridges(wood, spec.Stock, trimming.Checks, "register board", "register-bridge-thin")]);
    }

    /// <summary>The board with the number of the buck at every opening.</summary>
    private static LayerPart Marked(LayerPart board, Region openings, ImmutableArray<Region> pieces, StackSpec stack)
    {
        var marks = ImmutableArray.CreateBuilder<Label>();
        if (stack.LetterHeight == 0) return board;
        foreach (var opening in openings.Islands)
        {
            var buck = Enumerable.Range(0, pieces.Length)
                .First(n => pieces[n].Islands.Any(i => opening.Contains(InsidePoint.Find(i))));
            var obstacles = new SegmentIndex(
            [
                .. board.Shape.Loops.SelectMany(l => l.Segments),
                .. marks.Concat(board.Label is { } label ? [label] : Array.Empty<Label>())
                    .SelectMany(m => Loop.Rectangle(m.Box).Segments),
            ]);
            var (b, room) = (opening.Outer.Bounds, 2 * stack.LetterHeight);
            // Below the opening, where it is read together with it.
            var near = new Region([new(Loop.Rectangle(new(b.MinX, b.MinY - room, b.MaxX, b.MinY)), [])]);
            var text = FormattableString.Invariant($"B{buck + 1}");
            if (LabelPlacement.Place(text, stack.LetterHeight, board.Shape, obstacles, near) is { } mark) marks.Add(mark);
        }

        return board with { Marks = marks.ToImmutable() };
    }
}
