using BuckGen.Findings;
using BuckGen.Geometry.Facing;

namespace BuckGen.Design.Checks;

/// <summary>Is there wood so narrow that it breaks?</summary>
internal sealed class NeckCheck : IDesignCheck
{
    public string Name => "neck";

    /// <summary>
    /// A neck is reported when the way round it is this many times longer than the neck is wide; shorter ones are corners.
    /// </summary>
    private const double LongEnough = 3;

    public IEnumerable<Finding> Run(DesignView design)
    {
        // A male buck is narrowest at its face; between the pockets of a cavity wood is narrowest at the rim.
        var edge = design.Shape.At(design.Shape.Face);
        var minNeck = design.Checks.MinNeck;
        var necks = FacingEdges.Within(edge, minNeck, width => LongEnough * width)
            .Where(p => p.ThroughWood == design.IsMale).ToArray();
        if (necks.Length == 0) yield break;
        var more = necks.Length > 1 ? FormattableString.Invariant($", and narrow in {necks.Length - 1} more places") : "";
        yield return new("neck-fragile", Severity.Warning,
            FormattableString.Invariant($"The wood is only {necks[0].Width:0.##} mm wide{more}; ")
                + FormattableString.Invariant($"under {minNeck:0.##} mm it breaks in gluing, sanding or forming."),
            "Make it wider, or glue a stronger material in there.")
        {
            Place = necks[0].Middle,
            Height = design.Shape.Face,
            Value = necks[0].Width,
            Limit = minNeck,
            Source = "common practice, no source",
        };
    }
}
