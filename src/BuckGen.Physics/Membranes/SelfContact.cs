using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Holds nodes where the sheet meets itself, underside to underside: the two flanks of a web, which weld and cool there.
/// </summary>
/// <remarks>
/// At the upright edges of a male tool there is more sheet than tool round it, and it stands out as a fold. Without this the
/// flanks would pass through each other, and the pressure, now on the wrong side of both, would blow them up like a balloon. A
/// node has met a triangle when it lies under it, nearer than a share of the size of the triangles round it (the root of twice
/// their area), both look away from each other, and the tool is not between them. Nodes alone would not do: along a fold
/// triangles become long, and a flank slips through between two nodes of the other. Wrinkles as small as the mesh lets them be,
/// such as in the upright corners of a box, count as webs too where their flanks touch.
/// </remarks>
internal sealed class SelfContact
{
    private const double GapRatio = 0.4;

    /// <summary>Cosine between the two sides of the sheet below which they count as turned away from each other.</summary>
    private const double MaxOpposedCosine = -0.5;

    /// <summary>Upward share of the normal below which the sheet counts as hanging over, with 10 degrees to spare.</summary>
    private const double MinUprightNormalZ = 0.17;

    private readonly MembraneNodes nodes;
    private readonly ToolContact contact;
    private readonly double[] normalX, normalY, normalZ, nodeSize;
    private readonly TriangleGrid grid = new();
    private readonly List<MeshTriangle> fixedTriangles = [];
    private readonly List<int> webNodes = [], newContacts = [];
    private readonly bool[] isInWeb;
    private readonly SymmetryLimits symmetryLimits;
    private BoundingBox searchBox;
    private double cellSize;

    public SelfContact(MembraneNodes nodes, ToolContact contact, SymmetryLimits limits)
    {
        (this.nodes, this.contact, this.symmetryLimits) = (nodes, contact, limits);
        (normalX, normalY, normalZ) = (new double[nodes.Count], new double[nodes.Count], new double[nodes.Count]);
        (nodeSize, isInWeb) = (new double[nodes.Count], new bool[nodes.Count]);
    }

    /// <summary>The nodes held so, in order.</summary>
    public IReadOnlyList<int> WebNodes => webNodes;

    /// <summary>
    /// Keeps a triangle in mind that can no longer stretch: where it is part of a web, others may still come to lie on it.
    /// </summary>
    public void KeepFixed(MeshTriangle t)
    {
        if (isInWeb[t.A] || isInWeb[t.B] || isInWeb[t.C]) fixedTriangles.Add(t);
    }

    /// <summary>Looks through all triangles that can still stretch.</summary>
    public void DetectContacts(MembraneElements elements)
    {
        DetectSymmetryContacts();
        UpdateNormals(elements);
        if (!FindOverhang()) return;
        grid.Clear(cellSize);
        for (var e = 0; e < elements.Count; e++) InsertTriangle(new(elements.A[e], elements.B[e], elements.C[e]));
        foreach (var t in fixedTriangles) InsertTriangle(t);
        // First all are found, then all are held, so that mirror images fare alike whatever the order of the nodes.
        newContacts.Clear();
        for (var i = 0; i < nodes.Count; i++) if (nodeSize[i] > 0 && contact.IsFree[i] && searchBox.Contains(nodes.Position(i))) DetectContactsOf(i);
        foreach (var i in newContacts) if (contact.IsFree[i]) FixInWeb(i);
    }

    /// <summary>A node that has gone through a plane of symmetry has met its mirror image there.</summary>
    private void DetectSymmetryContacts()
    {
        for (var i = 0; i < nodes.Count; i++)
        {
            var (x, y) = (Math.Clamp(nodes.X[i], symmetryLimits.MinX, symmetryLimits.MaxX), Math.Clamp(nodes.Y[i], symmetryLimits.MinY, symmetryLimits.MaxY));
            if ((x == nodes.X[i] && y == nodes.Y[i]) || !contact.IsFree[i]) continue;
            (nodes.X[i], nodes.Y[i]) = (x, y);
            FixInWeb(i);
        }
    }

