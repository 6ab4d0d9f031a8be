using System.Collections.Immutable;

namespace BuckGen.Cutting.Drilling;

/// <summary>The holes drilled in one go: one layer on the machine, one bit in the spindle.</summary>
internal sealed class DrillRun
{
    private DrillRun(int layer, double diameter, ImmutableArray<DrillHole> holes) =>
        (Layer, Diameter, Holes) = (layer, diameter, holes);

    /// <summary>Number of the layer, 1 = lowest.</summary>
    public int Layer { get; }

    /// <summary>Diameter of the bit, mm, to three decimals.</summary>
    public double Diameter { get; }

    /// <summary>The holes, at least one, in the order of drilling.</summary>
    public ImmutableArray<DrillHole> Holes { get; }

    /// <summary>Length of the way from the origin through the holes, mm.</summary>
    public double PathLength => DrillPath.Length(Holes.Select(h => h.Centre));

    /// <summary>Sorts holes into runs: by layer, then by diameter, each with its holes along a short path.</summary>
    /// <param name="holes">The holes; diameters that agree to 0.001 mm are taken as one.</param>
    /// <exception cref="DrillException">A hole has a number out of range.</exception>
    public static ImmutableArray<DrillRun> Split(IReadOnlyList<DrillHole> holes)
    {
        ArgumentNullException.ThrowIfNull(holes);
        foreach (var hole in holes) hole.Validate();
        return [.. holes
            .GroupBy(h => (h.Layer, Diameter: DrillText.Rounded(h.Diameter)))
            .OrderBy(g => g.Key)
            .Select(g => new DrillRun(g.Key.Layer, g.Key.Diameter, Ordered(g)))];
    }

    private static ImmutableArray<DrillHole> Ordered(IEnumerable<DrillHole> holes)
    {
        // Holes at one place go by depth and reason, so that the order they come in never matters.
        var sorted = holes.OrderBy(h => h.Depth).ThenBy(h => h.Reason, StringComparer.Ordinal).ToArray();
        return [.. DrillPath.Order([.. sorted.Select(h => h.Centre)]).Select(i => sorted[i])];
    }
}
