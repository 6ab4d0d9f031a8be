using BuckGen.Design.Prediction;
using BuckGen.Findings;

namespace BuckGen.Design.Parts;

/// <summary>What a maker should know about the fit of a lid.</summary>
internal static class MatingFindings
{
    /// <summary>Play that is missing by less is rounding, mm.</summary>
    private const double Rounding = 0.02;

    /// <summary>The findings.</summary>
    /// <param name="play">The play.</param>
    /// <param name="tolerance">How far the sizes of a formed part may be off, mm either way.</param>
    public static IEnumerable<Finding> Find(MatingPlay play, double tolerance)
    {
        if (play.Min < 0)
            yield return new("lid-jams", Severity.Error,
                FormattableString.Invariant($"The lid jams: {play.MinDepth:0.#} mm below the mouth the walls pass through ")
                    + FormattableString.Invariant($"each other by {-play.Min:0.##} mm."),
                "Use more clearance, a shorter skirt, or the same draft for lid and part.")
            {
                Place = play.MinAt,
                Value = play.Min,
                Limit = 0,
            };
        else if (play.Min < play.Wanted - Rounding)
            yield return new("lid-tight", Severity.Warning,
                FormattableString.Invariant($"The play of the lid is {play.Min:0.##} mm at its tightest; ")
                    + FormattableString.Invariant($"{play.Wanted:0.##} mm is wanted."),
                "Use more clearance, or a sheet whose wall is known better.")
            {
                Place = play.MinAt,
                Value = play.Min,
                Limit = play.Wanted,
            };
        if (play.Min >= 0 && play.Min < tolerance)
            yield return new("lid-within-tolerance", Severity.Note,
                FormattableString.Invariant($"Formed sizes may be off by {tolerance:0.#} mm; the play of the lid is ")
                    + $"{WallText.Format(new(play.Min, play.Max))}.",
                "Try the fit on scrap sheet before good stock is cut.")
            {
                Value = play.Min,
                Limit = tolerance,
            };
    }
}
