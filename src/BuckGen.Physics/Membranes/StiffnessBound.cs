namespace BuckGen.Physics.Membranes;

/// <summary>Fictitious masses with which a step of length 1 is stable.</summary>
/// <remarks>
/// <para>
/// The explicit motion is stable while no eigenvalue of the stiffness over the mass exceeds 4. The stiffness of a triangle is at
/// most k times the identity, with k its largest eigenvalue; so a quarter of the sum of k round a node, with something to spare,
/// will do.
/// </para>
/// <para>
/// Of the energy in <see cref="ElementForces"/>, with s = Σl²/(4·A0²) over the sides now and s0 the same before forming, the
/// second derivatives of I are at most twice the larger root of x² - s0·x + 3/(4·A0²) = 0; the gradient of the stretch of area a
/// has the square s, its second derivatives are at most s/a across the sheet and √3/(2·A0) within it; with those of a² and 1/a²
/// and the product rule for I/J that is enough. A wrinkled triangle is no stiffer than one just about to wrinkle.
/// </para>
/// <para>
/// That is the stiffness against what stretches the sheet. While it lies nearly flat, a node moves up and down against its
/// tension only, which is small at first, and may be lighter that way: if n is tilted by the sine s, the part of a motion (u, w)
/// within the sheet has a square of at most (1 + s)·u² + (s + s²)·w².
/// </para>
/// </remarks>
internal static class StiffnessBound
{
    /// <summary>How much heavier than needed, for what the bound does not see until it is drawn up again.</summary>
    private const double Spare = 1.15;

    /// <summary>How much more a triangle may tilt, as a sine, until then.</summary>
    private const double TiltSpare = 0.1;

    /// <summary>Sets the masses.</summary>
    /// <param name="elements">The triangles.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="material">What the sheet is made of.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    /// <param name="gasStiffness">Rise of the pressure with each cubic millimetre that is lost, MPa/mm³.</param>
    public static void SetMasses(MembraneElements elements, MembraneNodes nodes, Hyperelastic material, double pressure, double gasStiffness)
    {
        Array.Clear(nodes.Mass);
        Array.Clear(nodes.MassUp);
        var wholeArea = 0.0;
        for (var e = 0; e < elements.Count; e++) wholeArea += nodes.Normal(elements.A[e], elements.B[e], elements.C[e]).Length / 2;
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var (ab, ac, bc) = (nodes.Square(a, b), nodes.Square(a, c), nodes.Square(b, c));
            var normal = nodes.Normal(a, b, c);
            var twice = normal.Length;
            var (m11, m12, m22, inverse) = (elements.Metric11[e], elements.Metric12[e], elements.Metric22[e], elements.InverseSquare[e]);
            var shape = new Shape(
                m11 * ab + m12 * (ab + ac - bc) + m22 * ac, twice * twice * inverse, (ab + ac + bc) * inverse, 2 * (m11 + m22 + m12), inverse);
            var (stretching, tension) = Largest(shape, material);
            var gas = pressure * Math.Sqrt(3 * (ab + ac + bc)) / 6 + gasStiffness * wholeArea * twice / 6;
            stretching *= elements.Volume[e];
            tension *= elements.Volume[e];
            var tilt = TiltSpare + (twice > 0 ? Math.Sqrt(Math.Max(0, 1 - normal.Z * normal.Z / (twice * twice))) : 1);
            var isFlat = tilt * (1 + tilt) * stretching + tension < stretching;
            var along = Spare / 4 * ((isFlat ? stretching * (1 + tilt) + tension : stretching) + gas);
            var up = Spare / 4 * ((isFlat ? stretching * tilt * (1 + tilt) + tension : stretching) + gas);
            nodes.Mass[a] += along;
            nodes.Mass[b] += along;
            nodes.Mass[c] += along;
            nodes.MassUp[a] += up;
            nodes.MassUp[b] += up;
            nodes.MassUp[c] += up;
        }
    }

    /// <summary>
    /// Bounds of the second derivatives of the energy of a unit of volume, MPa/mm²: of all of it, and of its tension alone.
    /// </summary>
    private static (double Stretching, double Tension) Largest(Shape shape, Hyperelastic material)
    {
        var (sum, product, now, before, inverse) = shape;
        var (c1, c2) = (material.C1, material.C2);
        var larger = (sum + Math.Sqrt(Math.Max(sum * sum - 4 * product, 0))) / 2;
        // Square of the stretch of area, but no less than that of a strip drawn lengthwise.
        var square = Math.Max(product, Math.Sqrt(Math.Max(larger, 1)));
        var fourth = square * square;
        var linear = before + Math.Sqrt(Math.Max(before * before - 12 * inverse, 0));
        var bend = Math.Sqrt(3 * inverse);
        var thinning = 6 * now / fourth + 2 * bend / (square * Math.Sqrt(square));
        var stretching = c1 * (linear + thinning);
        if (c2 > 0) stretching += c2 * (4 * now + linear / square + 8 * Math.Sqrt(before * sum * now / (fourth * square)) + 8 * sum * now / fourth);

        var smaller = square / larger;
        var tension = 2 * (c1 + c2 / square + (c2 - (c1 + c2 * (larger + smaller)) / fourth) * smaller);
        return (stretching, Math.Max(0, tension) * before);
    }

    /// <summary>The invariants I and J, s, s0, and one over the square of twice the area before forming.</summary>
    private readonly record struct Shape(double Sum, double Product, double Now, double Before, double Inverse);
}
