using System.Runtime.CompilerServices;

namespace BuckGen.Physics;

/// <summary>Refuses numbers out of range in words a maker understands.</summary>
internal static class Bound
{
    /// <exception cref="ArgumentOutOfRangeException">The value is not a number or lies outside the limits.</exception>
    public static void Check(
        double value, double min, double max, string what, string unit = "", [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= min && value <= max))
            throw new ArgumentOutOfRangeException(name, FormattableString.Invariant(
                $"The {what} is {value}{unit}; it must be from {min} to {max}{unit}."));
    }

    /// <summary>The message of a refusal, without the name of the parameter, which means nothing to a maker.</summary>
    public static string MessageOf(ArgumentOutOfRangeException refusal) =>
        refusal.Message.Replace($" (Parameter '{refusal.ParamName}')", "", StringComparison.Ordinal);
}
