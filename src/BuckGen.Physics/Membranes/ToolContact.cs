using System.Numerics;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Contact of nodes with the rigid tool: fixes each node at the point where its path meets the surface.</summary>
internal sealed class ToolContact
{
    private readonly ITool tool;
    private readonly MembraneNodes nodes;
    private readonly double tolerance;
    private readonly bool[] isFree, isInContact;
    private readonly int[] contactOrder;
    private int contactCount;

    /// <param name="tool">The tool.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="clamped">Whether each node is clamped in the frame.</param>
    /// <param name="tolerance">Distance from the surface at which a node counts as in contact, mm.</param>
    public ToolContact(ITool tool, MembraneNodes nodes, IEnumerable<bool> clamped, double tolerance)
    {
        (this.tool, this.nodes, this.tolerance) = (tool, nodes, tolerance);
        isFree = [.. clamped.Select(c => !c)];
        isInContact = new bool[nodes.Count];
        contactOrder = new int[nodes.Count];
        Array.Fill(contactOrder, -1);
        for (var i = 0; i < isFree.Length; i++) nodes.MinGap[i] = isFree[i] ? -1 : double.PositiveInfinity;
    }

    /// <summary>Whether each node is neither clamped nor in contact.</summary>
    public ReadOnlySpan<bool> IsFree => isFree;

    /// <summary>Whether each node is in contact with the tool.</summary>
    public ReadOnlySpan<bool> IsInContact => isInContact;

    /// <summary>Order in which the nodes first came into contact, from 0; -1 for those without contact.</summary>
    public ReadOnlySpan<int> ContactOrder => contactOrder;

    /// <summary>Number of nodes that have come into contact.</summary>
    public int ContactCount => contactCount;

    /// <summary>Checks the nodes that have used up their minimum gap.</summary>
    public void DetectContacts()
    {
        var minGap = nodes.MinGap;
        for (var i = 0; i < minGap.Length; i += Vector<double>.Count)
        {
            if (!Vector.LessThanAny(new Vector<double>(minGap, i), Vector<double>.Zero)) continue;
            for (var node = i; node < Math.Min(i + Vector<double>.Count, nodes.Count); node++)
                if (minGap[node] < 0) CheckNode(node);
        }
    }

    /// <summary>Gap between a point and the tool, mm.</summary>
    public double GapAt(Vec3 place) => tool.SignedDistance(place);

    /// <summary>Fixes a node at its position, until it is released.</summary>
    public void Fix(int node)
    {
        (nodes.VelocityX[node], nodes.VelocityY[node], nodes.VelocityZ[node]) = (0, 0, 0);
        (nodes.InverseMassX[node], nodes.InverseMassY[node], nodes.InverseMassZ[node]) = (0, 0, 0);
        nodes.MinGap[node] = double.PositiveInfinity;
        isFree[node] = false;
    }

    /// <summary>Releases a node in contact; whether it is still in contact is checked after the next step.</summary>
    public void Release(int node)
    {
        (isFree[node], isInContact[node]) = (true, false);
        nodes.MinGap[node] = 0;
    }

    /// <summary>Releases all nodes but the given number of those that came into contact first.</summary>
    public void RollBack(int count)
    {
        for (var i = 0; i < nodes.Count; i++)
            if (contactOrder[i] >= count) (contactOrder[i], isFree[i], isInContact[i]) = (-1, true, false);
        contactCount = count;
    }

    private void CheckNode(int node)
    {
        var position = nodes.Position(node);
        var gap = tool.SignedDistance(position);
        if (gap > tolerance)
        {
            nodes.MinGap[node] = gap - tolerance;
            return;
        }
        if (gap < -tolerance) (nodes.X[node], nodes.Y[node], nodes.Z[node]) =
            ContactPath.Meet(tool.SignedDistance, position, LastDisplacement(node), tolerance);
        Fix(node);
        isInContact[node] = true;
        if (contactOrder[node] < 0) contactOrder[node] = contactCount++;
    }

    private Vec3 LastDisplacement(int node) => new(nodes.VelocityX[node], nodes.VelocityY[node], nodes.VelocityZ[node]);
}
