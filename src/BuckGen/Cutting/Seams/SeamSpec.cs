using BuckGen.Settings;

namespace BuckGen.Cutting.Seams;

/// <summary>What holds two pieces of a plate together at a seam.</summary>
public enum SeamKind
{
    /// <summary>Keys on one edge that lock into the other, cut with the edge.</summary>
    Keyed,

    /// <summary>A straight edge with marks where dowel holes are drilled into it by hand.</summary>
    Dowelled,
}

/// <summary>How plates larger than the machine's bed or the board are cut in pieces. Lengths in mm.</summary>
public sealed record SeamSpec
{
    /// <summary>What holds the pieces together.</summary>
    public SeamKind Kind { get; init; } = SeamSettings.Kind.Default;

    /// <summary>Width of a key at its head; its neck is narrower by three tenths.</summary>
    public double Key { get; init; } = SeamSettings.Key.Value;

    /// <summary>Play round every key; the edges between the keys meet.</summary>
    public double Clearance { get; init; } = SeamSettings.Clearance.Value;

    /// <summary>Minimum distance from a seam to openings, vents, dowels, and what stands on the plate.</summary>
    public double Distance { get; init; } = SeamSettings.Distance.Value;

    /// <summary>Diameter of the bit that cuts the keys; 0 for a laser.</summary>
    public double Bit { get; init; } = SeamSettings.Bit.Value;

    /// <summary>How far a seam reaches into the next piece, mm.</summary>
    internal double Reach => Kind == SeamKind.Keyed ? KeyOutline.DepthOf(Key) : 0;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="SpecException">A number is out of range, or a key is too small for its bit.</exception>
    internal void Validate()
    {
        SeamSettings.Key.Require(Key);
        SeamSettings.Clearance.Require(Clearance);
        SeamSettings.Distance.Require(Distance);
        SeamSettings.Bit.Require(Bit);
        if (KeyFault is { } fault) throw new SpecException(fault);
    }

    /// <summary>Why the keys can't be cut; null when they can.</summary>
    internal string? KeyFault => Kind == SeamKind.Keyed && Key < KeyOutline.WidthsOfBit * Bit
        ? FormattableString.Invariant($"A key of {Key:0.##} mm is too small for a bit of {Bit:0.##} mm; make it at least ")
            + FormattableString.Invariant($"{KeyOutline.WidthsOfBit * Bit:0.##} mm wide or use a smaller bit.")
        : null;
}
