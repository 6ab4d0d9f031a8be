namespace BuckGen.Physics.Air;

/// <summary>What draws the air out from under the sheet, and how fast it should be drawn.</summary>
public sealed record AirFlowSpec
{
    /// <summary>
    /// Free-air displacement of the pump at the pressure of the reservoir, L/s, 0.001 to 1000; null when no pump runs during
    /// forming. It has an effect only with a <see cref="ReservoirVolume"/>.
    /// </summary>
    public double? PumpDisplacement { get; init; }

    /// <summary>
    /// Volume of tank, hose and box below the vents, L, 0.01 to 100 000; null when it is so large that its pressure stays
    /// constant.
    /// </summary>
    public double? ReservoirVolume { get; init; }

    /// <summary>Absolute pressure in the reservoir when its valve opens, Pa, from 0 to the ambient pressure.</summary>
    /// <remarks>
    /// The default of 33 600 Pa is 508 mm of mercury below one atmosphere, the minimum that a maker of copolyester recommends
    /// (Eastman, thermoforming FAQ).
    /// </remarks>
    public double ReservoirPressure { get; init; } = 33_600;

    /// <summary>Absolute pressure of the room, Pa, 50 000 to 120 000. The default is the standard atmosphere.</summary>
    public double AmbientPressure { get; init; } = 101_325;

    /// <summary>
    /// Temperature of the trapped air, degrees C, -20 to 200. Hotter air flows faster, so the default gives times that are rather
    /// too long.
    /// </summary>
    public double Temperature { get; init; } = 20;

    /// <summary>Discharge coefficient of the vents, 0.1 to 1.</summary>
    public double DischargeCoefficient { get; init; } = Orifice.SharpEdgeCoefficient;

    /// <summary>Fanning friction factor of the walls of the vents, 0 to 0.1.</summary>
    public double WallFriction { get; init; } = LongHole.WoodFriction;

    /// <summary>
    /// Time within which the form should be drawn, s, 0.01 to 60. To draw thin sheet within 0.5 to 2 s, before it chills, is
    /// common practice (no source).
    /// </summary>
    public double WantedTime { get; init; } = 1;

    /// <summary>Share of the trapped volume that must be swept until the form counts as drawn, 0.01 to 1.</summary>
    /// <remarks>
    /// 0.95 is our definition, no source: by then the sheet lies on the buck except at its corners, which the pressure forms
    /// later.
    /// </remarks>
    public double SweptShare { get; init; } = 0.95;

    /// <summary>
    /// Absolute pressure at which a rigid volume counts as drawn, Pa, from 100 to the ambient pressure. The default is half an
    /// atmosphere (our definition).
    /// </summary>
    public double FormedPressure { get; init; } = 50_000;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    internal void Validate()
    {
        if (PumpDisplacement is { } pump)
            Bound.Check(pump, 0.001, 1000, "displacement of the pump", " L/s", nameof(PumpDisplacement));
        if (ReservoirVolume is { } volume)
            Bound.Check(volume, 0.01, 100_000, "volume of the reservoir", " L", nameof(ReservoirVolume));
        Bound.Check(AmbientPressure, 50_000, 120_000, "ambient pressure", " Pa");
        Bound.Check(ReservoirPressure, 0, AmbientPressure, "pressure in the reservoir", " Pa");
        Bound.Check(Temperature, -20, 200, "temperature of the air", " degrees C");
        Bound.Check(DischargeCoefficient, 0.1, 1, "discharge coefficient");
        Bound.Check(WallFriction, 0, 0.1, "friction factor");
        Bound.Check(WantedTime, 0.01, 60, "wanted time", " s");
        Bound.Check(SweptShare, 0.01, 1, "share to sweep");
        Bound.Check(FormedPressure, 100, AmbientPressure, "pressure of the drawn form", " Pa");
    }
}
