using BuckGen.Design.Forming;
using BuckGen.Geometry;

namespace BuckGen.Design.Parts;

/// <summary>How the drawn outline was changed so that the finished part comes out to size.</summary>
/// <param name="Side">The side of the part that the drawing shows; null when it shows the buck.</param>
/// <param name="Shrinkage">Per cent by which the plastic shrinks; the buck is the part divided by 1 - shrinkage.</param>
/// <param name="WallAllowance">How far the outline was then moved for the thickness of the wall, mm; negative inward.</param>
public sealed record PartSizing(PartSide? Side, double Shrinkage, double WallAllowance)
{
    /// <summary>By what the drawing was scaled first, to the ordered size; 1 for a drawing that has it.</summary>
    public double DrawingScale { get; init; } = 1;

    /// <summary>
    /// How far the plane in which the outline is to size lies inside the drafted wall, mm. Where the outline is that of the
    /// mouth, this is the height of the cut over the flange.
    /// </summary>
    public double Inset { get; init; }

    /// <summary>How far the part's largest dimension may be off as formed, mm either way.</summary>
    public double FormedTolerance { get; init; } = PartTolerance.Formed.At(0);

    /// <summary>How far its largest dimension may be off when its edges are trimmed by hand, mm either way.</summary>
    public double TrimmedTolerance { get; init; } = PartTolerance.Trimmed.At(0);

    /// <summary>Nothing was changed.</summary>
    public static PartSizing None { get; } = new(null, 0, 0);

    /// <summary>The same with the tolerances of a part of this size.</summary>
    internal PartSizing For(Region part)
    {
        if (part.IsEmpty) return this;
        var largest = Math.Max(part.Bounds.Width, part.Bounds.Height);
        return this with
        {
            FormedTolerance = PartTolerance.Formed.At(largest),
            TrimmedTolerance = PartTolerance.Trimmed.At(largest)
        };
    }
}
