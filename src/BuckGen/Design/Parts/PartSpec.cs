using BuckGen.Design.Bucks;

namespace BuckGen.Design.Parts;

/// <summary>One of the two sides of the part's wall.</summary>
public enum PartSide
{
    /// <summary>The side that holds something: the outline there is the clear width.</summary>
    Inside,

    /// <summary>The side that people touch.</summary>
    Outside,
}

/// <summary>One of the two ends of the part.</summary>
public enum PartEnd
{
    /// <summary>The open end: where the part is cut, or where its flange begins.</summary>
    Mouth,

    /// <summary>The closed end: the face over a male buck, the floor of a cavity.</summary>
    Face,
}

/// <summary>
/// The finished part as it is ordered, cooled and trimmed. Its depth is the <see cref="StackSpec.Depth"/> of the spec.
/// </summary>
public sealed record PartSpec
{
    /// <summary>Whether the drawing and the depth are those of the inside or of the outside.</summary>
    public PartSide Side { get; init; } = PartSettings.Side.Default;

    /// <summary>The end at which the drawing is to size.</summary>
    public PartEnd At { get; init; } = PartSettings.At.Default;

    /// <summary>
    /// Width and height of the part, mm; the drawing is scaled to it evenly. Null for the size of the drawing.
    /// </summary>
    public RectangleSize? Size { get; init; }

    /// <summary>
    /// From the underside of the flange to a cut made without a ring, mm. Null for none: then the ring of the jig cuts, or the
    /// part ends at its flange.
    /// </summary>
    public double? CutHeight { get; init; }

    /// <summary>The plane of the wall in which the drawing is to size.</summary>
    internal OutlineAt PlaneFor(BuckKind kind) => (kind == BuckKind.Male) == (At == PartEnd.Mouth) ? OutlineAt.Base
        : OutlineAt.Face;

    internal void Validate()
    {
        if (Size is { } size) PartSettings.Size.Require(size.Width, size.Height);
        PartSettings.CutHeight.Require(CutHeight);
    }
}
