using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Holds nodes where the sheet meets itself, underside to underside: the two flanks of a web, which weld and cool there.
/// </summary>
/// <remarks>
/// At the upright edges of a male tool there is more sheet than tool round it, and it stands out as a fold. Without this the flanks
/// would pass through each other, and the pressure, now on the wrong side of both, would blow them up like a balloon. Two nodes have
/// met when they are nearer than half the size of the triangles round them (the root of twice their area), look away from each other, and the tool is not between them.
/// </remarks>
internal sealed class WebContact
{
    private const double Near = 0.5;

    /// <summary>Cosine between the two sides of the sheet below which they count as turned away from each other.</summary>
    private const double Opposed = -0.5;

    private readonly MembraneNodes nodes;
    private readonly ToolContact contact;
    private readonly double[] normalX, normalY, normalZ, size;
    private readonly int[] next;
    private readonly int[] heads;
    private readonly List<int> webbed = [];

    public WebContact(MembraneNodes nodes, ToolContact contact)
    {
        (this.nodes, this.contact) = (nodes, contact);
        (normalX, normalY, normalZ) = (new double[nodes.Count], new double[nodes.Count], new double[nodes.Count]);
        size = new double[nodes.Count];
        next = new int[nodes.Count];
        heads = new int[(int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)nodes.Count)];
    }

    /// <summary>The nodes held so, in order.</summary>
    public IReadOnlyList<int> Webbed => webbed;

    /// <summary>Looks through all triangles that can still stretch.</summary>
    public void Update(MembraneElements elements)
    {
        SumNormals(elements);
        var (largest, steep) = (0.0, false);
        for (var i = 0; i < nodes.Count; i++)
        {
            size[i] = Math.Sqrt(Normal(i).Length);
            largest = Math.Max(largest, size[i]);
            steep |= IsSteep(i) && contact.Movable[i];
        }
        if (!steep) return;
        var cell = Near * largest;
        Array.Fill(heads, -1);
        for (var i = nodes.Count - 1; i >= 0; i--)
        {
            if (size[i] == 0) continue;
            var slot = Slot(Cell(nodes.X[i], cell), Cell(nodes.Y[i], cell), Cell(nodes.Z[i], cell));
            (next[i], heads[slot]) = (heads[slot], i);
        }
        for (var i = 0; i < nodes.Count; i++) if (IsSteep(i) && contact.Movable[i]) Meet(i, cell);
    }

    private void Meet(int i, double cell)
    {
        var (cx, cy, cz) = (Cell(nodes.X[i], cell), Cell(nodes.Y[i], cell), Cell(nodes.Z[i], cell));
        for (var x = cx - 1; x <= cx + 1; x++)
        {
            for (var y = cy - 1; y <= cy + 1; y++)
            {
                for (var z = cz - 1; z <= cz + 1; z++)
                {
                    for (var j = heads[Slot(x, y, z)]; j >= 0; j = next[j])
                    {
                        if (!HaveMet(i, j)) continue;
                        Hold(i);
                        if (contact.Movable[j]) Hold(j);
                        return;
                    }
                }
            }
        }
    }

    private void Hold(int node)
    {
        contact.Hold(node);
        webbed.Add(node);
    }

    private bool HaveMet(int i, int j)
    {
        var (here, there) = (nodes.Place(i), nodes.Place(j));
        var between = there - here;
        var near = Near * Math.Min(size[i], size[j]);
        var square = between.Dot(between);
        if (square == 0 || square > near * near) return false;
        var (normal, facing) = (Normal(i), Normal(j));
        return normal.Dot(facing) < Opposed * size[i] * size[i] * size[j] * size[j]
            && normal.Dot(between) < 0 && facing.Dot(between) > 0
            && contact.DistanceAt((here + there) * 0.5) > 0;
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

    /// <summary>Of two sides so turned away from each other one at least is as steep as this, so only such nodes need ask.</summary>
    private bool IsSteep(int i) => size[i] > 0 && normalZ[i] <= -Opposed * size[i] * size[i];

    private static int Cell(double value, double cell) => (int)Math.Floor(value / cell);

    private int Slot(int x, int y, int z) => (x * 73856093 ^ y * 19349663 ^ z * 83492791) & (heads.Length - 1);
}
