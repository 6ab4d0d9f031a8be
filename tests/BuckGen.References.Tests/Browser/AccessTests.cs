using BuckGen.References.Tests.Support;
using Deque.AxeCore.Playwright;

namespace BuckGen.References.Tests.Browser;

/// <summary>The report as those use it who do not see it, or have no mouse, by the rules of axe.</summary>
[Collection(BrowserTests.Name)]
public class AccessTests(ReportBrowser browser)
{
    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task Axe_finds_nothing_serious(string example, Window window)
    {
        var report = await browser.Show(example, window);

        var result = await report.Page.RunAxe();

        // A run that checked nothing finds nothing.
        Assert.True(result.Passes.Length > 15, $"only {result.Passes.Length} rules passed");
        Faults.None(result.Violations.Where(v => v.Impact is "serious" or "critical")
            .SelectMany(v => v.Nodes.Select(n => $"{v.Id} ({v.Impact}): {v.Help}: {n.Html}")));
    }
}
