using BuckGen.Intake.Outlines;
using System.Globalization;

namespace BuckGen.Output.Reports.Page;

/// <summary>The title block: what the job is, its numbers at a glance, and where things are on the page.</summary>
internal static class PageHead
{
    public static void Add(Html page, Summary s)
    {
        page.Raw("<header>\n").Line($"<h1>{s.Title}</h1>");
        var (outline, islands) = (s.Outline, s.Outline.Islands == 1 ? "1 island" : $"{s.Outline.Islands} islands");
        page.Line(
            $"<p>{Upper(s.Buck.Kind)} buck from {outline.Name}, {islands}, to size at the {s.Buck.OutlineAt}.</p>");
        page.Raw("<dl class=\"facts\">\n");
        foreach (var (what, value) in Facts(s)) page.Line($"<div><dt>{what}</dt><dd>{value}</dd></div>");
        page.Raw("</dl>\n");
        if (s.Part is { } part)
        {
            page.Raw("<h2>The finished part</h2>\n<dl class=\"facts\">\n");
            foreach (var (what, text) in PartRows.Create(part)) page.Line($"<div><dt>{what}</dt><dd>{text}</dd></div>");
            page.Raw("</dl>\n");
        }

        page.Raw("<nav aria-label=\"On this page\"><ul>");
        foreach (var (id, words) in (ReadOnlySpan<(string, string)>)[("findings", "Findings"), ("drawings", "Drawings"),
            s.Groups is null ? ("layers", "Layers") : ("jigs", "Jigs and panel"), ("boards", "Boards to cut"),
            ("tables", "Numbers"), ("files", "Files")])
            page.Line($"<li><a href=\"#{id}\">{words}</a></li>");
        page.Raw("</ul></nav>\n</header>\n");
    }

    private static IEnumerable<(string What, string Value)> Facts(Summary s)
    {
        yield return ("Depth of the buck", Text($"{s.Buck.Depth:0.##} mm (off by {s.Buck.DepthMiss:+0.##;-0.##;0})"));
        if (s.Groups is { Length: var bucks })
            yield return ("Made in", $"{CountText.Format(bucks, "buck")}, {CountText.Format(bucks, "heat")}");
        else yield return ("Stack", $"{CountText.Format(s.Layers.Length, "layer")}, " + Text($"{s.Buck.Height:0.##} mm high"));
        yield return ("Footprint", Text($"{s.Footprint.Width:0.0} x {s.Footprint.Height:0.0} mm"));
        yield return ("Draft", BuckWords.Draft(s.Buck));
        if (s.Buck.EdgeRadius is { } edge) yield return ("Upper edge", Text($"rounded to {edge:0.##} mm after gluing"));
        if (s.Blank is { } b)
        {
            yield return ("Blank",
                Text($"{b.Width:0} x {b.Height:0} mm of {b.Gauge:0.##} mm{(b.Plastic.Length > 0 ? " " + b.Plastic : "")}"));
            yield return ("Wall", s.Formed is { AtRest: true } f
                ? $"{RangeReport.Format(f.MeanRange)} on average over the part, thinnest "
                    + $"{RangeReport.Format(f.ThinnestRange)}; predicted"
                : Text($"{b.MeanThickness:0.##} mm on average over {BuckWords.AveragedOver(s.Buck)}, drawn ")
                    + Text($"{b.ArealDrawRatio:0.##} times"));
        }

        if (s.Air is { } air)
            yield return ("Vents", Text($"{air.VentsPlaced}, drill {s.Vents.FirstOrDefault()?.Drill}"));
        yield return ("To cut",
            Text($"{s.CutLength / 1000:0.0} m on {s.Boards.Length} board{(s.Boards.Length == 1 ? "" : "s")}"));
        if (s.Cost is { } cost)
            yield return ("Cost",
                Text($"{cost.MaterialByShare + cost.WorkCost:0.00} {cost.Currency}, {cost.Minutes:0} minutes").Trim());
    }

    private static string Upper(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
