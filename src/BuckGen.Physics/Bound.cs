using System.Runtime.CompilerServices;

namespace BuckGen.Physics;

/// <summary>Refuses numbers out of range in words a maker understands.</summary>
internal static class Bound
{
    /// <exception cref="ArgumentOutOfRangeException">The value is not a number or lies outside the limits.</exception>
    public static void Check(
        double value, double least, double most, string what, string unit = "", [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= least && value <= most))
            throw new ArgumentOutOfRangeException(name, FormattableString.Invariant(
                $"The {what} is {value}{unit}; it must be from {least} to {most}{unit}."));
    }

    /// <summary>The message of a refusal, without the name of the parameter, which means nothing to a maker.</summary>
    public static string Words(ArgumentOutOfRangeException refusal) =>
        refusal.Message.Replace($" (Parameter '{refusal.ParamName}')", "", StringComparison.Ordinal);
}
