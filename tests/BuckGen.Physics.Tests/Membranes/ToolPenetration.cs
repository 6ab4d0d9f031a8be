using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>
/// Looks whether a formed sheet passes through its tool, by points in its triangles and not by its nodes alone.
/// </summary>
internal static class ToolPenetration
{
    /// <summary>The deepest place of a triangle below the tool's surface, over its longest side; at most 0.</summary>
    /// <remarks>A straight side across a square edge lies at most half its length below it: so much the mesh cuts off.</remarks>
    public static (double Share, Vec3 Place) MaxPenetration(FormedSheet formed, ITool tool)
    {
        var worst = (Share: 0.0, Place: default(Vec3));
        foreach (var t in formed.Sheet.Mesh.Triangles)
        {
            var (a, b, c) = (formed.Nodes[t.A], formed.Nodes[t.B], formed.Nodes[t.C]);
            var side = Math.Max((b - a).Length, Math.Max((c - b).Length, (a - c).Length));
            for (var i = 0; i <= 5; i++)
            {
                for (var j = 0; j <= 5 - i; j++)
                {
                    var place = a * (i / 5.0) + b * (j / 5.0) + c * ((5 - i - j) / 5.0);
                    var share = tool.SignedDistance(place) / side;
                    if (share < worst.Share) worst = (share, place);
                }
            }
        }
        return worst;
    }

    /// <summary>How deep the deepest node lies below the tool's surface, mm; at most 0.</summary>
    public static double MaxNodePenetration(FormedSheet formed, ITool tool) =>
        formed.Nodes.Min(p => Math.Min(0, tool.SignedDistance(p)));

    /// <summary>How many triangles lie on the tool, all three corners, with their lower side out.</summary>
    public static int InvertedCount(FormedSheet formed, ITool tool) => formed.Sheet.Mesh.Triangles.Count(t =>
    {
        if (formed.ContactOrder[t.A] < 0 || formed.ContactOrder[t.B] < 0 || formed.ContactOrder[t.C] < 0) return false;
        var (a, b, c) = (formed.Nodes[t.A], formed.Nodes[t.B], formed.Nodes[t.C]);
        var normal = (b - a).Cross(c - a);
        // A step out of the surface must lead away from the tool.
        var (middle, step) = ((a + b + c) * (1.0 / 3), normal * (0.05 / Math.Sqrt(normal.Length)));
        return tool.SignedDistance(middle + step) < tool.SignedDistance(middle - step);
    });
}
