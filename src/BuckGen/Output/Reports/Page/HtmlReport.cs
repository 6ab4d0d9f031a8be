using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using BuckGen.Cutting.Boards;
using BuckGen.Findings;

namespace BuckGen.Output.Reports.Page;

/// <summary>The whole job on one page for a person: opens offline, loads nothing, prints.</summary>
internal static class HtmlReport
{
    private static readonly string Style = Resource("report.css"), Script = Resource("report.js");

    /// <summary>The bytes of the page.</summary>
    /// <param name="plan">The design laid out on boards.</param>
    /// <param name="summary">Its numbers.</param>
    /// <param name="findings">The findings, as the summary lists them.</param>
    /// <param name="card">The process card; null for none.</param>
    /// <param name="models">What can be turned in three dimensions.</param>
    public static ImmutableArray<byte> Write(CutPlan plan, Summary summary, ImmutableArray<Finding> findings, string? card,
        ImmutableArray<ModelData> models)
    {
        var page = new Html();
        page.Raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            // Nothing may be fetched and nothing run but what stands in this file.
            .Raw($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src "
                + $"'sha256-{Hash(Style)}'; script-src 'sha256-{Hash(Script)}'; base-uri 'none'; form-action 'none'\">\n")
            .Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"generator\" "
                + "content=\"BuckGen\">\n")
            .Line($"<title>{summary.Title}</title>")
            .Raw($"<style>{Style}</style>\n</head>\n<body>\n");
        page.Raw("<a class=\"skip\" href=\"#findings\">To the findings</a>\n");
        PageHead.Add(page, summary);
        page.Raw("<main>\n");
        FindingSection.Add(page, plan, summary, findings);
        DrawingSections.Add(page, plan, models);
        if (card is not null)
            page.Raw("<h2 id=\"card\">Process card</h2>\n<pre tabindex=\"0\">").Raw(Html.EscapedLines(card)).Raw("</pre>\n");
        TableSections.Add(page, summary);
        page.Raw("</main>\n<footer><p>Made by BuckGen. The same job always makes the same page.</p></footer>\n");
        if (!models.IsEmpty) page.Raw($"<script id=\"models\" type=\"application/json\">{ModelData.All(models)}</script>\n");
        page.Raw($"<script>{Script}</script>\n");
        return [.. Encoding.UTF8.GetBytes(page.Raw("</body>\n</html>\n").ToString())];
    }

    private static string Hash(string text) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static string Resource(string name)
    {
        using var stream = typeof(HtmlReport).Assembly.GetManifestResourceStream($"BuckGen.Output.Reports.Page.{name}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
