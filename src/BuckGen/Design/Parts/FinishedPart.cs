using BuckGen.Design.Prediction;
using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Parts;

/// <summary>The part as it leaves the shop: cooled, and cut where the job has it cut.</summary>
public sealed record FinishedPart
{
    /// <summary>Where it ends.</summary>
    public required TrimCut Cut { get; init; }

    /// <summary>Where its wall begins, from the plane of the flange: at the cut, or at the flange; mm.</summary>
    internal double MouthHeight => Math.Max(0, Cut.Height);

    /// <summary>From its edge to the inside of its face, mm.</summary>
    public required double InsideDepth { get; init; }

    /// <summary>From its edge to the outside of its face, mm.</summary>
    public required double OutsideDepth { get; init; }

    /// <summary>How far the depths may be off, mm either way.</summary>
    public required double DepthTolerance { get; init; }

    /// <summary>Its outlines at its edge.</summary>
    public required PartOutline Mouth { get; init; }

    /// <summary>Its outlines where the wall meets the face.</summary>
    public required PartOutline Face { get; init; }

    /// <summary>How far widths and heights may be off, mm either way.</summary>
    public required double SizeTolerance { get; init; }

    /// <summary>What it holds up to its edge, mm³, with the range that the tolerances leave.</summary>
    public required FigureRange Volume { get; init; }

    /// <summary>Mass of wall and face without a flange, g; null when the density of the plastic is not known.</summary>
    public required FigureRange? Mass { get; init; }

    /// <summary>Thickness of the wall that the sizes rest on.</summary>
    public required PartWall Wall { get; init; }

    /// <summary>The part before it is cut, to measure it further.</summary>
    internal PartShell? Shell { get; init; }

    /// <summary>What was ordered; null when the drawing shows the buck.</summary>
    public PartOrder? Order { get; init; }
}

/// <summary>Outlines of the part at one height.</summary>
/// <param name="Inside">The clear outline.</param>
/// <param name="Outside">The outer outline.</param>
/// <param name="Wall">Thickness of the wall there, mm.</param>
public sealed record PartOutline(Region Inside, Region Outside, WallBand Wall);

/// <summary>What was ordered, and how the finished part differs from it.</summary>
/// <param name="Side">The side that the order is about.</param>
/// <param name="At">The end at which it gives the size.</param>
/// <param name="Width">Ordered width, mm.</param>
/// <param name="Height">Ordered height, mm.</param>
/// <param name="Depth">Ordered depth, mm.</param>
public sealed record PartOrder(PartSide Side, PartEnd At, double Width, double Height, double Depth)
{
    /// <summary>Finished width less the ordered one, mm.</summary>
    public required double WidthMiss { get; init; }

    /// <summary>Finished height less the ordered one, mm.</summary>
    public required double HeightMiss { get; init; }

    /// <summary>Finished depth less the ordered one, mm.</summary>
    public required double DepthMiss { get; init; }

    /// <summary>The part of <see cref="DepthMiss"/> that comes from the thickness of the boards, mm.</summary>
    public required double FromBoards { get; init; }
}
