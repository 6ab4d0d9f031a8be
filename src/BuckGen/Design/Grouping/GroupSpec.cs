using BuckGen.Design.Bucks;

namespace BuckGen.Design.Grouping;

/// <summary>
/// A sign made in several bucks, each of which fits the frame, and the register board that holds the formed pieces in place.
/// Lengths in mm.
/// </summary>
/// <param name="Stock">Stock the register board is cut from.</param>
public sealed record GroupSpec(Stock Stock)
{
    /// <summary>
    /// Room between formed piece and opening on every side; null for what the piece needs, by the rule of the face panel.
    /// </summary>
    public double? Fit { get; init; }

    /// <summary>From the openings to the edge of the board.</summary>
    public double Margin { get; init; } = GroupSettings.Margin.Value;

    internal void Validate()
    {
        Stock.Validate();
        GroupSettings.Fit.Require(Fit);
        GroupSettings.Margin.Require(Margin);
    }
}
