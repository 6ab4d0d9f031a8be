using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Do the ledges of the side lie where boards meet?</summary>
internal sealed class LedgeCheck : IDesignCheck
{
    /// <summary>Sanding evens out less than this, mm (common practice, no source).</summary>
    private const double Sanded = 0.05;

    public string Name => "ledge";

    public IEnumerable<Finding> Run(DesignView design)
    {
        foreach (var ledge in design.Shape.Ledges)
        {
            var layer = design.Layers.FirstOrDefault(l =>
                l.Role == LayerRole.Wall && l.Bottom + Sanded < ledge && ledge < l.Top - Sanded);
            if (layer is null) continue;
            var nearest = ledge - layer.Bottom < layer.Top - ledge ? layer.Bottom : layer.Top;
            var from = design.Shape.FromFlange(nearest);
            yield return new("ledge-in-layer", Severity.Warning,
                FormattableString.Invariant($"A ledge lies within layer {layer.Number}, {Math.Abs(nearest - ledge):0.##} mm ")
                    + FormattableString.Invariant($"{(nearest < ledge ? "above its lower" : "below its upper")} face: ")
                    + "a layer is cut straight, so the ledge is not there when it is glued.",
                FormattableString.Invariant($"Change the heights so that the ledge lies {from:0.##} mm from the flange, ")
                    + FormattableString.Invariant($"{design.Shape.Side.Depth - from:0.##} mm from the face, where two boards ")
                    + "meet; or rout it.")
            {
                Height = ledge,
                Value = Math.Abs(nearest - ledge),
                Limit = Sanded,
                Source = "common practice, no source",
            };
        }
    }
}
