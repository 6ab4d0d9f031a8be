using BuckGen.Geometry;

namespace BuckGen.Design.Forming;

/// <summary>How the part becomes smaller as it cools: evenly, toward a fixed point.</summary>
/// <param name="Shrinkage">Per cent of every length, 0 or more.</param>
/// <param name="Centre">The point that keeps its place.</param>
internal readonly record struct Cooling(double Shrinkage, Vec2 Centre)
{
    /// <summary>A length of the part over the same length of the buck.</summary>
    public double Scale => 1 - Shrinkage / 100;

    /// <summary>What a shape of the buck becomes on the cooled part.</summary>
    public Region Apply(Region buck) => Shrinkage == 0 ? buck : buck.Transformed(Affine.Scaling(Scale, Centre));

    /// <summary>The shape of the buck that becomes a shape of the cooled part.</summary>
    public Region Undo(Region part) => Shrinkage == 0 ? part : part.Transformed(Affine.Scaling(1 / Scale, Centre));
}
