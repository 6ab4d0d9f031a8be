using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Cutting.Seams;

/// <summary>A plate that is cut in pieces.</summary>
/// <param name="Name">Its lettering: "1A".</param>
/// <param name="Pieces">Lettering of the pieces: "1A-1".</param>
/// <param name="Seams">The seams between them.</param>
public sealed record SeamedPlate(string Name, ImmutableArray<string> Pieces, ImmutableArray<PlateSeam> Seams);

/// <summary>A straight seam of a plate.</summary>
/// <param name="IsUpright">True when it runs up the drawing, false when it runs across.</param>
/// <param name="At">Where it stands: x of an upright seam, y of a level one, mm.</param>
/// <param name="From">Its lower or left end, mm.</param>
/// <param name="To">Its upper or right end, mm.</param>
/// <param name="Joints">Middles of its keys or dowels along it, mm.</param>
public sealed record PlateSeam(bool IsUpright, double At, double From, double To, ImmutableArray<double> Joints);

/// <summary>A part to be cut, with its name.</summary>
/// <param name="Name">Its lettering.</param>
/// <param name="Part">The part, or a piece of it.</param>
internal sealed record NamedPart(string Name, LayerPart Part);

/// <summary>A layer with its plates in pieces where they are too large.</summary>
/// <param name="Parts">What is cut.</param>
/// <param name="Plates">The plates that are cut in pieces.</param>
/// <param name="Findings">What their maker should know.</param>
internal sealed record SeamedLayer(
    ImmutableArray<NamedPart> Parts, ImmutableArray<SeamedPlate> Plates, ImmutableArray<Finding> Findings)
{
    /// <summary>True for the name of one of its parts.</summary>
    public bool Holds(string name) => Parts.Any(p => p.Name == name);
}
