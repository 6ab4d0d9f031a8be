using System.Collections.Immutable;

namespace BuckGen.Physics.Heat;

/// <summary>Whether the sheet gets as warm or as cold as wanted.</summary>
internal enum HeatOutcome
{
    /// <summary>It does.</summary>
    Reached,

    /// <summary>Never: it comes to rest short of the wanted temperature, at <see cref="SheetHeatResult.Steady"/>.</summary>
    Never,

    /// <summary>It would, but takes longer than is followed.</summary>
    TooSlow,
}

/// <summary>How a sheet warms or cools.</summary>
internal sealed record SheetHeatResult
{
    /// <summary>Whether the wanted temperature is reached.</summary>
    public required HeatOutcome Outcome { get; init; }

    /// <summary>Time until it is reached, s; null when it is not.</summary>
    public required double? Seconds { get; init; }

    /// <summary>Temperatures at that time, or at the end of what was followed.</summary>
    public required SheetTemperatures End { get; init; }

    /// <summary>
    /// Temperatures at which the sheet would come to rest; null when it would never rest, because heat comes in and can't leave.
    /// </summary>
    public required SheetTemperatures? Steady { get; init; }

    /// <summary>21 evenly spaced moments from the start to the end; one when the sheet starts as wanted.</summary>
    public required ImmutableArray<TemperatureSample> Samples { get; init; }
}
