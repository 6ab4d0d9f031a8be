namespace BuckGen.Physics.Plates;

/// <summary>
/// A wide board on equally spaced parallel ribs: a continuous strip. The span of the factors is the distance between ribs.
/// </summary>
/// <remarks>
/// A strip across the ribs bends like a beam with the flexural rigidity of the plate (cylindrical bending), so the width does not
/// matter. Source: Clapeyron's equation of three moments, solved for the given number of bays.
/// </remarks>
public static class ContinuousStrip
{
    /// <summary>
    /// A bay clamped at both ribs: an inner bay of a board on many ribs. Deflection q·l⁴/(384·D), moment q·l²/12.
    /// </summary>
    public static PlateFactors InnerBay { get; } = new(1.0 / 384, 1.0 / 12);

    /// <summary>
    /// A number of bays in a row, simply supported at the outermost ribs: deflection of the bay and moment of the place where
    /// they are largest.
    /// </summary>
    /// <param name="bays">Number of bays, 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    public static PlateFactors ForBays(int bays)
    {
        Bound.Check(bays, 1, 1000, "number of bays");
        var moments = SupportMoments(bays);
        var (deflection, moment) = (0.0, 0.0);
        for (var i = 0; i < bays; i++)
        {
            var (left, right) = (moments[i], moments[i + 1]);
            // The moment along the bay is a parabola, largest where the shear force is zero.
            var position = Math.Clamp(0.5 + right - left, 0, 1);
            moment = Math.Max(moment, Math.Max(Math.Abs(left), position * (1 - position) / 2 + left + (right - left) * position));
            deflection = Math.Max(deflection, MaxDeflection(left, right));
        }
        return new(deflection, moment);
    }

    /// <summary>Moments at the ribs over q·l², negative where the board is convex over a rib (hogging).</summary>
    private static double[] SupportMoments(int bays)
    {
        // M[i-1] + 4·M[i] + M[i+1] = -1/2 at each inner rib: forward elimination, back substitution.
        var (moments, factor, reducedLoad) = (new double[bays + 1], new double[bays + 1], new double[bays + 1]);
        for (var i = 1; i < bays; i++)
        {
            factor[i] = 1 / (4 - factor[i - 1]);
            reducedLoad[i] = (-0.5 - reducedLoad[i - 1]) * factor[i];
        }
        for (var i = bays - 1; i > 0; i--) moments[i] = reducedLoad[i] - factor[i] * moments[i + 1];
        return moments;
    }

    /// <summary>Largest deflection of a bay over q·l⁴/D, from the moments at its ends.</summary>
    private static double MaxDeflection(double left, double right)
    {
        double At(double x) =>
            x * (1 - x) / 24 * (1 + x * (1 - x)) + left * x * (1 - x) * (2 - x) / 6 + right * x * (1 - x) * (1 + x) / 6;
        var (low, high) = (0.0, 1.0);
        while (high - low > 1e-9)
        {
            var third = (high - low) / 3;
            if (At(low + third) < At(high - third)) low += third;
            else high -= third;
        }
        return At((low + high) / 2);
    }
}
