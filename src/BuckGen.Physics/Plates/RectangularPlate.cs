namespace BuckGen.Physics.Plates;

/// <summary>A rectangular plate supported along all four edges. The span of the factors is the shorter side.</summary>
/// <remarks>
/// Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition, articles 30 and 44. The series are
/// summed here, not read from the tables; they agree with those tables, and with Roark's, to the last figure but one.
/// </remarks>
public static class RectangularPlate
{
    /// <summary>Largest aspect ratio; from about 5 on the plate behaves like a strip.</summary>
    public const double MaxRatio = 20;

    private const int Terms = 41;

    /// <summary>
    /// Simply supported edges, corners held down: the largest moment is in the middle, across the shorter side.
    /// </summary>
    /// <param name="ratio">Aspect ratio: longer side over shorter side, 1 to <see cref="MaxRatio"/>.</param>
    /// <param name="poissonRatio">Poisson's ratio, 0 to 0.49.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static PlateFactors SimplySupported(double ratio, double poissonRatio = 0.3)
    {
        Bound.Check(ratio, 1, MaxRatio, "ratio of the sides");
        Bound.Check(poissonRatio, 0, 0.49, "Poisson's ratio");
        var (deflection, moment) = (5.0 / 384, 1.0 / 8);
        for (var m = 1; m <= Terms; m += 2)
        {
            var alpha = m * Math.PI * ratio / 2;
            var b = 2 / (Math.Pow(Math.PI * m, 5) * Math.Cosh(alpha));
            var a = -b * (alpha * Math.Tanh(alpha) + 2);
            deflection += Sign(m) * a;
            moment += Sign(m) * Math.PI * Math.PI * m * m * ((1 - poissonRatio) * a - 2 * poissonRatio * b);
        }
        return new(deflection, moment);
    }

    /// <summary>Clamped edges: the largest moment is at the middle of the longer edges.</summary>
    /// <param name="ratio">Aspect ratio: longer side over shorter side, 1 to <see cref="MaxRatio"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static PlateFactors Clamped(double ratio)
    {
        Bound.Check(ratio, 1, MaxRatio, "ratio of the sides");
        var (alongShort, alongLong) = EdgeMoments(ratio);
        var deflection = SimplySupported(ratio).Deflection;
        var edge = 0.0;
        for (var i = 0; i < alongShort.Length; i++)
        {
            var m = 2 * i + 1;
            deflection += Sign(m) * (EdgeMomentDeflection(alongShort[i], m, ratio)
                + ratio * ratio * EdgeMomentDeflection(alongLong[i], m, 1 / ratio));
            edge -= Sign(m) * alongLong[i];
        }
        return new(deflection, edge);
    }

    /// <summary>
    /// Deflection in the middle by one term of the moments along a pair of edges, over the square of the length of the edge.
    /// </summary>
    private static double EdgeMomentDeflection(double moment, int m, double otherSide)
    {
        var alpha = m * Math.PI * otherSide / 2;
        return moment * alpha * Math.Tanh(alpha) / (2 * Math.PI * Math.PI * m * m * Math.Cosh(alpha));
    }

    /// <summary>
    /// The series of the moments along the shorter and the longer edges that make the rotation of a simply supported plate there
    /// zero (article 44). The two pairs are iterated until they converge.
    /// </summary>
    private static (double[] AlongShort, double[] AlongLong) EdgeMoments(double ratio)
    {
        const int count = (Terms + 1) / 2;
        var (alongShort, alongLong) = (new double[count], new double[count]);
        for (var iteration = 0; iteration < 60; iteration++)
        {
            for (var i = 0; i < count; i++) alongShort[i] = EdgeMomentTerm(i, ratio, 1, alongLong);
            for (var i = 0; i < count; i++) alongLong[i] = EdgeMomentTerm(i, 1 / ratio, ratio, alongShort);
        }
        return (alongShort, alongLong);
    }

    /// <summary>
    /// One term of the moments along an edge that make its rotation zero, for given moments along the other pair of edges.
    /// </summary>
    /// <param name="index">Index of the term.</param>
    /// <param name="otherSide">The other side over this edge.</param>
    /// <param name="edge">This edge over the shorter side.</param>
    /// <param name="others">The moments along the other pair.</param>
    private static double EdgeMomentTerm(int index, double otherSide, double edge, double[] others)
    {
        var i = 2 * index + 1;
        var alpha = i * Math.PI * otherSide / 2;
        var (tanh, cosh) = (Math.Tanh(alpha), Math.Cosh(alpha));
        var load = 4 * edge * edge / Math.Pow(Math.PI, 3) / Math.Pow(i, 4) * (alpha / cosh / cosh - tanh);
        var sum = 0.0;
        for (var k = 0; k < others.Length; k++)
        {
            double m = 2 * k + 1;
            sum += others[k] / (m * m * m) / Math.Pow(1 / (otherSide * otherSide) + i * i / (m * m), 2);
        }
        return i * (load - 8 * i / (Math.PI * otherSide) * sum) / (tanh + alpha / cosh / cosh);
    }

    private static int Sign(int odd) => odd % 4 == 1 ? 1 : -1;
}
