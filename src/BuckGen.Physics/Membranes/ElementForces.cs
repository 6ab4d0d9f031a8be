using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace BuckGen.Physics.Membranes;

/// <summary>Nodal forces of the membrane elements and of the gas pressure.</summary>
/// <remarks>
/// <para>
/// Constant-strain triangles. Let g be the metric of the two edges from the first node after forming and M the inverse of the
/// metric before forming. Then I = M:g, the trace of the right Cauchy-Green tensor C of the surface, is the sum of the squared
/// principal stretches. J = det g · det M, its determinant, is the square of the area stretch. The material is incompressible, so
/// the thickness is t0/√J, I1 = I + 1/J and I2 = J + I/J. Half the derivative of C1·I1 + C2·I2 with respect to g is S = (C1 +
/// C2/J)·M + (C2 - (C1 + C2·I)/J²)·det M·adj g. The edges pull with 2·S.
/// </para>
/// <para>
/// A membrane bears no compression: it wrinkles (tension field theory). A strip in uniaxial tension has the smaller principal
/// stretch 1/√l1, with the larger one l1. Once that of the element falls below it, the energy is that of the strip, C1·(l1² +
/// 2/l1) + C2·(2·l1 + 1/l1²). This is the relaxed energy of A. C. Pipkin, IMA J. Appl. Math. 36 (1986) 85, from memory. Its
/// stress along l1 is again a combination of M and adj g.
/// </para>
/// </remarks>
internal static class ElementForces
{
    /// <summary>Assembles the nodal forces, N, and returns the volume of gas between z = 0 and the triangles, mm³.</summary>
    /// <param name="elements">The elements.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="material">Material of the sheet.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    /// <param name="workers">The two threads that share the elements.</param>
    public static double Assemble(
        MembraneElements elements, MembraneNodes nodes, HyperelasticMaterial material, double pressure, ForkJoin workers)
    {
        nodes.InterleavePositions();
        // The halves depend on the number of triangles alone, so the sums are the same on any machine.
        var half = MembraneNodes.PaddedCount(elements.Count < ForkJoin.MinTriangles ? elements.Count : elements.Count / 2);
        var end = Math.Min(half, elements.Count);
        var (first, second) = (default(PartialSum), default(PartialSum));
        void AddFirst() =>
            first = AddElements(elements, nodes.InterleavedPositions, nodes.InterleavedForces, 0, end, material, pressure);
        void AddSecond() => second = AddElements(
            elements, nodes.InterleavedPositions, nodes.SecondInterleavedForces, half, elements.Count, material, pressure);
        workers.Run(AddFirst, half >= elements.Count ? null : AddSecond);
        nodes.DeinterleaveForces(half < elements.Count);
        elements.MaxAreaStretch = Math.Sqrt(Math.Max(first.MaxAreaStretchSquared, second.MaxAreaStretchSquared));
        return -(first.SixVolumes + second.SixVolumes) / 6;
    }

