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
internal sealed class WebContact
{
    private const double Near = 0.4;

    /// <summary>Cosine between the two sides of the sheet below which they count as turned away from each other.</summary>
    private const double Opposed = -0.5;

    /// <summary>Upward share of the normal below which the sheet counts as hanging over, with 10 degrees to spare.</summary>
    private const double Steep = 0.17;

    private readonly MembraneNodes nodes;
    private readonly ToolContact contact;
    private readonly double[] normalX, normalY, normalZ, size;
    private readonly FlankGrid grid = new();
    private readonly List<MeshTriangle> settled = [];
    private readonly List<int> webbed = [], found = [];
    private readonly bool[] inWeb;
    private readonly MirrorLimits limits;
    private Box box;
    private double cell;

    public WebContact(MembraneNodes nodes, ToolContact contact, MirrorLimits limits)
    {
        (this.nodes, this.contact, this.limits) = (nodes, contact, limits);
        (normalX, normalY, normalZ) = (new double[nodes.Count], new double[nodes.Count], new double[nodes.Count]);
        (size, inWeb) = (new double[nodes.Count], new bool[nodes.Count]);
    }

    /// <summary>The nodes held so, in order.</summary>
    public IReadOnlyList<int> Webbed => webbed;

    /// <summary>
    /// Keeps a triangle in mind that can no longer stretch: where it is part of a web, others may still come to lie on it.
    /// </summary>
    public void Settle(MeshTriangle t)
    {
        if (inWeb[t.A] || inWeb[t.B] || inWeb[t.C]) settled.Add(t);
    }

    /// <summary>Looks through all triangles that can still stretch.</summary>
    public void Update(MembraneElements elements)
    {
        MeetImages();
        SumNormals(elements);
        if (!FindOverhang()) return;
        grid.Clear(cell);
        for (var e = 0; e < elements.Count; e++) Add(new(elements.A[e], elements.B[e], elements.C[e]));
        foreach (var t in settled) Add(t);
        // First all are found, then all are held, so that mirror images fare alike whatever the order of the nodes.
        found.Clear();
        for (var i = 0; i < nodes.Count; i++) if (size[i] > 0 && contact.Movable[i] && box.Holds(nodes.Place(i))) Meet(i);
        foreach (var i in found) if (contact.Movable[i]) Hold(i);
    }

    /// <summary>A node that has gone through a plane of symmetry has met its mirror image there.</summary>
    private void MeetImages()
    {
        for (var i = 0; i < nodes.Count; i++)
        {
            var (x, y) = (Math.Clamp(nodes.X[i], limits.LowX, limits.HighX), Math.Clamp(nodes.Y[i], limits.LowY, limits.HighY));
            if ((x == nodes.X[i] && y == nodes.Y[i]) || !contact.Movable[i]) continue;
            (nodes.X[i], nodes.Y[i]) = (x, y);
            Hold(i);
        }
    }

    /// <summary>
    /// Finds where the sheet hangs over, or nearly. While each vertical meets it but once it cannot touch itself, so of two nodes
    /// that meet one at least hangs over; only what is near such places needs a check.
    /// </summary>
    private bool FindOverhang()
    {
        var largest = 0.0;
        box = Box.Empty;
        for (var i = 0; i < nodes.Count; i++)
        {
            size[i] = Math.Sqrt(Normal(i).Length);
            if (size[i] == 0 || normalZ[i] > Steep * size[i] * size[i]) continue;
            box = box.With(nodes.Place(i));
            if (contact.Movable[i]) largest = Math.Max(largest, size[i]);
        }
        cell = Near * largest;
        box = box.Wider(2 * cell);
        return largest > 0;
    }

    private void Add(MeshTriangle t)
    {
        var (a, b, c) = (nodes.Place(t.A), nodes.Place(t.B), nodes.Place(t.C));
        if (box.Touches(a, b, c)) grid.Add(t, a, b, c);
    }

    private void Meet(int i)
    {
        var (here, normal) = (nodes.Place(i), Normal(i) * (1 / (size[i] * size[i])));
        for (var entry = grid.First(here - normal * (Near / 2 * size[i])); entry >= 0; entry = grid[entry].Next)
        {
            var t = grid[entry].Triangle;
            if (t.A == i || t.B == i || t.C == i || !HaveMet(i, here, normal, t, out var near)) continue;
            foreach (var j in (ReadOnlySpan<int>)[t.A, t.B, t.C])
                if (contact.Movable[j] && Math.Abs(normal.Dot(nodes.Place(j) - here)) < near) found.Add(j);
            found.Add(i);
        }
    }

    private void Hold(int node)
    {
        contact.Hold(node);
        webbed.Add(node);
        inWeb[node] = true;
    }

    private bool HaveMet(int i, Vec3 here, Vec3 normal, MeshTriangle t, out double near)
    {
        var (a, b, c) = (nodes.Place(t.A), nodes.Place(t.B), nodes.Place(t.C));
        var facing = (b - a).Cross(c - a);
        var twice = facing.Length;
        near = Near * Math.Min(size[i], Math.Sqrt(6 * twice));
        if (!(twice > 0) || normal.Dot(facing) > Opposed * twice) return false;
        var above = facing.Dot(here - a) / twice;
        if (above < -near || above > near / 2) return false;
        // The share of each corner at the foot of the node, with a little slack for what lies beyond the side of a curved flank.
        const double slack = -0.1;
        var foot = here - facing * (above / twice);
        var square = twice * twice;
        return (b - foot).Cross(c - foot).Dot(facing) > slack * square && (c - foot).Cross(a - foot).Dot(facing) > slack * square
            && (a - foot).Cross(b - foot).Dot(facing) > slack * square && contact.DistanceAt((here + foot) * 0.5) > 0;
    }

    private void SumNormals(MembraneElements elements)
    {
        Array.Clear(normalX);
        Array.Clear(normalY);
        Array.Clear(normalZ);
        for (var e = 0; e < elements.Count; e++)
        {
            var (a, b, c) = (elements.A[e], elements.B[e], elements.C[e]);
            var normal = nodes.Normal(a, b, c);
            Add(a, normal);
            Add(b, normal);
            Add(c, normal);
        }
    }

    private void Add(int node, Vec3 normal)
    {
        normalX[node] += normal.X;
        normalY[node] += normal.Y;
        normalZ[node] += normal.Z;
    }

    private Vec3 Normal(int i) => new(normalX[i], normalY[i], normalZ[i]);
}
