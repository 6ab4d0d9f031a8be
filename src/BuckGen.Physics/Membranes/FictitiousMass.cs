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
internal static class FictitiousMass
{
    /// <summary>How much heavier than needed, for what the bound does not see until it is drawn up again.</summary>
    private const double SafetyFactor = 1.15;

    /// <summary>How much more a triangle may tilt, as a sine, until then.</summary>
    private const double TiltMargin = 0.1;

    /// <summary>Sets the masses.</summary>
    /// <param name="elements">The triangles.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="material">What the sheet is made of.</param>
    /// <param name="pressure">Pressure from above, MPa.</param>
    /// <param name="gasStiffness">Rise of the pressure with each cubic millimetre that is lost, MPa/mm³.</param>
    public static void Assemble(MembraneElements elements, MembraneNodes nodes, HyperelasticMaterial material, double pressure, double gasStiffness)
    {
        Array.Clear(nodes.MassXY);
        Array.Clear(nodes.MassZ);
        var totalArea = 0.0;
        for (var e = 0; e < elements.Count; e++) totalArea += nodes.DoubleAreaVector(elements.A[e], elements.B[e], elements.C[e]).Length / 2;
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var (ab, ac, bc) = (nodes.DistanceSquared(a, b), nodes.DistanceSquared(a, c), nodes.DistanceSquared(b, c));
            var normal = nodes.DoubleAreaVector(a, b, c);
            var doubleArea = normal.Length;
            var (m11, m12, m22, detM) = (elements.InverseMetric11[e], elements.InverseMetric12[e], elements.InverseMetric22[e], elements.InverseMetricDeterminant[e]);
            var strain = new ElementStrain(
                m11 * ab + m12 * (ab + ac - bc) + m22 * ac, doubleArea * doubleArea * detM, (ab + ac + bc) * detM, 2 * (m11 + m22 + m12), detM);
            var (stiffness, geometricStiffness) = MaxStiffness(strain, material);
            var pressureStiffness = pressure * Math.Sqrt(3 * (ab + ac + bc)) / 6 + gasStiffness * totalArea * doubleArea / 6;
            stiffness *= elements.Volume[e];
            geometricStiffness *= elements.Volume[e];
            var tilt = TiltMargin + (doubleArea > 0 ? Math.Sqrt(Math.Max(0, 1 - normal.Z * normal.Z / (doubleArea * doubleArea))) : 1);
            var isFlat = tilt * (1 + tilt) * stiffness + geometricStiffness < stiffness;
            var massXY = SafetyFactor / 4 * ((isFlat ? stiffness * (1 + tilt) + geometricStiffness : stiffness) + pressureStiffness);
            var massZ = SafetyFactor / 4 * ((isFlat ? stiffness * tilt * (1 + tilt) + geometricStiffness : stiffness) + pressureStiffness);
            nodes.MassXY[a] += massXY;
            nodes.MassXY[b] += massXY;
            nodes.MassXY[c] += massXY;
            nodes.MassZ[a] += massZ;
            nodes.MassZ[b] += massZ;
            nodes.MassZ[c] += massZ;
        }
    }

    /// <summary>
    /// Bounds of the second derivatives of the energy of a unit of volume, MPa/mm²: of all of it, and of its tension alone.
    /// </summary>
    private static (double Stiffness, double GeometricStiffness) MaxStiffness(ElementStrain strain, HyperelasticMaterial material)
    {
        var (traceC, detC, edgeSum, referenceEdgeSum, detM) = strain;
        var (c1, c2) = (material.C1, material.C2);
        var maxEigenvalue = (traceC + Math.Sqrt(Math.Max(traceC * traceC - 4 * detC, 0))) / 2;
        // Square of the stretch of area, but no less than that of a strip drawn lengthwise.
        var areaStretchSquared = Math.Max(detC, Math.Sqrt(Math.Max(maxEigenvalue, 1)));
        var areaStretchFourth = areaStretchSquared * areaStretchSquared;
        var linear = referenceEdgeSum + Math.Sqrt(Math.Max(referenceEdgeSum * referenceEdgeSum - 12 * detM, 0));
        var bend = Math.Sqrt(3 * detM);
        var thinning = 6 * edgeSum / areaStretchFourth + 2 * bend / (areaStretchSquared * Math.Sqrt(areaStretchSquared));
        var stiffness = c1 * (linear + thinning);
        if (c2 > 0) stiffness += c2 * (4 * edgeSum + linear / areaStretchSquared + 8 * Math.Sqrt(referenceEdgeSum * traceC * edgeSum / (areaStretchFourth * areaStretchSquared)) + 8 * traceC * edgeSum / areaStretchFourth);

        var minEigenvalue = areaStretchSquared / maxEigenvalue;
        var geometricStiffness = 2 * (c1 + c2 / areaStretchSquared + (c2 - (c1 + c2 * (maxEigenvalue + minEigenvalue)) / areaStretchFourth) * minEigenvalue);
        return (stiffness, Math.Max(0, geometricStiffness) * referenceEdgeSum);
    }

    /// <summary>The invariants I and J, s, s0, and one over the square of twice the area before forming.</summary>
    private readonly record struct ElementStrain(double TraceC, double DetC, double EdgeSum, double ReferenceEdgeSum, double DetM);
}
