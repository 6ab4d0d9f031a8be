using BuckGen.Cutting.Seams;
using BuckGen.Design.Bucks;
using BuckGen.Settings;

namespace BuckGen.Cutting.Boards;

/// <summary>The machine that cuts the boards.</summary>
public enum Machine
{
    /// <summary>A laser: paths are moved aside by half the kerf so that parts come out to size.</summary>
    Laser,

    /// <summary>A router: paths are the nominal outlines; its own program sets the cutter's side and diameter.</summary>
    Router,
}

/// <summary>How parts are cut from boards. Lengths in mm.</summary>
/// <param name="Machine">Laser or router.</param>
/// <param name="Kerf">Full width of the laser's cut; ignored for a router.</param>
/// <param name="Spacing">Least distance between two parts.</param>
/// <param name="EdgeMargin">Least distance between a part and the edge of the board.</param>
public sealed record CuttingSpec(Machine Machine = Machine.Laser, double Kerf = 0.2, double Spacing = 4, double EdgeMargin = 5)
{
    /// <summary>How far an outer edge is moved outward, mm.</summary>
    public double Compensation => Machine == Machine.Laser ? Kerf / 2 : 0;

    /// <summary>What the machine's bed holds; null when every board fits it.</summary>
    public RectangleSize? Bed { get; init; }

    /// <summary>How plates too large for bed or board are cut in pieces; null to refuse them.</summary>
    public SeamSpec? Seams { get; init; }

    /// <summary>
    /// The kerf by a test piece: a square is drawn and cut once without allowance, and the hole and the piece are measured.
    /// Source: a student record of a digital fabrication school (hole 20.14 mm, piece 19.76 mm: kerf 0.19 mm).
    /// </summary>
    /// <param name="hole">Width of the hole, mm.</param>
    /// <param name="piece">Width of the piece that came out of it, mm.</param>
    /// <exception cref="SpecException">The piece is larger than the hole.</exception>
    internal static double KerfOfTest(double hole, double piece) => hole >= piece
        ? (hole - piece) / 2
        : throw new SpecException(
            FormattableString.Invariant(
                $"The test piece is {piece} mm and its hole {hole} mm wide; the hole must be the larger, so measure again."));

    /// <summary>Smallest round hole the machine makes through a board, mm.</summary>
    /// <param name="thickness">Thickness of the board, mm.</param>
    /// <remarks>
    /// Laser: 0.8 mm through 3 mm, 1.0 through 6 mm, 2.0 through 12 mm of MDF, between them in proportion, and never under two
    /// kerfs. Router: the smallest usual bit, 3 mm. Common practice, no source.
    /// </remarks>
    internal double MinHoleDiameter(double thickness)
    {
        if (Machine == Machine.Router) return 3;
        var hole = thickness <= 6 ? 0.8 + (Math.Max(thickness, 3) - 3) * (0.2 / 3) : 1.0 + (thickness - 6) / 6;
        return Math.Max(hole, 2 * Kerf);
    }

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="SpecException">A number is out of range.</exception>
    internal void Validate()
    {
        CuttingSettings.Kerf.Require(Kerf);
        CuttingSettings.Spacing.Require(Spacing);
        if (Bed is { } bed) CuttingSettings.Bed.Require(bed.Width, bed.Height);
        CuttingSettings.EdgeMargin.Require(EdgeMargin);
        Seams?.Validate();
    }
}
