using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>Is the part too deep for plain vacuum forming?</summary>
internal sealed class DepthCheck : IDesignCheck
{
    public string Name => "depth";

    public IEnumerable<Finding> Run(DesignView design)
    {
        var widest = design.Shape.At(design.IsMale ? design.Shape.Foot : design.Shape.Face);
        var (limit, source) = design.Limits.MaxDepthToWidth;
        var circles = widest.Islands.Select(LargestCircle.In).Where(c => design.Plan.Depth / (2 * c.Radius) > limit)
            .OrderBy(c => c.Radius).ToArray();
        if (circles.Length == 0) yield break;
        var narrow = circles[0];
        var plugged = design.Former.PlugGap is not null;
        var ratio = design.Plan.Depth / (2 * narrow.Radius);
        var parts = circles.Length == 1 ? "A part"
            : FormattableString.Invariant($"{circles.Length} parts are too deep for their width. The narrowest");
        var way = design.IsMale ? "draping over a buck"
            : plugged ? "a cavity with a plug"
            : "a plain cavity; published limits run from 0.5 to 0.75";
        yield return new("too-deep", Severity.Warning,
            FormattableString.Invariant($"{parts} is {2 * narrow.Radius:0.#} mm wide and {design.Plan.Depth:0.#} mm deep, ")
                + FormattableString.Invariant($"{ratio:0.##} times its width; the limit is {limit:0.##} for {way}."),
            design.IsMale ? "Make it lower (depth) or wider." : plugged
                ? "Make it shallower (depth) or wider, or drape the sheet over a male buck (kind)."
                : "Make it shallower (depth) or wider, push the sheet in with a plug (plug-gap), or drape it over a male buck "
                    + "(kind).")
        {
            Place = narrow.Centre,
            Value = ratio,
            Limit = limit,
            Source = source,
        };
    }
}
