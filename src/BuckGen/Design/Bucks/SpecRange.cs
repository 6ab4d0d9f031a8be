using BuckGen.Settings;

namespace BuckGen.Design.Bucks;

/// <summary>The range that a number of a spec must keep.</summary>
internal static class SpecRange
{
    /// <summary>Refuses a number out of its range.</summary>
    /// <param name="holds">True when it is within.</param>
    /// <param name="what">What it is.</param>
    /// <param name="value">The number.</param>
    /// <param name="unit">Its unit with a space before it, or nothing.</param>
    /// <param name="range">The range in words.</param>
    /// <exception cref="SpecException">It is out of range.</exception>
    public static void Require(bool holds, string what, double value, string unit, string range)
    {
        if (!holds) throw new SpecException(FormattableString.Invariant($"The {what} is {value}{unit}; it must be {range}."));
    }
}
