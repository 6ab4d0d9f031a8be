using System.Numerics;

namespace BuckGen.Physics.Membranes;

/// <summary>Forces of the stretched sheet and of the gas on the nodes.</summary>
/// <remarks>
/// <para>
/// In a triangle of even strain let g be the metric of its two sides from the first node and M the inverse of the same metric before
/// forming. Then I = M:g is the sum of the squared stretches and J = det g · det M the square of the stretch of area, and since the
/// thickness is t0/√J, I1 = I + 1/J and I2 = J + I/J. Half the derivative of C1·I1 + C2·I2 with respect to g is
/// S = (C1 + C2/J)·M + (C2 - (C1 + C2·I)/J²)·det M·adj g, and the sides pull with 2·S.
/// </para>
/// <para>
/// A sheet so thin bears no compression: it wrinkles. Once the smaller stretch l2 falls below what the larger one, l1, draws it in to,
/// 1/√l1, the energy is that of a strip drawn lengthwise only (the relaxed energy of A. C. Pipkin, IMA J. Appl. Math. 36 (1986) 85, from
/// memory), C1·(l1² + 2/l1) + C2·(2·l1 + 1/l1²): a stress along l1 that is again a combination of M and adj g.
/// </para>
/// </remarks>
internal static class ElementForces
{
    /// <summary>Adds the forces to those of the nodes, N, and returns the volume of gas between z = 0 and the triangles, mm³.</summary>
    /// <param name="elements">The triangles.</param>
    /// <param name="nodes">The nodes; their forces are added to.</param>
    /// <param name="material">What the sheet is made of.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    public static double Add(MembraneElements elements, MembraneNodes nodes, Hyperelastic material, double pressure)
    {
        var width = Vector<double>.Count;
        Span<double> lanes = stackalloc double[9 * width];
        var (gas, largest) = (Vector<double>.Zero, Vector<double>.Zero);
        var (c1, c2) = (new Vector<double>(material.C1), new Vector<double>(material.C2));
        var load = new Vector<double>(pressure / 6);
        for (var e = 0; e < elements.Count; e += width)
        {
            elements.Gather(e, nodes, lanes);
            var (px, py, pz) = (Lane(lanes, 0), Lane(lanes, 1), Lane(lanes, 2));
            var (qx, qy, qz) = (Lane(lanes, 3), Lane(lanes, 4), Lane(lanes, 5));
            var (nx, ny, nz) = (py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx);
            gas += nz * Lane(lanes, 6);

            var (g11, g12, g22) = (px * px + py * py + pz * pz, px * qx + py * qy + pz * qz, qx * qx + qy * qy + qz * qz);
            var (m11, m12, m22) = (new Vector<double>(elements.Metric11, e), new Vector<double>(elements.Metric12, e), new Vector<double>(elements.Metric22, e));
            var inverse = new Vector<double>(elements.InverseSquare, e);
            var square = (g11 * g22 - g12 * g12) * inverse;
            largest = Vector.Max(largest, square);
            var (alongM, alongAdj) = Stress(m11 * g11 + m12 * (g12 + g12) + m22 * g22, square, c1, c2);
            var volume = new Vector<double>(elements.Volume, e);
            alongM *= volume;
            alongAdj *= volume * inverse;
            var (s11, s12, s22) = (alongM * m11 + alongAdj * g22, alongM * m12 - alongAdj * g12, alongM * m22 + alongAdj * g11);

            var (wx, wy, wz) = (load * nx, load * ny, load * nz);
            Put(lanes, 3, -(s11 * px + s12 * qx) - wx);
            Put(lanes, 4, -(s11 * py + s12 * qy) - wy);
            Put(lanes, 5, -(s11 * pz + s12 * qz) - wz);
            Put(lanes, 6, -(s12 * px + s22 * qx) - wx);
            Put(lanes, 7, -(s12 * py + s22 * qy) - wy);
            Put(lanes, 8, -(s12 * pz + s22 * qz) - wz);
            var (rx, ry, rz) = (s11 + s12, s12 + s22, wx);
            Put(lanes, 0, rx * px + ry * qx - rz);
            Put(lanes, 1, rx * py + ry * qy - wy);
            Put(lanes, 2, rx * pz + ry * qz - wz);
            Scatter(elements, nodes, e, Math.Min(width, elements.Count - e), lanes);
        }
        elements.LargestStretch = 0;
        for (var lane = 0; lane < width; lane++) elements.LargestStretch = Math.Max(elements.LargestStretch, Math.Sqrt(largest[lane]));
        return -Vector.Sum(gas) / 6;
    }

    /// <summary>Twice the stress S of the remarks, by its parts along M and along det M·adj g.</summary>
    private static (Vector<double> AlongM, Vector<double> AlongAdj) Stress(
        Vector<double> sum, Vector<double> product, Vector<double> c1, Vector<double> c2)
    {
        var (one, two) = (Vector<double>.One, new Vector<double>(2));
        var larger = (sum + Vector.SquareRoot(Vector.Max(sum * sum - (two + two) * product, Vector<double>.Zero))) / two;
        var smaller = product / larger;
        var wrinkled = Vector.LessThan(product * smaller, one);

        var share = one / product;
        var (tautM, tautAdj) = (two * (c1 + c2 * share), two * (c2 - (c1 + c2 * sum) * share * share));

        var stretch = Vector.SquareRoot(larger);
        var drawn = two * (c1 + c2 / stretch) * Vector.Max(one - one / (larger * stretch), Vector<double>.Zero)
            / Vector.Max(larger - smaller, new Vector<double>(1e-12));
        return (Vector.ConditionalSelect(wrinkled, drawn * larger, tautM), Vector.ConditionalSelect(wrinkled, -drawn, tautAdj));
    }

    private static void Scatter(MembraneElements elements, MembraneNodes nodes, int first, int count, ReadOnlySpan<double> lanes)
    {
        var (fx, fy, fz) = (nodes.ForceX, nodes.ForceY, nodes.ForceZ);
        var width = Vector<double>.Count;
        for (var lane = 0; lane < count; lane++)
        {
            var (a, b, c) = (elements.A[first + lane], elements.B[first + lane], elements.C[first + lane]);
            fx[a] += lanes[lane];
            fy[a] += lanes[width + lane];
            fz[a] += lanes[2 * width + lane];
            fx[b] += lanes[3 * width + lane];
            fy[b] += lanes[4 * width + lane];
            fz[b] += lanes[5 * width + lane];
            fx[c] += lanes[6 * width + lane];
            fy[c] += lanes[7 * width + lane];
            fz[c] += lanes[8 * width + lane];
        }
    }

    private static Vector<double> Lane(ReadOnlySpan<double> lanes, int figure) => new(lanes[(figure * Vector<double>.Count)..]);

    private static void Put(Span<double> lanes, int figure, Vector<double> value) => value.CopyTo(lanes[(figure * Vector<double>.Count)..]);
}
