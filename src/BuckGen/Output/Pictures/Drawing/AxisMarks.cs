namespace BuckGen.Output.Pictures.Drawing;

/// <summary>Round numbers along an axis.</summary>
internal static class AxisMarks
{
    /// <summary>From 0 as far as the axis goes, in steps of 1, 2 or 5 or tens of them.</summary>
    /// <param name="length">Length of the axis, above 0.</param>
    /// <param name="maxSteps">Maximum number of steps.</param>
    public static IEnumerable<double> Along(double length, int maxSteps)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(length / maxSteps)));
        var step = ((double[])[1, 2, 5, 10]).First(s => length / (s * power) <= maxSteps + 1e-9) * power;
        return Enumerable.Range(0, (int)Math.Floor(length / step + 1e-9) + 1).Select(i => i * step);
    }
}
