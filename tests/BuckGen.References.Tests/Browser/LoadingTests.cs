using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Browser;

/// <summary>The report as a browser opens it from the disk.</summary>
[Collection(BrowserTests.Name)]
public class LoadingTests(ReportBrowser browser)
{
    /// <summary>Each picture is there, has a name for those who do not see it, and no text of it is cut off.</summary>
    private const string PictureFaults = """
        () => [...document.querySelectorAll('svg')].filter(s => !s.parentElement.closest('svg')).flatMap((s, i) => {
          const box = s.getBoundingClientRect(), name = s.getAttribute('aria-label') || '', what = `picture ${i + 1} "${name}"`;
          const faults = [];
          if (box.width < 100 || box.height < 20) faults.push(`${what} is ${box.width} by ${box.height}`);
          if (!name.trim()) faults.push(`${what} has no name`);
          if (s.querySelectorAll('path').length < 3) faults.push(`${what} has next to nothing on it`);
          for (const t of s.querySelectorAll('text')) {
            const b = t.getBoundingClientRect();
            if (b.left < box.left - 1 || b.right > box.right + 1 || b.top < box.top - 2 || b.bottom > box.bottom + 2) faults.push(`${what}: "${t.textContent}" sticks out`);
          }
          return faults;
        })
        """;

    /// <summary>Nothing is wider than the page, except in a box that scrolls.</summary>
    private const string WidthFaults = """
        () => {
          const wide = document.scrollingElement.clientWidth, faults = [];
          if (document.scrollingElement.scrollWidth > wide) faults.push(`the page is ${document.scrollingElement.scrollWidth} wide in a window of ${wide}`);
          const scrolls = e => { for (; e && e !== document.body; e = e.parentElement) if (['auto', 'scroll'].includes(getComputedStyle(e).overflowX)) return true; return false; };
          for (const e of document.body.querySelectorAll('*:not(.skip)')) {
            const b = e.getBoundingClientRect();
            if (b.width > 0 && (b.right > wide + 1 || b.left < -1) && !scrolls(e.parentElement)) faults.push(`${e.tagName} "${(e.textContent || '').slice(0, 40)}" reaches from ${b.left} to ${b.right}`);
          }
          return faults;
        }
        """;

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task It_complains_of_nothing_and_asks_for_nothing(string example, Window window)
    {
        var report = await browser.Show(example, window);
        // What is asked for late, by scrolling or by the script, is asked for by then.
        await report.Page
            .EvaluateAsync("() => { scrollTo(0, document.body.scrollHeight); return new Promise(r => setTimeout(r, 300)); }");

        Assert.Empty(report.Errors);
        Assert.Empty(report.ExternalRequests);
    }

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task Every_picture_is_there_with_a_name_and_its_whole_text(string example, Window window)
    {
        var report = await browser.Show(example, window);

        Assert.True(await report.Page.Locator("figure svg").CountAsync() >= 8, "pictures are missing");
        Faults.None(await report.Faults(PictureFaults));
    }

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task Nothing_is_wider_than_the_page(string example, Window window)
    {
        var report = await browser.Show(example, window);

        Faults.None(await report.Faults(WidthFaults));
    }

    // 9 px is what a phone still shows as letters.
    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task The_words_on_a_picture_can_be_read(string example, Window window)
    {
        var report = await browser.Show(example, window);

        Faults.None(await report.Faults("""
            () => [...document.querySelectorAll('svg text')].map(t => [t, t.getScreenCTM()]).map(([t, m]) => [t.textContent, parseFloat(t.getAttribute('font-size')) * Math.hypot(m.a, m.b)])
              .filter(([, size]) => size < 9).map(([words, size]) => `"${words}" is ${size.toFixed(1)} px high`)
            """));
    }
}
