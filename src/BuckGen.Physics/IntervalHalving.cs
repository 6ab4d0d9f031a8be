namespace BuckGen.Physics;

/// <summary>Finds where a condition changes by halving an interval.</summary>
internal static class IntervalHalving
{
    /// <summary>The last interval, at whose lower end the condition holds and at whose upper end it does not.</summary>
    /// <param name="low">Lower end, where the condition is taken to hold.</param>
    /// <param name="high">Upper end, where it is taken not to hold.</param>
    /// <param name="isLow">The condition.</param>
    /// <param name="count">How many times the interval is halved.</param>
    public static (double Low, double High) Narrow(double low, double high, Func<double, bool> isLow, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var middle = (low + high) / 2;
            if (isLow(middle)) low = middle;
            else high = middle;
        }
        return (low, high);
    }
}
