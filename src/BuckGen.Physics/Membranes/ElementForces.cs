using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace BuckGen.Physics.Membranes;

/// <summary>Forces of the stretched sheet and of the gas on the nodes.</summary>
/// <remarks>
/// <para>
/// In a triangle of even strain let g be the metric of its two sides from the first node and M the inverse of the same metric
/// before forming. Then I = M:g is the sum of the squared stretches and J = det g · det M the square of the stretch of area, and
/// since the thickness is t0/√J, I1 = I + 1/J and I2 = J + I/J. Half the derivative of C1·I1 + C2·I2 with respect to g is S = (C1
/// + C2/J)·M + (C2 - (C1 + C2·I)/J²)·det M·adj g, and the sides pull with 2·S.
/// </para>
/// <para>
/// A sheet so thin bears no compression: it wrinkles. Once the smaller stretch l2 falls below what the larger one, l1, draws it
/// in to, 1/√l1, the energy is that of a strip drawn lengthwise only (the relaxed energy of A. C. Pipkin, IMA J. Appl. Math. 36
/// (1986) 85, from memory), C1·(l1² + 2/l1) + C2·(2·l1 + 1/l1²): a stress along l1 that is again a combination of M and adj g.
/// </para>
/// </remarks>
internal static class ElementForces
{
    /// <summary>Sets the forces on the nodes, N, and returns the volume of gas between z = 0 and the triangles, mm³.</summary>
    /// <param name="elements">The triangles.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="material">What the sheet is made of.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    /// <param name="hands">Who works.</param>
    public static double Set(MembraneElements elements, MembraneNodes nodes, Hyperelastic material, double pressure, TwoHands hands)
    {
        nodes.Line();
        // Where the halves begin hangs on the number of triangles alone, so the sums are the same on any machine.
        var half = elements.Count < TwoHands.Worthwhile ? MembraneNodes.Padded(elements.Count) : MembraneNodes.Padded(elements.Count / 2);
        var (first, second) = (default(Part), default(Part));
        hands.Do(
            () => first = Add(elements, nodes.Lined, nodes.Pull, 0, Math.Min(half, elements.Count), material, pressure),
            half >= elements.Count ? null : () => second = Add(elements, nodes.Lined, nodes.PullToo, half, elements.Count, material, pressure));
        nodes.GatherForces(half < elements.Count);
        elements.LargestStretch = Math.Sqrt(Math.Max(first.Largest, second.Largest));
        return -(first.Gas + second.Gas) / 6;
    }

