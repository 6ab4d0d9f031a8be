using BuckGen.Geometry;

namespace BuckGen.Bucks;

/// <summary>The wood of the buck at a height: the drafted outline itself, or a block less the cavity.</summary>
internal sealed class StackedSolid(DraftedShape shape, BuckSpec spec)
{
    /// <summary>The drafted outline inside.</summary>
    public DraftedShape Shape => shape;

    /// <summary>The outer edge of a female block: the rim's bounds and the margin.</summary>
    public Loop? Block { get; } = spec.Kind == BuckKind.Female
        ? Loop.Rectangle(shape.At(shape.Face).Bounds.Grown(spec.BlockMargin))
        : null;

    /// <summary>The wood at a height within the walls.</summary>
    public Region At(double height)
    {
        var outline = shape.At(height);
        return Block is null ? outline : Region.FromLoops(outline.Loops.Prepend(Block));
    }

    /// <summary>The plate under the stack.</summary>
    public Region BasePlate(BasePlate plate)
    {
        var foot = Block?.Bounds ?? shape.At(shape.Foot).Bounds;
        return new([new(Loop.Rectangle(foot.Grown(plate.Margin)), [])]);
    }
}
