using Microsoft.Playwright;

namespace BuckGen.References.Tests.Browser;

/// <summary>A finding leads to its place on the plan, and the place back to the finding.</summary>
[Collection(BrowserTests.Name)]
public class FindingPlaceTests(ReportBrowser browser)
{
    /// <summary>
    /// What is amiss with the place that was asked for: it must be in the window, on top, and stand out from the others.
    /// </summary>
    private const string PlaceFaults = """
        id => {
          const place = document.getElementById(id), faults = [];
          if (!place || place !== document.querySelector(':target')) return [`${id} is not what was chosen`];
          const b = place.getBoundingClientRect();
          if (b.width < 4 || b.top < 0 || b.left < 0 || b.bottom > innerHeight || b.right > innerWidth) faults.push(`${id} is out of sight: ${JSON.stringify(b)}`);
          for (let box = place.parentElement; box; box = box.parentElement) {
            const r = box.getBoundingClientRect();
            if (getComputedStyle(box).overflowX !== 'visible' && (b.left < r.left - 1 || b.right > r.right + 1)) faults.push(`${id} is scrolled out of its box`);
          }
          const ink = e => [...e.querySelectorAll('path')].map(p => getComputedStyle(p)).map(s => `${s.stroke} ${s.strokeWidth}`).join();
          for (const other of document.querySelectorAll('a.place')) if (other !== place && ink(other) === ink(place)) faults.push(`${id} looks like ${other.id}`);
          if (!document.elementsFromPoint(b.left + b.width / 2, b.top + b.height / 2).some(e => place.ownerSVGElement.contains(e))) faults.push(`${id} is covered`);
          return faults;
        }
        """;

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task A_finding_shows_its_place(string example, Window window)
    {
        var report = await browser.Show(example, window, turnable: false);
        var links = report.Page.Locator("ol.findings a[href^='#place-']");
        var count = await links.CountAsync();
        // Counters, letters without room, and where the predicted sheet folds or does not reach.
        if (example == "boathouse-sign") Assert.InRange(count, 6, 30);
        foreach (var byKey in (bool[])[false, true])
            for (var i = 0; i < count; i++)
            {
                var place = (await links.Nth(i).GetAttributeAsync("href"))![1..];
                await Choose(links.Nth(i), byKey);
                Assert.Empty(await report.Page.EvaluateAsync<string[]>(PlaceFaults, place));
            }
    }

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task A_place_shows_its_finding(string example, Window window)
    {
        var report = await browser.Show(example, window, turnable: false);
        var places = report.Page.Locator("a.place");
        for (var i = 0; i < await places.CountAsync(); i++)
        {
            var finding = (await places.Nth(i).GetAttributeAsync("href"))![1..];
            await Choose(places.Nth(i), byKey: true);
            Assert.Equal(
                ["true", "true", "true"],
                await report.Page.EvaluateAsync<string[]>(
                    "id => { const f = document.getElementById(id), b = f.getBoundingClientRect(), s = "
                    + "getComputedStyle(f); return [f.matches(':target'), b.top > -1 && b.top < innerHeight, "
                    + "s.backgroundColor !== 'rgba(0, 0, 0, 0)'].map(String); }", finding));
        }
    }

    private static async Task Choose(ILocator link, bool byKey)
    {
        if (!byKey)
        {
            await link.ClickAsync();
            return;
        }

        await link.FocusAsync();
        await link.PressAsync("Enter");
    }
}
