using BuckGen.Design.Bucks;
using BuckGen.Settings;

namespace BuckGen.Cutting.Costs;

/// <summary>
/// What work costs and how long it takes in this shop. Nothing is assumed: a missing figure is left out of the sums and reported.
/// </summary>
/// <remarks>
/// Prices of boards and feeds through them are given with the boards: <see cref="Stock.Price"/>, <see cref="Stock.CutFeed"/>.
/// </remarks>
public sealed record RateSpec
{
    /// <summary>No rates.</summary>
    public static RateSpec None { get; } = new();

    /// <summary>The shop's currency, such as "EUR"; shown after sums.</summary>
    public string Currency { get; init; } = "";

    /// <summary>An hour of hand work.</summary>
    public double? Labour { get; init; }

    /// <summary>An hour of the laser or router, its operator included.</summary>
    public double? Machine { get; init; }

    /// <summary>Feed along marks and lettering, mm a minute.</summary>
    public double? MarkFeed { get; init; }

    /// <summary>What each path takes besides its length: the move to it and the start of the cut, s.</summary>
    public double? PathSeconds { get; init; }

    /// <summary>Loading a board and taking its parts off, minutes.</summary>
    public double? BoardMinutes { get; init; }

    /// <summary>Drilling one hole by hand, s.</summary>
    public double? DrillSeconds { get; init; }

    /// <summary>Gluing one layer onto the next, clamping included, minutes.</summary>
    public double? GlueMinutes { get; init; }

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="SpecException">A number is out of range.</exception>
    internal void Validate()
    {
        RateSettings.Labour.Require(Labour);
        RateSettings.Machine.Require(Machine);
        RateSettings.MarkFeed.Require(MarkFeed);
        RateSettings.PathSeconds.Require(PathSeconds);
        RateSettings.BoardMinutes.Require(BoardMinutes);
        RateSettings.DrillSeconds.Require(DrillSeconds);
        RateSettings.GlueMinutes.Require(GlueMinutes);
    }
}
