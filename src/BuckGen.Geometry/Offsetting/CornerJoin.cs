namespace BuckGen.Geometry.Offsetting;

/// <summary>What an offset does where two pieces of outline turn away from each other.</summary>
public enum Corners
{
    /// <summary>An arc round the corner: every point lies at exactly the offset distance.</summary>
    Round,

    /// <summary>Both sides run on until they meet, up to <see cref="CornerJoin.MitreLimit"/>.</summary>
    Mitre,
}

/// <summary>How corners are joined.</summary>
/// <param name="Corners">Round or mitred.</param>
/// <param name="MitreLimit">
/// Farthest a mitre may reach along the middle line of its corner, as a multiple of the offset distance, at least 1. A sharper
/// corner is cut square to that line there.
/// </param>
public sealed record CornerJoin(Corners Corners = Corners.Round, double MitreLimit = 5)
{
    /// <summary>Round corners.</summary>
    public static CornerJoin Round { get; } = new();

    /// <summary>Mitred corners that reach at most 5 times the distance.</summary>
    public static CornerJoin Mitre { get; } = new(Corners.Mitre);

    /// <summary>Farthest any point of an offset may lie from the outline, as a multiple of the distance.</summary>
    /// <remarks>
    /// A cut mitre is widest at a needle, where its two corners stand one distance to either side of the middle line.
    /// </remarks>
    public double MaxReach => Corners == Corners.Round ? 1 : Math.Sqrt(MitreLimit * MitreLimit + 1);
}
