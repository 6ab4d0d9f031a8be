namespace BuckGen.Design.Trimming;

/// <summary>The jig by which the part is trimmed to a straight edge. Lengths in mm.</summary>
public sealed record JigSpec
{
    /// <summary>
    /// From the underside of the flange to the cut; from its upper side where the ring is a single board. Null for 12,
    /// less on a part lower than 18, and for an ordered part the height with which buck and ring take the fewest boards.
    /// </summary>
    public double? TrimHeight { get; init; }

    /// <summary>How far the height of the ring may miss, mm; null for as far as the depth of the buck may.</summary>
    internal double? HeightTolerance { get; init; }

    /// <summary>Between the part and the ring round it, so that the part goes in.</summary>
    public double Clearance { get; init; } = JigSettings.Clearance.Value;

    /// <summary>Width of the ring: what a hand and the foot of a saw rest on.</summary>
    public double Land { get; init; } = JigSettings.Land.Value;

    /// <summary>How much of the flange may be left on the part under the ring.</summary>
    public double FlangeRoom { get; init; } = JigSettings.FlangeRoom.Value;

    /// <summary>True for a core that holds the part from inside.</summary>
    public bool Core { get; init; } = JigSettings.Core.Default;

    /// <summary>True for a bed, a board on which the core is glued, so that the part can neither slide nor tip.</summary>
    public bool Bed { get; init; } = JigSettings.Bed.Default;

    /// <summary>How far the core stays below the cut, so that no blade meets it.</summary>
    public double BladeRoom { get; init; } = JigSettings.BladeRoom.Value;

    internal void Validate()
    {
        JigSettings.TrimHeight.Require(TrimHeight);
        JigSettings.Clearance.Require(Clearance);
        JigSettings.Land.Require(Land);
        JigSettings.FlangeRoom.Require(FlangeRoom);
        JigSettings.BladeRoom.Require(BladeRoom);
    }
}
