using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>Does the sheet reach the bottom of counters?</summary>
internal sealed class CounterCheck : IDesignCheck
{
    public string Name => "counter";

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (!design.IsMale) yield break;
        var depth = design.Plan.Depth;
        // A counter is a cavity, widest at the face; the limit of a cavity holds.
        var (limit, source) = design.Limits.MaxCavityDepthToWidth;
        var counters = design.Shape.At(design.Shape.Face).Islands.SelectMany(i => i.Holes)
            .Select(h => LargestCircle.In(new(h.Reversed(), [])))
            .Where(c => depth / (2 * c.Radius) > limit).OrderBy(c => c.Radius).ToArray();
        if (counters.Length == 0) yield break;
        var ratio = depth / (2 * counters[0].Radius);
        var which = counters.Length == 1 ? "A counter"
            : FormattableString.Invariant($"{counters.Length} counters are too deep for their width. The narrowest");
        yield return new("counter-deep", Severity.Warning,
            FormattableString.Invariant($"{which} is {2 * counters[0].Radius:0.##} mm wide at the face and {depth:0.#} mm deep, ")
                + FormattableString.Invariant($"{ratio:0.##} times its width: the sheet bridges it or tears in it."),
            "Fill it in the drawing, make it wider or the part lower (depth), and vent it well (vents).")
        {
            Place = counters[0].Centre,
            Height = design.Shape.Face,
            Value = ratio,
            Limit = limit,
            Source = source,
        };
    }
}
