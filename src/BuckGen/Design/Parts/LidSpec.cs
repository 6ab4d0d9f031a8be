using BuckGen.Settings;

namespace BuckGen.Design.Parts;

/// <summary>How a lid mates with the part.</summary>
public enum LidFit
{
    /// <summary>The lid's wall goes round the part; its face lies on the part's mouth.</summary>
    Over,

    /// <summary>The lid's wall goes into the part; its flange lies on the part's mouth and stands out beyond it.</summary>
    Into,

    /// <summary>Like <see cref="Into"/>, but the lid's flange ends where the part's outside ends.</summary>
    Flush,
}

/// <summary>
/// A second part that mates with the first and is made from the same drawing: a lid for a box, a cover for a tray. Lengths in mm,
/// angles in degrees.
/// </summary>
public sealed record LidSpec
{
    /// <summary>How it mates.</summary>
    public LidFit Fit { get; init; } = LidSettings.Fit.Default;

    /// <summary>How far the two walls overlap.</summary>
    public double Skirt { get; init; } = LidSettings.Skirt.Value;

    /// <summary>Smallest play between the two walls, on every side.</summary>
    public double Clearance { get; init; } = LidSettings.Clearance.Value;

    /// <summary>Slope of the lid's wall; null for that of the part.</summary>
    public double? Draft { get; init; }

    /// <summary>How far the flange of a lid that goes into the part stands out beyond it.</summary>
    public double Brim { get; init; } = LidSettings.Brim.Value;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="SpecException">A number is out of range.</exception>
    public void Validate()
    {
        LidSettings.Skirt.Require(Skirt);
        LidSettings.Clearance.Require(Clearance);
        LidSettings.Draft.Require(Draft);
        LidSettings.Brim.Require(Brim);
    }
}
