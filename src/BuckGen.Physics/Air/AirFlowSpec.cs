namespace BuckGen.Physics.Air;

/// <summary>What draws the air out from under the sheet, and how fast it should go.</summary>
public sealed record AirFlowSpec
{
    /// <summary>
    /// The pump's free-air displacement, L/s at the pressure of the reservoir, 0.001 to 1000; null for no pump while forming. It
    /// counts only with a <see cref="ReservoirVolume"/>.
    /// </summary>
    public double? PumpDisplacement { get; init; }

    /// <summary>
    /// Volume of tank, hose and box below the vents, L, 0.01 to 100 000; null when it is so large that its pressure stays.
    /// </summary>
    public double? ReservoirVolume { get; init; }

    /// <summary>Absolute pressure in the reservoir when its valve opens, Pa, from 0 to the ambient pressure.</summary>
    /// <remarks>
    /// 33 600 Pa is 508 mm of mercury below one atmosphere, the least a copolyester maker asks for (Eastman, thermoforming FAQ).
    /// </remarks>
    public double ReservoirPressure { get; init; } = 33_600;

    /// <summary>Absolute pressure of the room, Pa, 50 000 to 120 000. The default is the standard atmosphere.</summary>
    public double AmbientPressure { get; init; } = 101_325;

    /// <summary>
    /// Temperature of the trapped air, degrees C, -20 to 200. Hotter air leaves faster, so the default errs on the slow side.
    /// </summary>
    public double Temperature { get; init; } = 20;

    /// <summary>Discharge coefficient of the vents, 0.1 to 1.</summary>
    public double DischargeCoefficient { get; init; } = Orifice.SharpEdgeCoefficient;

    /// <summary>Fanning's friction factor of the vents' walls, 0 to 0.1.</summary>
    public double WallFriction { get; init; } = LongHole.WoodFriction;

    /// <summary>
    /// Time in which the form should be drawn, s, 0.01 to 60. 0.5 to 2 s before thin sheet chills is common practice (no source).
    /// </summary>
    public double WantedTime { get; init; } = 1;

    /// <summary>Share of the trapped volume that must have been swept for the form to be taken as drawn, 0.01 to 1.</summary>
    /// <remarks>
    /// 0.95 (our definition, no source): by then the sheet lies on the buck but for its corners, which the pressure draws in
    /// later.
    /// </remarks>
    public double SweptShare { get; init; } = 0.95;

    /// <summary>
    /// Absolute pressure at which a rigid volume is taken as drawn, Pa, from 100 to the ambient pressure: half an atmosphere (our
    /// definition).
    /// </summary>
    public double FormedPressure { get; init; } = 50_000;

    /// <summary>Checks every number against its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    internal void Validate()
    {
        if (PumpDisplacement is { } pump) Bound.Check(pump, 0.001, 1000, "displacement of the pump", " L/s", nameof(PumpDisplacement));
        if (ReservoirVolume is { } volume) Bound.Check(volume, 0.01, 100_000, "volume of the reservoir", " L", nameof(ReservoirVolume));
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
