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
    /// <param name="workers">Who works.</param>
    public static double Assemble(MembraneElements elements, MembraneNodes nodes, HyperelasticMaterial material, double pressure, ForkJoin workers)
    {
        nodes.InterleavePositions();
        // Where the halves begin hangs on the number of triangles alone, so the sums are the same on any machine.
        var half = elements.Count < ForkJoin.MinTriangles ? MembraneNodes.PaddedCount(elements.Count) : MembraneNodes.PaddedCount(elements.Count / 2);
        var (first, second) = (default(PartialSum), default(PartialSum));
        workers.Run(
            () => first = AddElements(elements, nodes.InterleavedPositions, nodes.InterleavedForces, 0, Math.Min(half, elements.Count), material, pressure),
            half >= elements.Count ? null : () => second = AddElements(elements, nodes.InterleavedPositions, nodes.SecondInterleavedForces, half, elements.Count, material, pressure));
        nodes.DeinterleaveForces(half < elements.Count);
        elements.MaxAreaStretch = Math.Sqrt(Math.Max(first.MaxAreaStretchSquared, second.MaxAreaStretchSquared));
        return -(first.SixVolumes + second.SixVolumes) / 6;
    }

    // Called too seldom to be worth warming up: a whole run is over in a few thousand calls.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static PartialSum AddElements(
        MembraneElements elements, double[] positions, double[] forces, int from, int to, HyperelasticMaterial material, double pressure)
    {
        Array.Clear(forces);
        var (sixVolumes, maxAreaStretchSquared) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var (c1, c2, sixthOfPressure) = (Vector256.Create(material.C1), Vector256.Create(material.C2), Vector256.Create(pressure / 6));
        ref var position = ref positions[0];
        ref var force = ref forces[0];
        for (var e = from; e < to; e += 4)
        {
            var a = elements.A.AsSpan(e, 4);
            var b = elements.B.AsSpan(e, 4);
            var c = elements.C.AsSpan(e, 4);
            var (a0, a1, a2, a3) = (VectorAt(ref position, a[0]), VectorAt(ref position, a[1]), VectorAt(ref position, a[2]), VectorAt(ref position, a[3]));
            var (b0, b1, b2, b3) = (VectorAt(ref position, b[0]), VectorAt(ref position, b[1]), VectorAt(ref position, b[2]), VectorAt(ref position, b[3]));
            var (d0, d1, d2, d3) = (VectorAt(ref position, c[0]), VectorAt(ref position, c[1]), VectorAt(ref position, c[2]), VectorAt(ref position, c[3]));
            var (px, py, pz) = LaneTranspose.ToLanes(b0 - a0, b1 - a1, b2 - a2, b3 - a3);
            var (qx, qy, qz) = LaneTranspose.ToLanes(d0 - a0, d1 - a1, d2 - a2, d3 - a3);
            var (_, _, sumZ) = LaneTranspose.ToLanes(a0 + b0 + d0, a1 + b1 + d1, a2 + b2 + d2, a3 + b3 + d3);
            var (nx, ny, nz) = (py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx);
            sixVolumes += nz * sumZ;

            var (g11, g12, g22) = (px * px + py * py + pz * pz, px * qx + py * qy + pz * qz, qx * qx + qy * qy + qz * qz);
            var (m11, m12, m22) = (LanesAt(elements.InverseMetric11, e), LanesAt(elements.InverseMetric12, e), LanesAt(elements.InverseMetric22, e));
            var detM = LanesAt(elements.InverseMetricDeterminant, e);
            var detC = (g11 * g22 - g12 * g12) * detM;
            maxAreaStretchSquared = Vector256.Max(maxAreaStretchSquared, detC);
            var (factorM, factorAdjC) = Stress(m11 * g11 + m12 * (g12 + g12) + m22 * g22, detC, c1, c2);
            var volume = LanesAt(elements.Volume, e);
            factorM *= volume;
            factorAdjC *= volume * detM;
            var (s11, s12, s22) = (factorM * m11 + factorAdjC * g22, factorM * m12 - factorAdjC * g12, factorM * m22 + factorAdjC * g11);
            var (r1, r2) = (s11 + s12, s12 + s22);

            var (wx, wy, wz) = (sixthOfPressure * nx, sixthOfPressure * ny, sixthOfPressure * nz);
            var count = Math.Min(4, to - e);
            Scatter(ref force, a, count, r1 * px + r2 * qx - wx, r1 * py + r2 * qy - wy, r1 * pz + r2 * qz - wz);
            Scatter(ref force, b, count, -(s11 * px + s12 * qx) - wx, -(s11 * py + s12 * qy) - wy, -(s11 * pz + s12 * qz) - wz);
            Scatter(ref force, c, count, -(s12 * px + s22 * qx) - wx, -(s12 * py + s22 * qy) - wy, -(s12 * pz + s22 * qz) - wz);
        }
        return new(Vector256.Sum(sixVolumes), Math.Max(Math.Max(maxAreaStretchSquared[0], maxAreaStretchSquared[1]), Math.Max(maxAreaStretchSquared[2], maxAreaStretchSquared[3])));
    }

    /// <summary>Twice the stress S of the remarks, by its parts along M and along det M·adj g.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double> FactorM, Vector256<double> FactorAdjC) Stress(
        Vector256<double> traceC, Vector256<double> detC, Vector256<double> c1, Vector256<double> c2)
    {
        var (one, two) = (Vector256<double>.One, Vector256.Create(2.0));
        var maxEigenvalue = (traceC + Vector256.Sqrt(Vector256.Max(traceC * traceC - (two + two) * detC, Vector256<double>.Zero))) / two;
        // The smaller, product over larger, times the product below one.
        var wrinkled = Vector256.LessThan(detC * detC, maxEigenvalue);

        var inverseDetC = one / detC;
        var (tautM, tautAdj) = (two * (c1 + c2 * inverseDetC), two * (c2 - (c1 + c2 * traceC) * inverseDetC * inverseDetC));
        if (wrinkled == Vector256<double>.Zero) return (tautM, tautAdj);

        var maxStretch = Vector256.Sqrt(maxEigenvalue);
        var uniaxial = two * (c1 + c2 / maxStretch) * Vector256.Max(one - one / (maxEigenvalue * maxStretch), Vector256<double>.Zero)
            / Vector256.Max(maxEigenvalue - detC / maxEigenvalue, Vector256.Create(1e-12));
        return (Vector256.ConditionalSelect(wrinkled, uniaxial * maxEigenvalue, tautM), Vector256.ConditionalSelect(wrinkled, -uniaxial, tautAdj));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Scatter(ref double force, ReadOnlySpan<int> nodes, int count, Vector256<double> x, Vector256<double> y, Vector256<double> z)
    {
        var (first, second, third, fourth) = LaneTranspose.ToPoints(x, y, z);
        // What fills up the last four is no triangle.
        Scatter(ref force, nodes[0], first);
        if (count > 1) Scatter(ref force, nodes[1], second);
        if (count > 2) Scatter(ref force, nodes[2], third);
        if (count > 3) Scatter(ref force, nodes[3], fourth);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Scatter(ref double force, int node, Vector256<double> increment) =>
        (VectorAt(ref force, node) + increment).StoreUnsafe(ref Unsafe.Add(ref force, 4 * node));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> VectorAt(ref double array, int node) => Vector256.LoadUnsafe(ref Unsafe.Add(ref array, 4 * node));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> LanesAt(double[] array, int first) => Vector256.Create(array.AsSpan(first, 4));

    /// <summary>
    /// What a share of the triangles gives beside forces: six times the volume of gas and the largest square of stretch of area.
    /// </summary>
    private readonly record struct PartialSum(double SixVolumes, double MaxAreaStretchSquared);
}
