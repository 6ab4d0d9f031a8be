using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>The path of a node in the last step.</summary>
internal static class ContactPath
{
    /// <summary>Where a path that ends inside a solid meets its surface.</summary>
    /// <param name="gapAt">Signed distance from the solid, mm.</param>
    /// <param name="end">End of the path.</param>
    /// <param name="step">Displacement along it, as the solid sees it, mm.</param>
    /// <param name="tolerance">How exactly, mm.</param>
    public static Vec3 Meet(Func<Vec3, double> gapAt, Vec3 end, Vec3 step, double tolerance)
    {
        var (outside, inside) = (0.0, 1.0);
        // A node that starts inside stays where it was.
        if (gapAt(end - step) <= 0) return end - step;
        while ((inside - outside) * step.Length > tolerance)
        {
            var middle = (outside + inside) / 2;
            if (gapAt(end - step * (1 - middle)) > 0) outside = middle;
            else inside = middle;
        }

        return end - step * (1 - inside);
    }
}
