using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The wood of the buck at a height: the drafted outline itself, or a block less the cavity.</summary>
internal sealed class StackedSolid(DraftedShape shape, StackSpec spec)
{
    private StackedSolid? finished;

    /// <summary>Male or female.</summary>
    public BuckKind Kind => spec.Kind;

    /// <summary>The drafted outline inside.</summary>
    public DraftedShape Shape => shape;

    /// <summary>What the sheet meets: the same wood with its upper edge rounded.</summary>
    public StackedSolid Finished => shape.Finished == shape ? this
        : finished ??= new(shape.Finished, spec) { Block = Block };

    /// <summary>
    /// The outer edge of a female block: the bounds of the cavity, which is widest at its rim unless the draft locks, and the
    /// margin.
    /// </summary>
    public Loop? Block { get; private init; } = spec.Kind == BuckKind.Female
        ? Loop.Rectangle(shape.At(shape.Face).Bounds.With(shape.At(shape.Foot).Bounds).Grown(spec.BlockMargin))
        : null;

    /// <summary>The wood at a height within the walls.</summary>
    public Region At(double height)
    {
        var outline = shape.At(height);
        return Block is null ? outline : Region.FromLoops(outline.Loops.Prepend(Block));
    }

    /// <summary>Makes sure that wood is left between the round lip of a cavity and the outside of its block.</summary>
    /// <exception cref="SpecException">The round reaches the outside of the block.</exception>
    public void RequireWoodBesideLip()
    {
        if (Block is null || spec.EdgeRadius == 0) return;
        var (block, lip) = (Block.Bounds, shape.Finished.At(shape.Face).Bounds);
        var left = Math.Min(
            Math.Min(lip.MinX - block.MinX, block.MaxX - lip.MaxX), Math.Min(lip.MinY - block.MinY, block.MaxY - lip.MaxY));
        if (left > 0) return;
        throw new SpecException(FormattableString.Invariant(
            $"An edge radius of {spec.EdgeRadius:0.##} mm reaches {spec.BlockMargin - left:0.##} mm from the cavity, but the ")
            + FormattableString.Invariant($"block has only {spec.BlockMargin:0.##} mm of wood round it. ")
            + "Use a smaller radius or a larger block margin.");
    }

    /// <summary>The rectangle round all that stands under the sheet: block or buck, and the plate under it.</summary>
    public Bounds Plan => spec.Base is { } plate
        ? BasePlate(plate).Bounds
        : Block?.Bounds ?? shape.At(shape.Foot).Bounds.With(shape.At(shape.Face).Bounds);

    /// <summary>The plate under the stack.</summary>
    public Region BasePlate(BasePlate plate)
    {
        var foot = Block?.Bounds ?? shape.At(shape.Foot).Bounds;
        // A draft that locks may leave no foot; the plate then has the size of the face, so that it can be drawn beside the
        // finding.
        if (foot == Bounds.Nothing) foot = shape.At(shape.Face).Bounds;
        return new([new(Loop.Rectangle(foot.Grown(plate.Margin)), [])]);
    }
}
