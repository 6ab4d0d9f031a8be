namespace BuckGen.Physics.Membranes;

/// <summary>What is done to the sheet: first the tool rises through the frame, then gas is let in above the sheet.</summary>
/// <remarks>
/// The amount of gas is what is driven, not its pressure: a neo-Hookean bubble takes less pressure once it is large enough, and
/// would jump if the pressure were held. Gas enters until either limit is reached; then the sheet comes to rest.
/// </remarks>
/// <param name="Pressure">Pressure difference at which no more gas is let in, Pa, above 0 to 100 000 000.</param>
internal sealed record FormingLoad(double Pressure)
{
    /// <summary>How far the tool rises before any pressure acts, mm, 0 to 10 000; nothing for a female tool.</summary>
    public double Rise { get; init; }

    /// <summary>
    /// Volume swept by the sheet after the tool's rise, over the area inside the frame, at which no more gas is let in, mm.
    /// </summary>
    public double? SweptDepth { get; init; }

    /// <summary>
    /// Unbalanced force that is tolerated on the way, as a share of the forces where the sheet is held, 0.001 to 0.2. The less,
    /// the nearer to rest the sheet is all the way, and the longer it takes.
    /// </summary>
    public double PathTolerance { get; init; } = 0.05;

    /// <summary>
    /// Coulomb's coefficient of friction between sheet and tool, 0 to 1 000 000; where it is null, what touches the tool sticks
    /// there for good.
    /// </summary>
    public double? Friction { get; init; }

    /// <summary>
    /// Steps after which the simulation stops when the sheet has not come to rest, 1 to 200 000. Sheets that stick take one to
    /// five thousand at the usual unrest.
    /// </summary>
    public int MaxSteps { get; init; } = 200_000;

    internal void Validate()
    {
        Bound.Check(Pressure, double.Epsilon, 1e8, "pressure", " Pa");
        Bound.Check(Rise, 0, 10_000, "rise of the tool", " mm");
        if (SweptDepth is { } depth) Bound.Check(depth, 1e-6, 10_000, "swept depth", " mm");
        if (Friction is { } friction) Bound.Check(friction, 0, 1e6, "coefficient of friction");
        Bound.Check(PathTolerance, 0.001, 0.2, "tolerance on the path");
        Bound.Check(MaxSteps, 1, 200_000, "number of steps");
    }
}
