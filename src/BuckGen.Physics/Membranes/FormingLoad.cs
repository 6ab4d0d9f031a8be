using System.Collections.Immutable;

namespace BuckGen.Physics.Membranes;

/// <summary>The load on the sheet: first the tool rises through the frame, then gas is let in above the sheet.</summary>
/// <remarks>
/// The amount of gas is prescribed, not its pressure. The pressure of a neo-Hookean bubble falls once it is large enough; under a
/// prescribed pressure the bubble would snap through. Gas enters until the pressure or the swept depth reaches its limit; then
/// the sheet settles to equilibrium.
/// </remarks>
/// <param name="Pressure">Pressure difference at which no more gas is let in, Pa, above 0 to 100 000 000.</param>
public sealed record FormingLoad(double Pressure)
{
    /// <summary>Rise of the tool before any pressure acts, mm, 0 to 10 000; 0 for a female tool.</summary>
    public double Rise { get; init; }

    /// <summary>A plug that pushes the sheet down after the rise of the tool, before any gas; null for none.</summary>
    public Plug? Plug { get; init; }

    /// <summary>
    /// Volume swept by the sheet after the rise of the tool, over the area inside the frame. At it no more gas is let in. In mm,
    /// 0.000001 to 10 000; null for no limit.
    /// </summary>
    public double? SweptDepth { get; init; }

    /// <summary>
    /// Relative residual allowed along the load path: residual over reaction forces, 0.001 to 0.2. The smaller it is, the closer
    /// the sheet stays to equilibrium and the more steps it takes.
    /// </summary>
    public double PathTolerance { get; init; } = 0.05;

    /// <summary>
    /// Coulomb friction coefficient between sheet and tool, 0 to 1 000 000; null when the sheet sticks where it touches the tool.
    /// </summary>
    public double? Friction { get; init; }

    /// <summary>
    /// Step limit for each stage, 1 to 200 000. A sheet that sticks takes one to five thousand steps at the default tolerance.
    /// </summary>
    public int MaxSteps { get; init; } = 200_000;

    internal void Validate(ImmutableArray<double> stops)
    {
        Bound.Check(Pressure, double.Epsilon, 1e8, "pressure", " Pa");
        var last = 0.0;
        foreach (var stop in stops)
        {
            if (!(stop > last && stop < Pressure))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"The stops must ascend below {Pressure} Pa; {stop} does not."));
            }


            last = stop;
        }
        Bound.Check(Rise, 0, 10_000, "rise of the tool", " mm");
        Plug?.Validate();
        if (SweptDepth is { } depth) Bound.Check(depth, 1e-6, 10_000, "swept depth", " mm");
        if (Friction is { } friction) Bound.Check(friction, 0, 1e6, "coefficient of friction");
        Bound.Check(PathTolerance, 0.001, 0.2, "tolerance on the path");
        Bound.Check(MaxSteps, 1, 200_000, "number of steps");
    }
}
