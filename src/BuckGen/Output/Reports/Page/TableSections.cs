using System.Collections.Immutable;
using System.Globalization;

namespace BuckGen.Output.Reports.Page;

/// <summary>Tables: layers, vents, cost, limits, files; and the cautions.</summary>
internal static class TableSections
{
    public static void Add(Html page, Summary s)
    {
        page.Raw("<h2 id=\"tables\">Numbers</h2>\n");
        if (s.Groups is { } groups) AddGroups(page, groups);
        else Table(page, "Layers", ["Layer", "Stock", "From, mm", "To, mm", "Pieces", "Cut, m"], s.Layers.Select(l =>
            (string[])[Text($"{l.Number}{(l.Role == "wall" ? "" : " (" + l.Role + ")")}"), l.Stock, Text($"{l.Bottom:0.##}"),
                Text($"{l.Top:0.##}"), Text($"{l.Islands}"), Text($"{l.CutLength / 1000:0.00}")]), 2);
        if (s.Vents.Length > 0)
            Table(page, "Vents", ["Why", "Drill", "How many", "Diameter, mm", "On layer"],
                s.Vents.GroupBy(v => (v.Reason, v.Drill, v.Diameter, v.Layer)).Select(g =>
                (string[])[g.Key.Reason, g.Key.Drill, Text($"{g.Count()}"), Text($"{g.Key.Diameter:0.##}"),
                    Text($"{g.Key.Layer}")]), 2);
        if (s.Cost is { } cost)
        {
            Table(page, "Cost and time", ["What", "Amount", "Minutes", CostRows.PriceHeading(cost)],
            [
                .. CostRows.Create(cost),
                ["Together, material by share", "", Text($"{cost.Minutes:0}"),
                    CostRows.Money(cost.MaterialByShare + cost.WorkCost)],
                ["Together, material bought whole", "", Text($"{cost.Minutes:0}"),
                    CostRows.Money(cost.MaterialWhole + cost.WorkCost)],
            ], 1);
            if (cost.Missing.Length > 0)
                page.Line($"<p class=\"small\">Not in the sums, because not given: {string.Join(", ", cost.Missing)}.</p>");
        }

        Table(page, "Limits of the checks", ["Limit", "Value", "Source"],
            s.Checks.Limits.Select(l => (string[])[l.Word, Text($"{l.Value:0.##} {l.Unit}"), l.Source]), 9);
        page.Raw("<div class=\"care\"><h3>Take care</h3><p>Laser: only what its maker allows, with exhaust, never "
            + "unattended, never PVC or vinyl. Wood and MDF dust: extraction and a mask. ")
            .Raw("Heater and hot sheet: gloves and distance. Routers, saws and knives: guards, and the work held down. A "
                + "wooden buck is not a food-safe tool. ")
            .Raw("Local rules, the supplier's data sheet and licensed practice come before anything on this page.</p></div>\n");
        page.Raw("<h2 id=\"files\">Files</h2>\n<ul>\n");
        foreach (var file in s.Files) page.Line($"<li><a href=\"{file}\">{file}</a></li>");
        page.Raw("</ul>\n");
    }

    /// <summary>The bucks of a sign, with the way to the report of each.</summary>
    private static void AddGroups(Html page, ImmutableArray<GroupReport> groups)
    {
        Table(page, "Bucks", ["Buck", "Folder", "Islands", "From x, mm", "To x, mm", "Blank, mm", "Wall, mm", "Boards", "Errors"],
            groups.Select(g => (string[])[Text($"{g.Number}"), g.Folder, Text($"{g.Islands.Length}"),
                Text($"{g.Bounds.MinX:0.#}"), Text($"{g.Bounds.MaxX:0.#}"), Text($"{g.BlankWidth:0} x {g.BlankHeight:0}"),
                Text($"{g.MeanThickness:0.##}"),
                Text($"{g.Boards}"), Text($"{g.Errors}")]), 2);
        page.Raw("<ul>\n");
        foreach (var g in groups)
            page.Line($"<li><a href=\"{g.Folder}/report.html\">Report of buck {g.Number}</a></li>");
        page.Raw("</ul>\n");
    }

    /// <summary>A table with a caption; from a column on, cells are numbers and stand on the right.</summary>
    public static void Table(Html page, string caption, string[] heads, IEnumerable<string[]> rows, int numbersFrom)
    {
        string Class(int column) => column >= numbersFrom ? " class=\"number\"" : "";
        page.Line($"<h3>{caption}</h3>").Raw("<div class=\"wide\" tabindex=\"0\" role=\"region\"")
            .Raw($" aria-label=\"{Html.Escaped(caption)}\"><table><thead><tr>");
        foreach (var (head, i) in heads.Select((h, i) => (h, i))) page.Raw($"<th scope=\"col\"{Class(i)}>")
            .Raw(Html.Escaped(head)).Raw("</th>");
        page.Raw("</tr></thead><tbody>\n");
        foreach (var row in rows)
        {
            page.Raw("<tr>");
            foreach (var (cell, i) in row.Select((c, i) => (c, i))) page.Raw($"<td{Class(i)}>").Raw(Html.Escaped(cell))
                .Raw("</td>");
            page.Raw("</tr>\n");
        }

        page.Raw("</tbody></table></div>\n");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
