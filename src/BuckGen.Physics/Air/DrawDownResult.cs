using System.Collections.Immutable;

namespace BuckGen.Physics.Air;

/// <summary>What limits the flow of the air most.</summary>
public enum AirBottleneck
{
    /// <summary>The vents: more or wider ones would help most.</summary>
    Holes,

    /// <summary>The pump: a larger one would help most.</summary>
    Pump,

    /// <summary>The reservoir: a larger tank would help most.</summary>
    Reservoir,
}

/// <summary>The air at one instant of the draw-down, while the sheet sinks.</summary>
/// <param name="Seconds">Time since the valve opened, s.</param>
/// <param name="Volume">Remaining volume under the sheet, L.</param>
/// <param name="ReservoirPressure">Absolute pressure below the vents, Pa.</param>
public readonly record struct DrawDownSample(double Seconds, double Volume, double ReservoirPressure);

/// <summary>The result of <see cref="DrawDown.Simulate"/>.</summary>
public sealed record DrawDownResult
{
    /// <summary>
    /// Time until the form is drawn while the sheet sinks, s; null when it is longer than <see cref="DrawDown.MaxTime"/>.
    /// </summary>
    public required double? Seconds { get; init; }

    /// <summary>
    /// Time until a rigid volume has fallen to the pressure of the drawn form, s; null when it is longer than
    /// <see cref="DrawDown.MaxTime"/>. Real forming lies between the two times.
    /// </summary>
    public required double? RigidSeconds { get; init; }

    /// <summary>
    /// Share of the time, 0 to 1, during which the vents are choked, so that a deeper vacuum would not draw faster.
    /// </summary>
    public required double ChokedShare { get; init; }

    /// <summary>What would shorten the time most if there were twice as much of it.</summary>
    public required AirBottleneck Bottleneck { get; init; }

    /// <summary>
    /// Evenly spaced samples from the opening of the valve to the end; a single one when there is hardly any air.
    /// </summary>
    public required ImmutableArray<DrawDownSample> Samples { get; init; }
}
