namespace BuckGen.Physics.Membranes;

/// <summary>Fictitious masses with which a step of length 1 is stable.</summary>
/// <remarks>
/// The explicit motion is stable while no eigenvalue of the stiffness over the mass exceeds 4. The stiffness of a triangle is at most
/// k times the identity, with k its largest eigenvalue; so a quarter of the sum of k round a node, with something to spare, will do.
/// Of the energy in <see cref="ElementForces"/>, with s = Σl²/(4·A0²) over the sides now and s0 over those before forming, the second
/// derivatives of I are at most 2·s0; those of a² = J are at most 4·s, because the gradient of the stretch of area a has the square s and its second
/// derivatives are at most s/a; those of 1/J at most 8·s/a⁴; and those of I/J at most the sum of the parts by the product rule.
/// A wrinkled triangle is no stiffer than one just about to wrinkle.
/// </remarks>
internal static class StiffnessBound
{
    /// <summary>How much heavier than needed, for what the bound does not see until it is drawn up again.</summary>
    private const double Spare = 1.2;

    /// <summary>Sets the masses and what a held node yields.</summary>
    /// <param name="elements">The triangles.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="material">What the sheet is made of.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    /// <param name="gasStiffness">Rise of the pressure with each cubic millimetre that is lost, MPa/mm³.</param>
    public static void SetMasses(MembraneElements elements, MembraneNodes nodes, Hyperelastic material, double pressure, double gasStiffness)
    {
        Array.Clear(nodes.Mass);
        var (x, y, z) = (nodes.X, nodes.Y, nodes.Z);
        double Square(int i, int j) => (x[i] - x[j]) * (x[i] - x[j]) + (y[i] - y[j]) * (y[i] - y[j]) + (z[i] - z[j]) * (z[i] - z[j]);
        var wholeArea = 0.0;
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            wholeArea += AreaOf(Square(a, b), Square(a, c), Square(b, c));
        }
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var (ab, ac, bc) = (Square(a, b), Square(a, c), Square(b, c));
            var (sides, area) = (ab + ac + bc, AreaOf(ab, ac, bc));
            var inverse = elements.InverseSquare[e];
            var g12 = (ab + ac - bc) / 2;
            var sum = elements.Metric11[e] * ab + 2 * elements.Metric12[e] * g12 + elements.Metric22[e] * ac;
            // The three heights before forming are the sides over twice the area.
            var before = 2 * (elements.Metric11[e] + elements.Metric22[e] + elements.Metric12[e]);
            var k = elements.Volume[e] * Largest(sum, 4 * area * area * inverse, sides * inverse, before, material)
                + pressure * Math.Sqrt(3 * sides) / 6 + gasStiffness * wholeArea * area / 3;
            var share = Spare * k / 4;
            nodes.Mass[a] += share;
            nodes.Mass[b] += share;
            nodes.Mass[c] += share;
        }
    }

    /// <summary>Bound of the second derivatives of the energy of a unit of volume, MPa/mm².</summary>
    private static double Largest(double sum, double product, double now, double before, Hyperelastic material)
    {
        var larger = (sum + Math.Sqrt(Math.Max(sum * sum - 4 * product, 0))) / 2;
        // Stretch of area, but no less than that of a strip drawn lengthwise.
        var square = Math.Max(product, Math.Sqrt(Math.Max(larger, 1)));
        var fourth = square * square;
        var neoHookean = 2 * before + 8 * now / fourth;
        if (material.C2 == 0) return material.C1 * neoHookean;
        var mooney = 4 * now + 2 * before / square + 8 * Math.Sqrt(before * sum * now / (fourth * square)) + 8 * sum * now / fourth;
        return material.C1 * neoHookean + material.C2 * mooney;
    }

    private static double AreaOf(double ab, double ac, double bc)
    {
        var dot = (ab + ac - bc) / 2;
        return Math.Sqrt(Math.Max(ab * ac - dot * dot, 0)) / 2;
    }
}
