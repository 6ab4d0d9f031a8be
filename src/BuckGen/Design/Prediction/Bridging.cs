using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>
/// Where the sheet does not reach the wood. Every inside corner stays round, with the radius at which the tension of the sheet
/// balances the pressure. That is no fault, and is not counted. What counts is the middle of a gap that does not fill, and a
/// place that stands off farther than any corner of that radius.
/// </summary>
internal sealed class Bridging
{
    /// <summary>Smallest gap that counts, mm, and at least the gauge.</summary>
    private const double MinGap = 1;

    /// <summary>
    /// Distance from the faces of a corner over the radius of the sheet in it. In the corner of three faces at right angles the
    /// sheet is a part of a ball of twice the radius T/p. It stands 2·(1 - 1/√3) = 0.85 of T/p off.
    /// </summary>
    private const double MaxCornerShare = 0.9;

    private readonly FormedSheet formed;
    private readonly List<(Vec3 Node, double Gap)> places;

    /// <param name="formed">The formed sheet.</param>
    /// <param name="tool">The wood.</param>
    /// <param name="gaps">Widths of its gaps.</param>
    /// <param name="part">
    /// Bounds of the part: counters and gaps between its pieces lie outside its footprint but inside its bounds.
    /// </param>
    public Bridging(FormedSheet formed, BuckTool tool, GapWidth gaps, Bounds part)
    {
        this.formed = formed;
        var minGap = Math.Max(MinGap, formed.Sheet.Thickness);
        var (radii, maxWidth) = (FreeRadii(), Math.Max(part.Width, part.Height));
        places =
        [
            .. formed.Nodes.Select((n, i) => (Node: n, Number: i))
                .Where(n => formed.ContactOrder[n.Number] < 0 && part.Contains(n.Node.Plan))
                .Select(n => (n.Node, n.Number, Gap: tool.DistanceFromWalls(n.Node)))
                .Where(n => n.Gap > minGap)
                .Where(n => n.Gap > MaxCornerShare * radii[n.Number] || gaps.IsInMiddle(n.Node.Plan, maxWidth))
                .Select(n => (n.Node, n.Gap)).OrderByDescending(n => n.Gap),
        ];
    }

    /// <summary>The nodes that stand off, largest gap first.</summary>
    public IEnumerable<Vec3> Nodes => places.Select(p => p.Node);

    /// <summary>Largest gap near a place, mm; 0 where the sheet reaches the wood.</summary>
    /// <param name="place">The place in plan.</param>
    /// <param name="within">How near, mm.</param>
    public double GapNear(Vec2 place, double within) =>
        places.Where(p => p.Node.Plan.DistanceTo(place) <= within).Select(p => p.Gap).DefaultIfEmpty(0).Max();

    /// <summary>
    /// Radius at each node of a sheet bent in one direction that its larger tension balances against the pressure, mm: r = T/p.
    /// </summary>
    private double[] FreeRadii()
    {
        var radii = new double[formed.Nodes.Length];
        foreach (var (t, i) in formed.Sheet.Mesh.Triangles.Select((t, i) => (t, i)))
        {
            var radius = TensionOf(formed.Stretches[i]) / (formed.Pressure * 1e-6);
            foreach (var node in (ReadOnlySpan<int>)[t.A, t.B, t.C]) radii[node] = Math.Max(radii[node], radius);
        }

        return radii;
    }

    /// <summary>Larger principal tension, N/mm: that of an incompressible Mooney-Rivlin membrane.</summary>
    private double TensionOf(PrincipalStretches s)
    {
        var (material, max2, min2) = (formed.Sheet.Material, s.Max * s.Max, s.Min * s.Min);
        return formed.Sheet.Thickness / (s.Max * s.Min)
            * 2 * (material.C1 + material.C2 * min2) * (max2 - 1 / (max2 * min2));
    }
}
