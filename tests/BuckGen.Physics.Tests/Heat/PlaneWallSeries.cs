namespace BuckGen.Physics.Tests.Heat;

/// <summary>
/// Fourier's series for a plane wall cooled alike at both faces (Carslaw and Jaeger, Conduction of Heat in Solids, 2nd edition,
/// section 3.11, from memory), its roots found here by halving.
/// </summary>
internal static class PlaneWallSeries
{
    /// <summary>The n-th root of ζ·tan ζ = Bi, n from 0.</summary>
    public static double Root(double biot, int n)
    {
        var (low, high) = (n * Math.PI, (n + 0.5) * Math.PI);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (middle * Math.Sin(middle) < biot * Math.Cos(middle) == (n % 2 == 0)) low = middle;
            else high = middle;
        }
        return low;
    }

    /// <summary>The n-th coefficient.</summary>
    public static double Coefficient(double root) => 4 * Math.Sin(root) / (2 * root + Math.Sin(2 * root));

    /// <summary>Temperature above the air's over that at the start.</summary>
    /// <param name="biot">h·l/k with half the thickness l.</param>
    /// <param name="fourier">α·t/l².</param>
    /// <param name="place">0 in the middle, 1 at a face.</param>
    public static double Temperature(double biot, double fourier, double place) =>
        Sum(biot, fourier, root => Math.Cos(root * place));

    /// <summary>The mean over the thickness.</summary>
    public static double Mean(double biot, double fourier) => Sum(biot, fourier, root => Math.Sin(root) / root);

    private static double Sum(double biot, double fourier, Func<double, double> shape) => Enumerable.Range(0, 200)
        .Select(n => Root(biot, n)).Sum(root => Coefficient(root) * Math.Exp(-root * root * fourier) * shape(root));
}
