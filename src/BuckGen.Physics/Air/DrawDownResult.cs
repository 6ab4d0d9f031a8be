using System.Collections.Immutable;

namespace BuckGen.Physics.Air;

/// <summary>What holds the air back most.</summary>
public enum AirBottleneck
{
    /// <summary>The vents: more or wider ones would help most.</summary>
    Holes,

    /// <summary>The pump: a larger one would help most.</summary>
    Pump,

    /// <summary>The reservoir: a larger tank would help most.</summary>
    Reservoir,
}

/// <summary>The air at a moment of the draw-down, while the sheet sinks.</summary>
/// <param name="Seconds">Time since the valve opened, s.</param>
/// <param name="Volume">Volume left under the sheet, L.</param>
/// <param name="ReservoirPressure">Absolute pressure below the vents, Pa.</param>
public readonly record struct DrawDownSample(double Seconds, double Volume, double ReservoirPressure);

/// <summary>How the air leaves.</summary>
public sealed record DrawDownResult
{
    /// <summary>
    /// Time until the form is drawn while the sheet sinks, s; null when that takes longer than <see cref="DrawDown.MaxTime"/>, or
    /// for ever.
    /// </summary>
    public required double? Seconds { get; init; }

    /// <summary>
    /// Time until a rigid volume is down to the pressure of the drawn form, s; null as above. Real forming lies between the two.
    /// </summary>
    public required double? RigidSeconds { get; init; }

    /// <summary>Share of the time, 0 to 1, in which the vents are choked, so that a deeper vacuum would draw no faster.</summary>
    public required double ChokedShare { get; init; }

    /// <summary>What would shorten the time most if there were twice as much of it.</summary>
    public required AirBottleneck Bottleneck { get; init; }

    /// <summary>Evenly spaced moments from the opening of the valve to the end.</summary>
    public required ImmutableArray<DrawDownSample> Samples { get; init; }
}
