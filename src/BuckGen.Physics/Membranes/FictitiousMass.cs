namespace BuckGen.Physics.Membranes;

/// <summary>Fictitious nodal masses for which an explicit step of length 1 is stable.</summary>
/// <remarks>
/// <para>
/// The explicit central-difference step is stable while no eigenvalue of M⁻¹·K exceeds 4. The stiffness matrix of an element is
/// at most k times the identity, with its largest eigenvalue k. So a quarter of the sum of k over the elements at a node is
/// enough, with a safety factor. Fictitious masses for membranes were introduced to dynamic relaxation by M. R. Barnes (from
/// memory).
/// </para>
/// <para>
/// For the energy of <see cref="ElementForces"/> let s = Σl²/(4·A0²) over the edges of the deformed element and s0 the same
/// before forming. The second derivatives of I are at most twice the larger root of x² - s0·x + 3/(4·A0²) = 0. The gradient of
/// the area stretch a has the square s; its second derivatives are at most s/a normal to the sheet and √3/(2·A0) in its plane.
/// With those of a² and 1/a² and the product rule for I/J that gives the bound. A wrinkled element is no stiffer than one that
/// just begins to wrinkle.
/// </para>
/// <para>
/// That is the stiffness in the plane of the sheet. While the sheet is nearly flat, a node moves up and down against the
/// geometric stiffness of the membrane tension only, which is small at first. It may then have a smaller mass in z. If the normal
/// is tilted by the sine s, the in-plane part of a displacement (u, w) has a square of at most (1 + s)·u² + (s + s²)·w².
/// </para>
/// </remarks>
internal static class FictitiousMass
{
    /// <summary>Safety factor on the masses, for the growth of the stiffness until the next update.</summary>
    private const double SafetyFactor = 1.15;

    /// <summary>Increase of the tilt, as a sine, that is allowed for until the next update.</summary>
    private const double TiltMargin = 0.1;

    /// <summary>Assembles the masses.</summary>
    /// <param name="elements">The elements.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="material">Material of the sheet.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    /// <param name="gasStiffness">Increase of the pressure per volume that the gas loses, MPa/mm³.</param>
    public static void Assemble(
        MembraneElements elements, MembraneNodes nodes, HyperelasticMaterial material, double pressure, double gasStiffness)
    {
        Array.Clear(nodes.MassXY);
        Array.Clear(nodes.MassZ);
        var totalArea = 0.0;
        for (var e = 0; e < elements.Count; e++)
            totalArea += nodes.DoubleAreaVector(elements.A[e], elements.B[e], elements.C[e]).Length / 2;
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var (ab, ac, bc) = (nodes.DistanceSquared(a, b), nodes.DistanceSquared(a, c), nodes.DistanceSquared(b, c));
            var normal = nodes.DoubleAreaVector(a, b, c);
            var doubleArea = normal.Length;
            var (m11, m12, m22) = (elements.InverseMetric11[e], elements.InverseMetric12[e], elements.InverseMetric22[e]);
            var detM = elements.InverseMetricDeterminant[e];
            var strain = new ElementStrain(
                m11 * ab + m12 * (ab + ac - bc) + m22 * ac, doubleArea * doubleArea * detM, (ab + ac + bc) * detM,
                2 * (m11 + m22 + m12), detM);
            var (stiffness, geometricStiffness) = MaxStiffness(strain, material);
            var pressureStiffness = pressure * Math.Sqrt(3 * (ab + ac + bc)) / 6 + gasStiffness * totalArea * doubleArea / 6;
            stiffness *= elements.WeightedVolume[e];
            geometricStiffness *= elements.WeightedVolume[e];
            var tilt = TiltMargin
                + (doubleArea > 0 ? Math.Sqrt(Math.Max(0, 1 - normal.Z * normal.Z / (doubleArea * doubleArea))) : 1);
            var isFlat = tilt * (1 + tilt) * stiffness + geometricStiffness < stiffness;
            var stiffnessXY = isFlat ? stiffness * (1 + tilt) + geometricStiffness : stiffness;
            var stiffnessZ = isFlat ? stiffness * tilt * (1 + tilt) + geometricStiffness : stiffness;
            var massXY = SafetyFactor / 4 * (stiffnessXY + pressureStiffness);
            var massZ = SafetyFactor / 4 * (stiffnessZ + pressureStiffness);
            nodes.MassXY[a] += massXY;
            nodes.MassXY[b] += massXY;
            nodes.MassXY[c] += massXY;
            nodes.MassZ[a] += massZ;
            nodes.MassZ[b] += massZ;
            nodes.MassZ[c] += massZ;
        }
    }

    /// <summary>
    /// Bounds of the second derivatives of the energy per volume, MPa/mm²: of all of it, and of its geometric part alone.
    /// </summary>
    private static (double Stiffness, double GeometricStiffness) MaxStiffness(ElementStrain strain, HyperelasticMaterial material)
    {
        var (traceC, detC, edgeSum, referenceEdgeSum, detM) = strain;
        var (c1, c2) = (material.C1, material.C2);
        var maxEigenvalue = (traceC + Math.Sqrt(Math.Max(traceC * traceC - 4 * detC, 0))) / 2;
        // Square of the area stretch, but no less than that of a strip in uniaxial tension.
        var areaStretchSquared = Math.Max(detC, Math.Sqrt(Math.Max(maxEigenvalue, 1)));
        var areaStretchFourth = areaStretchSquared * areaStretchSquared;
        var linear = referenceEdgeSum + Math.Sqrt(Math.Max(referenceEdgeSum * referenceEdgeSum - 12 * detM, 0));
        var bend = Math.Sqrt(3 * detM);
        var thinning = 6 * edgeSum / areaStretchFourth + 2 * bend / (areaStretchSquared * Math.Sqrt(areaStretchSquared));
        var stiffness = c1 * (linear + thinning);
        if (c2 > 0)
        {
            stiffness += c2 * (4 * edgeSum + linear / areaStretchSquared
                + 8 * Math.Sqrt(referenceEdgeSum * traceC * edgeSum / (areaStretchFourth * areaStretchSquared))
                + 8 * traceC * edgeSum / areaStretchFourth);
        }

        var minEigenvalue = areaStretchSquared / maxEigenvalue;
        var geometricStiffness = 2 * (c1 + c2 / areaStretchSquared
            + (c2 - (c1 + c2 * (maxEigenvalue + minEigenvalue)) / areaStretchFourth) * minEigenvalue);
        return (stiffness, Math.Max(0, geometricStiffness) * referenceEdgeSum);
    }

    /// <summary>
    /// I and J of <see cref="ElementForces"/>, s and s0, and one over the square of twice the area before forming.
    /// </summary>
    private readonly record struct ElementStrain(
        double TraceC, double DetC, double EdgeSum, double ReferenceEdgeSum, double DetM);
}
