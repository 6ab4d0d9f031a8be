using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Findings;
using BuckGen.Output.Pictures;

namespace BuckGen.Output.Reports.Page;

/// <summary>What to know before cutting; a finding with a place leads to its ring on the plan, and the ring back to it.</summary>
internal static class FindingSection
{
    public static void Add(Html page, CutPlan plan, Summary s, ImmutableArray<Finding> findings)
    {
        page.Raw("<h2 id=\"findings\">Findings</h2>\n");
        // The picture comes first: a reader sees where things are before reading what they are.
        DrawingSections.Figure(page, PlanPicture.Draw(plan.Design, findings),
            $"The buck from above.{(findings.Any(f => f.Place is not null)
                ? " Numbered rings are the places of the findings below; dots are further places of the same kind." : "")}"
            + " The chain line A-A is where the section is cut.");
        if (s.Findings.IsEmpty) page.Raw("<p>None: the design can be cut.</p>\n");
        else
        {
            page.Raw("<ol class=\"findings\">\n");
            foreach (var kind in s.Findings.GroupBy(f => f.Number)) AddKind(page, [.. kind]);
            page.Raw("</ol>\n");
        }
    }

    private static void AddKind(Html page, ImmutableArray<FindingReport> kind)
    {
        var f = kind[0];
        var word = f.Severity.ToUpperInvariant();
        page.Line($"<li id=\"finding-{f.Number}\" class=\"{f.Severity}\"><span class=\"word\">{word}</span> {f.Message}");
        if (kind.Any(k => k.X is not null)) page.Line($" <a href=\"#place-{f.Number}\">Show {f.Number} on the plan</a>");
        page.Line($"<br>{(f.Silenced is { } reason ? $"Silenced: {reason}" : f.Remedy)}<br>");
        if (kind.Length > 1)
        {
            page.Line($"<details><summary>{kind.Length - 1} more like it</summary><ul>");
            foreach (var other in kind.Skip(1)) page.Line($"<li>{other.Message}{At(other)}</li>");
            page.Raw("</ul></details>\n");
        }

        page.Line($"<span class=\"small\">{f.Id}; source: {f.Source}</span></li>");
    }

    private static string At(FindingReport finding) =>
        finding is { X: { } x, Y: { } y } ? FormattableString.Invariant($" At {x:0.#}, {y:0.#}.") : "";
}
