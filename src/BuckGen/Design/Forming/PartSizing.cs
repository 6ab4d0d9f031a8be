using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Design.Forming;

/// <summary>How the drawn outline was changed so that the finished part comes out to size.</summary>
/// <param name="Drawn">What the drawing shows.</param>
/// <param name="Shrinkage">Per cent by which the plastic shrinks; the buck is the part divided by 1 - shrinkage.</param>
/// <param name="WallAllowance">How far the outline was then moved for the thickness of the wall, mm; negative inward.</param>
public sealed record PartSizing(Drawn Drawn, double Shrinkage, double WallAllowance)
{
    /// <summary>How far the part's largest dimension may be off as formed, mm either way.</summary>
    public double FormedTolerance { get; init; } = PartTolerance.Formed.At(0);

    /// <summary>How far its largest dimension may be off when its edges are trimmed by hand, mm either way.</summary>
    public double TrimmedTolerance { get; init; } = PartTolerance.Trimmed.At(0);

    /// <summary>Nothing was changed.</summary>
    public static PartSizing None { get; } = new(Drawn.Buck, 0, 0);

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

    /// <summary>Which way the wall moves the buck's outline: the sheet lies outside a male buck and inside a cavity.</summary>
    /// <returns>-1, 0 or 1.</returns>
    internal static int Direction(BuckKind kind, Drawn drawn) => (kind, drawn) switch
    {
        (BuckKind.Male, Drawn.Outside) => -1,
        (BuckKind.Female, Drawn.Inside) => 1,
        _ => 0,
    };

    /// <summary>The outline made larger so that the cooled part is to size.</summary>
    internal static Region Enlarged(Region region, double shrinkage) =>
        shrinkage == 0 ? region : region.Transformed(Affine.Scaling(1 / (1 - shrinkage / 100), region.Bounds.Centre));

    /// <summary>Thickness of the wall measured level, mm: the mean formed thickness, over the cosine of the draft.</summary>
    internal static double LevelWall(Blank blank, double draft) => blank.MeanThickness / Math.Cos(draft * Math.PI / 180);
}
