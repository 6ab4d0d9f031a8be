namespace BuckGen.Physics.Plates;

/// <summary>
/// A wide board on a square grid of square pads, such as feet: a flat slab. The span of the factors is the distance between pads.
/// </summary>
/// <remarks>
/// Each pad is taken to exert a uniform pressure. The deflection is that of the middle between four pads relative to the middle
/// of a pad. The largest moment is over the pad; it grows without limit as the pad gets smaller, like the stress of a plate on a
/// point. Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd edition, article 54 (flat slabs,
/// 0.00581·q·a⁴/D on points). Here it is the double cosine series of the periodic load, summed to within 0.02 % for pads of a
/// twentieth of the distance and more. Pads under the edge of a board and an overhang beyond them are not covered.
/// </remarks>
public static class PadPlate
{
    private const int Terms = 120;

    /// <summary>The factors of deflection and moment.</summary>
    /// <param name="padShare">Side of a pad over the distance between the centres of pads, 0.05 to 0.9.</param>
    /// <param name="poissonRatio">Poisson's ratio, 0 to 0.49.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static PlateFactors ForPads(double padShare, double poissonRatio = 0.3)
    {
        Bound.Check(padShare, 0.05, 0.9, "side of a pad over the distance between pads");
        Bound.Check(poissonRatio, 0, 0.49, "Poisson's ratio");
        var pad = Enumerable.Range(0, Terms + 1).Select(m => Sinc(m * padShare)).ToArray();
        var (deflection, overPad, between) = (0.0, 0.0, 0.0);
        for (var m = 0; m <= Terms; m++)
        {
            for (var n = 0; n <= Terms; n++)
            {
                if (m == 0 && n == 0) continue;
                var load = pad[m] * pad[n] * (m == 0 ? 1 : 2) * (n == 0 ? 1 : 2);
                double square = m * m + n * n;
                var wave = 4 * Math.PI * Math.PI * square;
                var sign = (m + n) % 2 == 0 ? 1 : -1;
                deflection += load * (1 - sign) / (wave * wave);
                // By symmetry the two moments are equal there, so half their sum is used for each.
                var moment = load * (1 + poissonRatio) / 2 / wave;
                overPad += moment;
                between -= sign * moment;
            }
        }
        return new(deflection, Math.Max(overPad, between));
    }

    /// <summary>sin(πx)/(πx).</summary>
    private static double Sinc(double x) => x == 0 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x);
}
