namespace BuckGen.Physics;

/// <summary>Controls the step size of a time integration by its error estimate.</summary>
/// <remarks>
/// The error is taken to grow with the square of the step. The step changes by a factor of 0.2 to 4, and 0.9 of the step that
/// the estimate allows is taken (the usual controller: E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, from
/// memory).
/// </remarks>
/// <param name="Tolerance">Largest error of one step.</param>
internal readonly record struct AdaptiveStep(double Tolerance)
{
    private const double MinError = 1e-12;

    /// <summary>How many times the last step is halved to find an event in it: to the last digit of a double.</summary>
    private const int Halvings = 45;

    /// <summary>Whether a step with this error must be repeated with a shorter one.</summary>
    public bool Rejects(double error) => error > Tolerance;

    /// <summary>Size of the next step, or of the repeated one.</summary>
    /// <param name="stepSize">Size of the step just tried, s.</param>
    /// <param name="error">Its error estimate.</param>
    public double Next(double stepSize, double error) =>
        stepSize * Math.Clamp(0.9 * Math.Sqrt(Tolerance / Math.Max(error, MinError)), 0.2, 4);

    /// <summary>The shortest step that reaches an event, s.</summary>
    /// <param name="stepSize">A step that reaches it, s.</param>
    /// <param name="isBefore">Whether the event is still to come after a step of the given size.</param>
    public static double ShortestTo(double stepSize, Func<double, bool> isBefore) =>
        IntervalHalving.Narrow(0, stepSize, isBefore, Halvings).High;
}
