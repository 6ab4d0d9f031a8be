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
        if (s.Findings.IsEmpty) page.Raw("<p>None: the design can be cut.</p>\n");
        else
        {
            page.Raw("<ol class=\"findings\">\n");
            foreach (var f in s.Findings)
            {
                var word = f.Severity.ToUpperInvariant();
                page.Line($"<li id=\"finding-{f.Number}\" class=\"{f.Severity}\"><span class=\"word\">{word}</span> {f.Message}");
                if (f.X is not null) page.Line($" <a href=\"#place-{f.Number}\">Show {f.Number} on the plan</a>");
                page.Line($"<br>{(f.Silenced is { } reason ? $"Silenced: {reason}"
                    : f.Remedy)}<br><span class=\"small\">{f.Id}; source: {f.Source}</span></li>");
            }

            page.Raw("</ol>\n");
        }

        DrawingSections.Figure(page, PlanPicture.Draw(plan.Design, findings),
            "The buck from above. Numbered rings are the places of the findings above; the chain line A-A is where the "
            + "section is cut.");
    }
}
