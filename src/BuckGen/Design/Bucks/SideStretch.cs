using System.Collections.Immutable;
using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>
/// A stretch of the side of the part, with a slope of its own. Lengths in mm, angles in degrees. It has a draft or an inset.
/// </summary>
public sealed record SideStretch
{
    /// <summary>
    /// Its height, mm; 0 for a ledge; null for the one stretch that takes what the others leave of the depth.
    /// </summary>
    public double? Height { get; init; }

    /// <summary>Its slope away from upright, degrees, 0 to 89; null where the inset is given.</summary>
    public double? Draft { get; init; }

    /// <summary>How far the part is narrower at its end than at its start, mm on every side; null where the draft is
    /// given.</summary>
    public double? Inset { get; init; }

    /// <summary>How many of its numbers are given.</summary>
    internal int Given => (Height is null ? 0 : 1) + (Draft is null ? 0 : 1) + (Inset is null ? 0 : 1);

    /// <summary>True for a level stretch, which has no height.</summary>
    internal bool IsLedge => Height == 0;

    /// <summary>The lowest wall that a stretch may have, mm; below it a ledge is meant.</summary>
    internal const double MinHeight = 0.05;

    /// <summary>Checks a whole side.</summary>
    /// <exception cref="SpecException">The stretches make no side; the message names the first that is wrong.</exception>
    internal static void Require(ImmutableArray<SideStretch> side)
    {
        for (var i = 0; i < side.Length; i++) side[i].Require(i + 1);
        RequireTogether(side);
    }

    /// <summary>Checks that the stretches go together.</summary>
    /// <exception cref="SpecException">They do not; the message gives the remedy.</exception>
    internal static void RequireTogether(ImmutableArray<SideStretch> side)
    {
        if (side.IsEmpty) return;
        var open = side.Count(s => s.Height is null);
        if (open != 1)
            throw new SpecException((open == 0
                ? FormattableString.Invariant(
                    $"All stretches of the side have a height, {side.Sum(s => s.Height):0.##} mm in all")
                : FormattableString.Invariant($"{open} stretches of the side have no height"))
                + "; leave out that of one, best next to the flange: it takes what the boards make of the depth.");
        if (side[0].IsLedge || side[^1].IsLedge)
            throw new SpecException("The side starts or ends with a ledge, but a ledge lies between two stretches of wall; "
                + "give the first and the last stretch some height.");
    }

    /// <summary>Checks a stretch.</summary>
    /// <param name="number">Its number, from the flange.</param>
    /// <exception cref="SpecException">A number is out of range, or one is missing.</exception>
    internal void Require(int number)
    {
        var owner = FormattableString.Invariant($" of stretch {number} of the side");
        SideSettings.Height.Require(Height, owner);
        SideSettings.Draft.Require(Draft, owner);
        SideSettings.Inset.Require(Inset, owner);
        if (Draft is null == Inset is null)
            throw new SpecException(FormattableString.Invariant($"Stretch {number} of the side has ")
                + (Draft is null ? "neither a draft nor an inset" : "a draft and an inset")
                + "; give one of them, the slope in degrees or how far it leads in.");
        if (IsLedge && Inset is not > 0)
            throw new SpecException(FormattableString.Invariant($"Stretch {number} of the side has no height and no inset; ")
                + "give a ledge an inset above 0, or a wall some height.");
        if (Height is > 0 and < MinHeight)
            throw new SpecException(FormattableString.Invariant($"The height{owner} is {Height} mm; it must be 0 for a ledge, ")
                + FormattableString.Invariant($"or from {MinHeight} mm."));
    }
}
