using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Self-contact of the underside of the sheet: the two flanks of a web, which weld and cool there. Nodes in self-contact are
/// fixed.
/// </summary>
/// <remarks>
/// At the upright edges of a male tool there is more sheet than tool around it, and it stands out as a fold. Without self-contact
/// the flanks would pass through each other, and the pressure, then on the wrong side of both, would inflate them like a balloon.
/// A node is in contact with a triangle when it lies below it, both face away from each other, and the tool is not between them.
/// It must also lie closer than a share of the element size at both (the root of twice the area). Contact between nodes alone
/// would not be enough: along a fold triangles become long, and a flank could pass between two nodes of the other. Wrinkles of
/// the size of the mesh, such as in the upright corners of a box, count as webs too where their flanks touch.
/// </remarks>
internal sealed class SelfContact
{
    /// <summary>Largest gap of a contact, over the element size.</summary>
    private const double GapRatio = 0.4;

    /// <summary>Cosine of the angle between two normals below which the two sides count as facing away from each other.</summary>
    private const double MaxOpposedCosine = -0.5;

    /// <summary>
    /// Z component of the unit normal below which the sheet counts as overhanging, with a margin of 10 degrees.
    /// </summary>
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
        (this.nodes, this.contact, symmetryLimits) = (nodes, contact, limits);
        (normalX, normalY, normalZ) = (new double[nodes.Count], new double[nodes.Count], new double[nodes.Count]);
        (nodeSize, isInWeb) = (new double[nodes.Count], new bool[nodes.Count]);
    }

    /// <summary>The nodes fixed by self-contact, in the order of contact.</summary>
    public IReadOnlyList<int> WebNodes => webNodes;

    /// <summary>
    /// Keeps a removed triangle as a target of contact: where it is part of a web, other nodes may still touch it.
    /// </summary>
    public void KeepFixed(MeshTriangle t)
    {
        if (isInWeb[t.A] || isInWeb[t.B] || isInWeb[t.C]) fixedTriangles.Add(t);
    }

    /// <summary>Searches all elements for self-contact and fixes the nodes.</summary>
    public void DetectContacts(MembraneElements elements)
    {
        DetectSymmetryContacts();
        UpdateNormals(elements);
        if (!FindOverhang()) return;
        grid.Clear(cellSize);
        for (var e = 0; e < elements.Count; e++) InsertTriangle(new(elements.A[e], elements.B[e], elements.C[e]));
        foreach (var t in fixedTriangles) InsertTriangle(t);
        // All contacts are found before any node is fixed, so that the order of the nodes does not break symmetry.
        newContacts.Clear();
        for (var i = 0; i < nodes.Count; i++)
            if (nodeSize[i] > 0 && contact.IsFree[i] && searchBox.Contains(nodes.Position(i))) DetectContactsOf(i);
        foreach (var i in newContacts) if (contact.IsFree[i]) FixInWeb(i);
    }

    /// <summary>A node that has passed a plane of symmetry is in contact with its mirror image there.</summary>
    private void DetectSymmetryContacts()
    {
        for (var i = 0; i < nodes.Count; i++)
        {
            var x = Math.Clamp(nodes.X[i], symmetryLimits.MinX, symmetryLimits.MaxX);
            var y = Math.Clamp(nodes.Y[i], symmetryLimits.MinY, symmetryLimits.MaxY);
            if ((x == nodes.X[i] && y == nodes.Y[i]) || !contact.IsFree[i]) continue;
            (nodes.X[i], nodes.Y[i]) = (x, y);
            FixInWeb(i);
        }
    }

    /// <summary>
    /// Finds where the sheet overhangs, or nearly. While each vertical line meets it only once, it cannot touch itself. So of two
    /// nodes in contact at least one overhangs, and only the surroundings of such places are searched.
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
        // Barycentric coordinates of the projection, with a tolerance for points beyond the edge of a curved flank.
        const double slack = -0.1;
        var projection = position - triangleNormal * (gap / doubleArea);
        var doubleAreaSquared = doubleArea * doubleArea;
        return (b - projection).Cross(c - projection).Dot(triangleNormal) > slack * doubleAreaSquared
            && (c - projection).Cross(a - projection).Dot(triangleNormal) > slack * doubleAreaSquared
            && (a - projection).Cross(b - projection).Dot(triangleNormal) > slack * doubleAreaSquared
            && contact.GapAt((position + projection) * 0.5) > 0;
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