    // Called too seldom to be worth warming up: a whole run is over in a few thousand calls.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static Part Add(
        MembraneElements elements, double[] places, double[] forces, int from, int to, Hyperelastic material, double pressure)
    {
        Array.Clear(forces);
        var (gas, largest) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var (c1, c2, load) = (Vector256.Create(material.C1), Vector256.Create(material.C2), Vector256.Create(pressure / 6));
        ref var place = ref places[0];
        ref var force = ref forces[0];
        for (var e = from; e < to; e += 4)
        {
            var a = elements.A.AsSpan(e, 4);
            var b = elements.B.AsSpan(e, 4);
            var c = elements.C.AsSpan(e, 4);
            var (a0, a1, a2, a3) = (At(ref place, a[0]), At(ref place, a[1]), At(ref place, a[2]), At(ref place, a[3]));
            var (b0, b1, b2, b3) = (At(ref place, b[0]), At(ref place, b[1]), At(ref place, b[2]), At(ref place, b[3]));
            var (d0, d1, d2, d3) = (At(ref place, c[0]), At(ref place, c[1]), At(ref place, c[2]), At(ref place, c[3]));
            var (px, py, pz) = Quads.Lanes(b0 - a0, b1 - a1, b2 - a2, b3 - a3);
            var (qx, qy, qz) = Quads.Lanes(d0 - a0, d1 - a1, d2 - a2, d3 - a3);
            var (_, _, heights) = Quads.Lanes(a0 + b0 + d0, a1 + b1 + d1, a2 + b2 + d2, a3 + b3 + d3);
            var (nx, ny, nz) = (py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx);
            gas += nz * heights;

            var (g11, g12, g22) = (px * px + py * py + pz * pz, px * qx + py * qy + pz * qz, qx * qx + qy * qy + qz * qz);
            var (m11, m12, m22) = (Lane(elements.Metric11, e), Lane(elements.Metric12, e), Lane(elements.Metric22, e));
            var inverse = Lane(elements.InverseSquare, e);
            var square = (g11 * g22 - g12 * g12) * inverse;
            largest = Vector256.Max(largest, square);
            var (alongM, alongAdj) = Stress(m11 * g11 + m12 * (g12 + g12) + m22 * g22, square, c1, c2);
            var volume = Lane(elements.Volume, e);
            alongM *= volume;
            alongAdj *= volume * inverse;
            var (s11, s12, s22) = (alongM * m11 + alongAdj * g22, alongM * m12 - alongAdj * g12, alongM * m22 + alongAdj * g11);
            var (r1, r2) = (s11 + s12, s12 + s22);

            var (wx, wy, wz) = (load * nx, load * ny, load * nz);
            var count = Math.Min(4, to - e);
            Pull(ref force, a, count, r1 * px + r2 * qx - wx, r1 * py + r2 * qy - wy, r1 * pz + r2 * qz - wz);
            Pull(ref force, b, count, -(s11 * px + s12 * qx) - wx, -(s11 * py + s12 * qy) - wy, -(s11 * pz + s12 * qz) - wz);
            Pull(ref force, c, count, -(s12 * px + s22 * qx) - wx, -(s12 * py + s22 * qy) - wy, -(s12 * pz + s22 * qz) - wz);
        }
        return new(Vector256.Sum(gas), Math.Max(Math.Max(largest[0], largest[1]), Math.Max(largest[2], largest[3])));
    }

    /// <summary>Twice the stress S of the remarks, by its parts along M and along det M·adj g.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double> AlongM, Vector256<double> AlongAdj) Stress(
        Vector256<double> sum, Vector256<double> product, Vector256<double> c1, Vector256<double> c2)
    {
        var (one, two) = (Vector256<double>.One, Vector256.Create(2.0));
        var larger = (sum + Vector256.Sqrt(Vector256.Max(sum * sum - (two + two) * product, Vector256<double>.Zero))) / two;
        // The smaller, product over larger, times the product below one.
        var wrinkled = Vector256.LessThan(product * product, larger);

        var share = one / product;
        var (tautM, tautAdj) = (two * (c1 + c2 * share), two * (c2 - (c1 + c2 * sum) * share * share));
        if (wrinkled == Vector256<double>.Zero) return (tautM, tautAdj);

        var stretch = Vector256.Sqrt(larger);
        var drawn = two * (c1 + c2 / stretch) * Vector256.Max(one - one / (larger * stretch), Vector256<double>.Zero)
            / Vector256.Max(larger - product / larger, Vector256.Create(1e-12));
        return (Vector256.ConditionalSelect(wrinkled, drawn * larger, tautM), Vector256.ConditionalSelect(wrinkled, -drawn, tautAdj));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Pull(ref double force, ReadOnlySpan<int> nodes, int count, Vector256<double> x, Vector256<double> y, Vector256<double> z)
    {
        var (first, second, third, fourth) = Quads.Places(x, y, z);
        // What fills up the last four is no triangle.
        Pull(ref force, nodes[0], first);
        if (count > 1) Pull(ref force, nodes[1], second);
        if (count > 2) Pull(ref force, nodes[2], third);
        if (count > 3) Pull(ref force, nodes[3], fourth);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Pull(ref double force, int node, Vector256<double> by) =>
        (At(ref force, node) + by).StoreUnsafe(ref Unsafe.Add(ref force, 4 * node));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> At(ref double list, int node) => Vector256.LoadUnsafe(ref Unsafe.Add(ref list, 4 * node));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Lane(double[] list, int first) => Vector256.Create(list.AsSpan(first, 4));

    /// <summary>
    /// What a share of the triangles gives beside forces: six times the volume of gas and the largest square of stretch of area.
    /// </summary>
    private readonly record struct Part(double Gas, double Largest);
}
