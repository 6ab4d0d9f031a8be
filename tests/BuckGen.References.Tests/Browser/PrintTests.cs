using System.Text;
using BuckGen.References.Tests.Support;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace BuckGen.References.Tests.Browser;

/// <summary>The report on office paper.</summary>
[Collection(BrowserTests.Name)]
public class PrintTests(ReportBrowser browser)
{
    /// <summary>What the page leaves free at each side, mm: its own rule for paper.</summary>
    private const double Margin = 12;

    private static readonly string[] Sizes = ["A4", "Letter"];

    public static TheoryData<string, string> Papers { get; } = new(Looks.Examples.SelectMany(e => Sizes.Select(p => (e, p))));

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Every_heading_is_printed_and_no_text_leaves_the_paper(string example, string paper)
    {
        var report = await browser.Show(example, Window.Desktop);
        var headings = await report.Page
            .EvaluateAsync<string[]>("() => [...document.querySelectorAll('h1, h2, h3')].map(h => h.textContent)");
        var captions =
            await report.Page
                .EvaluateAsync<string[]>(
                    "() => [...document.querySelectorAll('figcaption:not(#view-help)')].map(h => h.textContent)");

        using var printed = PdfDocument.Open(await report.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = false }));
        var pages = printed.GetPages().ToList();
        Assert.InRange(pages.Count, 3, 18);

        var text = Bare(string.Concat(pages.Select(p => p.Text)));
        Faults.None(headings.Concat(captions).Where(h => !text.Contains(Bare(h), StringComparison.Ordinal))
            .Select(h => $"not printed: {h}"));
        Faults.None(pages.SelectMany(p => p.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value))
            .Where(l => l.BoundingBox.Left < 0 || l.BoundingBox.Bottom < 0 || l.BoundingBox.Right > p.Width
                || l.BoundingBox.Top > p.Height)
            .Select(l => $"page {p.Number}: {l.Value} at {l.BoundingBox}")));
        Faults.None(pages.Where(p => p.Letters.Count(l => !string.IsNullOrWhiteSpace(l.Value)) < 20)
            .Select(p => $"page {p.Number} is all but empty: {p.Text}"));
    }

    // A browser shrinks a print that is too wide; so it is measured as laid out for the paper, before that.
    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Nothing_is_wider_than_the_paper(string example, string paper)
    {
        await using var report = await browser.Open(example, Window.Desktop, turnable: false);
        var width = ((paper == "A4" ? 210 : 215.9) - 2 * Margin) / 25.4 * 96;
        await report.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await report.Page.SetViewportSizeAsync((int)width, 900);

        Faults.None(await report.Faults("""
            () => [...document.body.querySelectorAll('*')].map(e => [e, e.getBoundingClientRect()]).filter(([, b]) => b.width > 0 && (b.right > document.documentElement.clientWidth + 1 || b.left < -1))
              .map(([e, b]) => `${e.tagName} "${(e.textContent || '').slice(0, 40)}" reaches from ${b.left} to ${b.right}`)
              .concat([...document.body.querySelectorAll('*')].filter(e => e.namespaceURI.endsWith('xhtml') && e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0).map(e => `${e.tagName}.${e.className} hides ${e.scrollWidth - e.clientWidth} px`))
            """));
    }

    /// <summary>Letters without blanks, since a printed line breaks where it will; the font's joined letters apart.</summary>
    private static string Bare(string text) =>
        string.Concat(text.Normalize(NormalizationForm.FormKD).Where(c => !char.IsWhiteSpace(c)));
}
