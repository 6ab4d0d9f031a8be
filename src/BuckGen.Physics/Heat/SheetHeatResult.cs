using System.Collections.Immutable;

namespace BuckGen.Physics.Heat;

/// <summary>Whether the sheet reaches the wanted temperature.</summary>
public enum HeatOutcome
{
    /// <summary>The temperature is reached.</summary>
    Reached,

    /// <summary>
    /// The temperature is never reached: the steady state <see cref="SheetHeatResult.Steady"/> falls short of it.
    /// </summary>
    Never,

    /// <summary>The temperature would be reached, but later than the longest time that is simulated.</summary>
    TooSlow,
}

/// <summary>The result of heating or cooling a sheet.</summary>
public sealed record SheetHeatResult
{
    /// <summary>Whether the wanted temperature is reached.</summary>
    public required HeatOutcome Outcome { get; init; }

    /// <summary>Time until the temperature is reached, s; null when it is not.</summary>
    public required double? Seconds { get; init; }

    /// <summary>Temperatures at that time, or at the end of the simulation.</summary>
    public required SheetTemperatures End { get; init; }

    /// <summary>Temperatures of the steady state; null when there is none, because heat flows in and cannot leave.</summary>
    public required SheetTemperatures? Steady { get; init; }

    /// <summary>
    /// 21 evenly spaced samples from the start to the end; a single one when the temperature is reached at the start.
    /// </summary>
    public required ImmutableArray<TemperatureSample> Samples { get; init; }
}
