using System.Runtime.CompilerServices;

namespace BuckGen.Physics;

/// <summary>Rejects numbers that are out of range, with the value and the limits in the message.</summary>
internal static class Bound
{
    /// <summary>Checks one number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not a number or lies outside the limits.</exception>
    public static void Check(
        double value, double min, double max, string what, string unit = "",
        [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= min && value <= max))
            throw new ArgumentOutOfRangeException(name, FormattableString.Invariant(
                $"The {what} is {value}{unit}; it must be from {min} to {max}{unit}."));
    }

    /// <summary>
    /// The message of the exception without the name of the parameter, which means nothing to the user of a program.
    /// </summary>
    public static string MessageOf(ArgumentOutOfRangeException refusal) =>
        refusal.Message.Replace($" (Parameter '{refusal.ParamName}')", "", StringComparison.Ordinal);
}
