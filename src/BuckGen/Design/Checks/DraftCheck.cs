using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Does the part come off?</summary>
internal sealed class DraftCheck : IDesignCheck
{
    public string Name => "draft";

    public IEnumerable<Finding> Run(DesignView design)
    {
        var side = design.Shape.Side;
        // The steepest stretch holds the part longest.
        var steepest = side.Pieces.Where(p => !p.IsLedge).MinBy(p => p.Draft);
        var draft = steepest.Draft;
        var where = side.StraightDraft is not null ? ""
            : FormattableString.Invariant($" from {steepest.Start.FromFlange:0.##} to {steepest.End.FromFlange:0.##} mm ")
                + "from the flange";
        var (minDraft, source) = design.Limits.MinDraft;
        var published = design.Limits.PublishedDraft;
        if (draft < 0)
            yield return new("undercut", Severity.Error,
                FormattableString.Invariant($"The walls lean {-draft:0.##} degrees the wrong way: the part locks on the buck."),
                "Turn the shape over, or give the walls a draft above 0.")
            {
                Value = draft,
                Limit = 0,
            };
        else if (draft == 0 && design.IsMale)
            yield return new("draft-locks", Severity.Error,
                $"The walls are upright{where}: the sheet shrinks onto a male buck as it cools and does not come off.",
                FormattableString.Invariant(
                    $"Give the walls {minDraft:0.##} degrees or more, or use a cavity: the part shrinks away from its walls."))
            {
                Value = 0,
                Limit = minDraft,
                Source = "SPE Thermoforming Quarterly 25(1), 2006: male moulds need draft, cavities may do without",
            };
        else if (draft < minDraft)
            yield return new("draft-low", Severity.Warning,
                FormattableString.Invariant(
                    $"A draft of {draft:0.##} degrees{where} is small for a {(design.IsMale ? "male buck" : "cavity")}; ")
                    + FormattableString.Invariant(
                        $"{minDraft:0.##} is the minimum here, published figures range from {published.Low:0.##} to ")
                        + FormattableString.Invariant($"{published.High:0.##}."),
                design.IsMale ? "Give the walls 5 degrees where the shape allows it, and sand them smooth."
                    : "Polish the walls, or give them more draft.")
            {
                Value = draft,
                Limit = minDraft,
                Source = source,
            };
    }
}
