using BuckGen.Physics.Membranes;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>
/// A clamped disc blown up by an even pressure, by its ordinary differential equations: the judge of the triangles.
/// </summary>
/// <remarks>
/// Along the meridian: T1·κ1 + T2·κ2 = p with κ2 = sin φ/r, and d(T1·r)/dr = T2. The tensions follow from the stretches l1 and l2
/// = r/R. No length is given by the material, so one starts at the pole with its stretch, goes out until l2 = 1, and calls that
/// place the rim.
/// </remarks>
internal sealed record DiscInflation(double Height, double Pressure, double PoleThickness)
{
    /// <summary>The state of a given height over radius. The pressure is in units of μ·t0/a, the thickness of t0.</summary>
    public static DiscInflation AtHeight(double height, double mooneyRatio)
    {
        var (low, high) = (1.0001, 8.0);
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            if (FromPole(middle, mooneyRatio).Height < height) low = middle;
            else high = middle;
        }
        return FromPole(low, mooneyRatio);
    }

    private static DiscInflation FromPole(double stretch, double ratio)
    {
        var material = HyperelasticMaterial.MooneyRivlin(1, ratio);
        double Tension(double along, double across) => 2 / across
            * (along - Math.Pow(along, -3) / (across * across)) * (material.C1 + material.C2 * across * across);

        // y is r, z, φ, l1; the independent variable R, the pressure 1.
        double[] Slope(double radius, double[] y)
        {
            var (r, angle, along) = (y[0], y[2], y[3]);
            var across = r / radius;
            var (t1, t2) = (Tension(along, across), Tension(across, along));
            var (sin, cos) = Math.SinCos(angle);
            var turn = along * (1 - t2 * sin / r) / t1;
            var acrossSlope = (along * cos - across) / radius;
            const double d = 1e-6;
            var byAlong = (Tension(along + d, across) - Tension(along - d, across)) / (2 * d);
            var byAcross = (Tension(along, across + d) - Tension(along, across - d)) / (2 * d);
            return [along * cos, along * sin, turn, ((t2 - t1) * along * cos / r - byAcross * acrossSlope) / byAlong];
        }

        var step = 2 * Tension(stretch, stretch) / 1000;
        var radius = step / 10;
        var bend = 1 / (2 * Tension(stretch, stretch));
        double[] state = [stretch * radius, 0, bend * stretch * radius, stretch];
        while (true)
        {
            double[] Ahead(double share, double[] slope) => [.. state.Select((v, i) => v + share * step * slope[i])];
            var a = Slope(radius, state);
            var b = Slope(radius + step / 2, Ahead(0.5, a));
            var c = Slope(radius + step / 2, Ahead(0.5, b));
            var e = Slope(radius + step, Ahead(1, c));
            double[] next = [.. state.Select((v, i) => v + step / 6 * (a[i] + 2 * b[i] + 2 * c[i] + e[i]))];
            var (before, after) = (state[0] / radius - 1, next[0] / (radius + step) - 1);
            if (after <= 0)
            {
                var share = before / (before - after);
                var rim = radius + share * step;
                return new((state[1] + share * (next[1] - state[1])) / rim, rim, 1 / (stretch * stretch));
            }
            (state, radius) = (next, radius + step);
        }
    }
}