    // Fully optimised at once: a whole run has only a few thousand calls, too few for tiered compilation.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static PartialSum AddElements(
        MembraneElements elements, double[] positions, double[] forces, int from, int to, HyperelasticMaterial material,
        double pressure)
    {
        Array.Clear(forces);
        var (sixVolumes, maxAreaStretchSquared) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var (c1, c2, sixthOfPressure) =
            (Vector256.Create(material.C1), Vector256.Create(material.C2), Vector256.Create(pressure / 6));
        ref var position = ref positions[0];
        ref var force = ref forces[0];
        for (var e = from; e < to; e += 4)
        {
            var a = elements.A.AsSpan(e, 4);
            var b = elements.B.AsSpan(e, 4);
            var c = elements.C.AsSpan(e, 4);
            var (a0, a1) = (VectorAt(ref position, a[0]), VectorAt(ref position, a[1]));
            var (a2, a3) = (VectorAt(ref position, a[2]), VectorAt(ref position, a[3]));
            var (b0, b1) = (VectorAt(ref position, b[0]), VectorAt(ref position, b[1]));
            var (b2, b3) = (VectorAt(ref position, b[2]), VectorAt(ref position, b[3]));
            var (d0, d1) = (VectorAt(ref position, c[0]), VectorAt(ref position, c[1]));
            var (d2, d3) = (VectorAt(ref position, c[2]), VectorAt(ref position, c[3]));
            var (px, py, pz) = LaneTranspose.ToLanes(b0 - a0, b1 - a1, b2 - a2, b3 - a3);
            var (qx, qy, qz) = LaneTranspose.ToLanes(d0 - a0, d1 - a1, d2 - a2, d3 - a3);
            var (_, _, sumZ) = LaneTranspose.ToLanes(a0 + b0 + d0, a1 + b1 + d1, a2 + b2 + d2, a3 + b3 + d3);
            var (nx, ny, nz) = (py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx);
            sixVolumes += nz * sumZ;

            var (g11, g12, g22) = (px * px + py * py + pz * pz, px * qx + py * qy + pz * qz, qx * qx + qy * qy + qz * qz);
            var (m11, m12) = (LanesAt(elements.InverseMetric11, e), LanesAt(elements.InverseMetric12, e));
            var m22 = LanesAt(elements.InverseMetric22, e);
            var detM = LanesAt(elements.InverseMetricDeterminant, e);
            var detC = (g11 * g22 - g12 * g12) * detM;
            maxAreaStretchSquared = Vector256.Max(maxAreaStretchSquared, detC);
            var (factorM, factorAdjC) = Stress(m11 * g11 + m12 * (g12 + g12) + m22 * g22, detC, c1, c2);
            var volume = LanesAt(elements.WeightedVolume, e);
            factorM *= volume;
            factorAdjC *= volume * detM;
            var (s11, s12, s22) =
                (factorM * m11 + factorAdjC * g22, factorM * m12 - factorAdjC * g12, factorM * m22 + factorAdjC * g11);
            var (r1, r2) = (s11 + s12, s12 + s22);

            var (wx, wy, wz) = (sixthOfPressure * nx, sixthOfPressure * ny, sixthOfPressure * nz);
            var count = Math.Min(4, to - e);
            Scatter(ref force, a, count, r1 * px + r2 * qx - wx, r1 * py + r2 * qy - wy, r1 * pz + r2 * qz - wz);
            Scatter(ref force, b, count, -(s11 * px + s12 * qx) - wx, -(s11 * py + s12 * qy) - wy, -(s11 * pz + s12 * qz) - wz);
            Scatter(ref force, c, count, -(s12 * px + s22 * qx) - wx, -(s12 * py + s22 * qy) - wy, -(s12 * pz + s22 * qz) - wz);
        }
        var max = maxAreaStretchSquared;
        return new(Vector256.Sum(sixVolumes), Math.Max(Math.Max(max[0], max[1]), Math.Max(max[2], max[3])));
    }

    /// <summary>Twice the stress S of the remarks: its factors of M and of det M·adj g.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double> FactorM, Vector256<double> FactorAdjC) Stress(
        Vector256<double> traceC, Vector256<double> detC, Vector256<double> c1, Vector256<double> c2)
    {
        var (one, two) = (Vector256<double>.One, Vector256.Create(2.0));
        var maxEigenvalue =
            (traceC + Vector256.Sqrt(Vector256.Max(traceC * traceC - (two + two) * detC, Vector256<double>.Zero))) / two;
        // The smaller eigenvalue is detC / maxEigenvalue; in uniaxial tension it is 1 / sqrt(maxEigenvalue).
        var wrinkled = Vector256.LessThan(detC * detC, maxEigenvalue);

        var inverseDetC = one / detC;
        var (tautM, tautAdj) = (two * (c1 + c2 * inverseDetC), two * (c2 - (c1 + c2 * traceC) * inverseDetC * inverseDetC));
        if (wrinkled == Vector256<double>.Zero) return (tautM, tautAdj);

        var maxStretch = Vector256.Sqrt(maxEigenvalue);
        var uniaxial =
            two * (c1 + c2 / maxStretch) * Vector256.Max(one - one / (maxEigenvalue * maxStretch), Vector256<double>.Zero)
            / Vector256.Max(maxEigenvalue - detC / maxEigenvalue, Vector256.Create(1e-12));
        return (Vector256.ConditionalSelect(wrinkled, uniaxial * maxEigenvalue, tautM),
            Vector256.ConditionalSelect(wrinkled, -uniaxial, tautAdj));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Scatter(
        ref double force, ReadOnlySpan<int> nodes, int count, Vector256<double> x, Vector256<double> y, Vector256<double> z)
    {
        var (first, second, third, fourth) = LaneTranspose.ToPoints(x, y, z);
        // The padding of the last four is not an element.
        Scatter(ref force, nodes[0], first);
        if (count > 1) Scatter(ref force, nodes[1], second);
        if (count > 2) Scatter(ref force, nodes[2], third);
        if (count > 3) Scatter(ref force, nodes[3], fourth);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Scatter(ref double force, int node, Vector256<double> increment) =>
        (VectorAt(ref force, node) + increment).StoreUnsafe(ref Unsafe.Add(ref force, 4 * node));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> VectorAt(ref double array, int node) =>
        Vector256.LoadUnsafe(ref Unsafe.Add(ref array, 4 * node));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> LanesAt(double[] array, int first) => Vector256.Create(array.AsSpan(first, 4));

    /// <summary>
    /// Sums over a part of the elements, besides the forces: six times the volume of gas, and the largest square of the area
    /// stretch.
    /// </summary>
    private readonly record struct PartialSum(double SixVolumes, double MaxAreaStretchSquared);
}
