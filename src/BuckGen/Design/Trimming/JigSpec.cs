using BuckGen.Design.Bucks;

namespace BuckGen.Design.Trimming;

/// <summary>The jig by which the part is trimmed to a straight edge. Lengths in mm.</summary>
public sealed record JigSpec
{
    /// <summary>From the flange to the cut.</summary>
    public double TrimHeight { get; init; } = 12;

    /// <summary>Between the part and the ring round it, so that the part goes in.</summary>
    public double Clearance { get; init; } = 0.5;

    /// <summary>Width of the ring: what a hand and the foot of a saw rest on.</summary>
    public double Land { get; init; } = 40;

    /// <summary>How much of the flange may be left on the part under the ring.</summary>
    public double FlangeRoom { get; init; } = 12;

    /// <summary>True for a core that holds the part from inside.</summary>
    public bool Core { get; init; } = true;

    /// <summary>True for a bed, a board on which the core is glued, so that the part can neither slide nor tip.</summary>
    public bool Bed { get; init; } = true;

    /// <summary>How far the core stays below the cut, so that no blade meets it.</summary>
    public double BladeRoom { get; init; } = 2;

    internal void Validate()
    {
        SpecRange.Require(TrimHeight is >= 2 and <= 500, "trim height", TrimHeight, " mm", "from 2 to 500 mm");
        SpecRange.Require(Clearance is >= 0 and <= 10, "clearance of the jig", Clearance, " mm", "from 0 to 10 mm");
        SpecRange.Require(Land is >= 10 and <= 300, "land of the jig", Land, " mm", "from 10 to 300 mm");
        SpecRange.Require(FlangeRoom is >= 0 and <= 200, "flange room of the jig", FlangeRoom, " mm", "from 0 to 200 mm");
        SpecRange.Require(BladeRoom is >= 0 and <= 50, "blade room over the core", BladeRoom, " mm", "from 0 to 50 mm");
    }
}
