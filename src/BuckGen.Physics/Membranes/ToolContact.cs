using System.Numerics;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Holds the nodes that meet the tool, each at the place where its way meets the surface.</summary>
internal sealed class ToolContact
{
    private readonly ITool tool;
    private readonly MembraneNodes nodes;
    private readonly double exact;
    private readonly bool[] movable, onTool;
    private readonly int[] order;
    private int met;

    /// <param name="tool">The tool.</param>
    /// <param name="nodes">The nodes.</param>
    /// <param name="clamped">Whether each node is held by the frame.</param>
    /// <param name="exact">How near the surface is near enough, mm.</param>
    public ToolContact(ITool tool, MembraneNodes nodes, IEnumerable<bool> clamped, double exact)
    {
        (this.tool, this.nodes, this.exact) = (tool, nodes, exact);
        movable = [.. clamped.Select(c => !c)];
        onTool = new bool[nodes.Count];
        order = new int[nodes.Count];
        Array.Fill(order, -1);
        for (var i = 0; i < movable.Length; i++) nodes.Clearance[i] = movable[i] ? -1 : double.PositiveInfinity;
    }

    /// <summary>Whether each node is neither clamped nor on the tool.</summary>
    public ReadOnlySpan<bool> Movable => movable;

    /// <summary>Whether each node lies on the tool.</summary>
    public ReadOnlySpan<bool> OnTool => onTool;

    /// <summary>When each node first met the tool, counted in nodes; -1 for those that did not.</summary>
    public ReadOnlySpan<int> Order => order;

    /// <summary>How many nodes have met the tool.</summary>
    public int Met => met;

    /// <summary>Looks after the nodes that have used up their clearance.</summary>
    public void Update()
    {
        var clearance = nodes.Clearance;
        for (var i = 0; i < clearance.Length; i += Vector<double>.Count)
        {
            if (!Vector.LessThanAny(new Vector<double>(clearance, i), Vector<double>.Zero)) continue;
            for (var node = i; node < Math.Min(i + Vector<double>.Count, nodes.Count); node++) if (clearance[node] < 0) Look(node);
        }
    }

    /// <summary>Distance of a place from the tool, mm.</summary>
    public double DistanceAt(Vec3 place) => tool.Distance(place);

    /// <summary>Holds a node where it is, for good unless it is let go.</summary>
    public void Hold(int node)
    {
        (nodes.VelocityX[node], nodes.VelocityY[node], nodes.VelocityZ[node]) = (0, 0, 0);
        (nodes.YieldX[node], nodes.YieldY[node], nodes.YieldZ[node]) = (0, 0, 0);
        nodes.Clearance[node] = double.PositiveInfinity;
        movable[node] = false;
    }

    /// <summary>Lets a node go that lies on the tool; whether it is still there is checked after the next step.</summary>
    public void Release(int node)
    {
        (movable[node], onTool[node]) = (true, false);
        nodes.Clearance[node] = 0;
    }

    /// <summary>Releases all nodes except the first ones that met the tool, up to the given number.</summary>
    public void Forget(int after)
    {
        for (var i = 0; i < nodes.Count; i++) if (order[i] >= after) (order[i], movable[i], onTool[i]) = (-1, true, false);
        met = after;
    }

    private void Look(int node)
    {
        var here = nodes.Place(node);
        var distance = tool.Distance(here);
        if (distance > exact)
        {
            nodes.Clearance[node] = distance - exact;
            return;
        }
        if (distance < -exact) (nodes.X[node], nodes.Y[node], nodes.Z[node]) = Meeting(here, LastStep(node));
        Hold(node);
        onTool[node] = true;
        if (order[node] < 0) order[node] = met++;
    }

    /// <summary>Where the way of the last step, which ends inside the tool, meets the surface.</summary>
    private Vec3 Meeting(Vec3 end, Vec3 step)
    {
        var (outside, inside) = (0.0, 1.0);
        // A node that is inside from the first on, without a way, stays where it is.
        if (tool.Distance(end - step) <= 0) return end - step;
        while ((inside - outside) * step.Length > exact)
        {
            var middle = (outside + inside) / 2;
            if (tool.Distance(end - step * (1 - middle)) > 0) outside = middle;
            else inside = middle;
        }
        return end - step * (1 - inside);
    }

    private Vec3 LastStep(int node) => new(nodes.VelocityX[node], nodes.VelocityY[node], nodes.VelocityZ[node]);
}