    /// <summary>
    /// Finds where the sheet hangs over, or nearly. While each vertical meets it but once it cannot touch itself, so of two nodes
    /// that meet one at least hangs over; only what is near such places needs a check.
    /// </summary>
    private bool FindOverhang()
    {
        var maxSize = 0.0;
        searchBox = BoundingBox.Empty;
        for (var i = 0; i < nodes.Count; i++)
        {
            nodeSize[i] = Math.Sqrt(NodeNormal(i).Length);
            if (nodeSize[i] == 0 || normalZ[i] > MinUprightNormalZ * nodeSize[i] * nodeSize[i]) continue;
            searchBox = searchBox.With(nodes.Position(i));
            if (contact.IsFree[i]) maxSize = Math.Max(maxSize, nodeSize[i]);
        }
        cellSize = GapRatio * maxSize;
        searchBox = searchBox.Grown(2 * cellSize);
        return maxSize > 0;
    }

    private void InsertTriangle(MeshTriangle t)
    {
        var (a, b, c) = (nodes.Position(t.A), nodes.Position(t.B), nodes.Position(t.C));
        if (searchBox.Meets(a, b, c)) grid.Insert(t, a, b, c);
    }

    private void DetectContactsOf(int i)
    {
        var (position, normal) = (nodes.Position(i), NodeNormal(i) * (1 / (nodeSize[i] * nodeSize[i])));
        for (var entry = grid.FirstNear(position - normal * (GapRatio / 2 * nodeSize[i])); entry >= 0; entry = grid[entry].Next)
        {
            var t = grid[entry].Triangle;
            if (t.A == i || t.B == i || t.C == i || !AreInContact(i, position, normal, t, out var maxGap)) continue;
            foreach (var j in (ReadOnlySpan<int>)[t.A, t.B, t.C])
                if (contact.IsFree[j] && Math.Abs(normal.Dot(nodes.Position(j) - position)) < maxGap) newContacts.Add(j);
            newContacts.Add(i);
        }
    }

    private void FixInWeb(int node)
    {
        contact.Fix(node);
        webNodes.Add(node);
        isInWeb[node] = true;
    }

    private bool AreInContact(int i, Vec3 position, Vec3 normal, MeshTriangle t, out double maxGap)
    {
        var (a, b, c) = (nodes.Position(t.A), nodes.Position(t.B), nodes.Position(t.C));
        var triangleNormal = (b - a).Cross(c - a);
        var doubleArea = triangleNormal.Length;
        maxGap = GapRatio * Math.Min(nodeSize[i], Math.Sqrt(6 * doubleArea));
        if (!(doubleArea > 0) || normal.Dot(triangleNormal) > MaxOpposedCosine * doubleArea) return false;
        var gap = triangleNormal.Dot(position - a) / doubleArea;
        if (gap < -maxGap || gap > maxGap / 2) return false;
        // The share of each corner at the foot of the node, with a little slack for what lies beyond the side of a curved flank.
        const double slack = -0.1;
        var projection = position - triangleNormal * (gap / doubleArea);
        var doubleAreaSquared = doubleArea * doubleArea;
        return (b - projection).Cross(c - projection).Dot(triangleNormal) > slack * doubleAreaSquared && (c - projection).Cross(a - projection).Dot(triangleNormal) > slack * doubleAreaSquared
            && (a - projection).Cross(b - projection).Dot(triangleNormal) > slack * doubleAreaSquared && contact.GapAt((position + projection) * 0.5) > 0;
    }

    private void UpdateNormals(MembraneElements elements)
    {
        Array.Clear(normalX);
        Array.Clear(normalY);
        Array.Clear(normalZ);
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var normal = nodes.DoubleAreaVector(a, b, c);
            AccumulateNormal(a, normal);
            AccumulateNormal(b, normal);
            AccumulateNormal(c, normal);
        }
    }

    private void AccumulateNormal(int node, Vec3 normal)
    {
        normalX[node] += normal.X;
        normalY[node] += normal.Y;
        normalZ[node] += normal.Z;
    }

    private Vec3 NodeNormal(int i) => new(normalX[i], normalY[i], normalZ[i]);
}
