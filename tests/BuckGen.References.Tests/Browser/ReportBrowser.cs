using System.Diagnostics;
using BuckGen.References.Tests.Support;
using Microsoft.Playwright;

namespace BuckGen.References.Tests.Browser;

/// <summary>
/// A browser and the examples' reports, made once a run. Debian's own browser: Playwright's would have to be fetched.
/// </summary>
public sealed class ReportBrowser : IAsyncDisposable
{
    private const string WithoutModel =
        "const usual = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function "
        + "(kind, ...rest) { return kind.startsWith('webgl') ? null : usual.call(this, kind, ...rest); };";

    private readonly ScratchFolder scratch = new();
    private readonly Dictionary<string, string> reports = [];
    private readonly Dictionary<(string, Window, bool), OpenReport> shown = [];
    private readonly Dictionary<bool, IBrowser> browsers = [];
    private IPlaywright? playwright;

    /// <summary>A report that is opened once, for all tests that leave its layout as it is.</summary>
    /// <param name="example">Which example's.</param>
    /// <param name="window">Through which window.</param>
    /// <param name="turnable">As in <see cref="Open"/>.</param>
    internal async Task<OpenReport> Show(string example, Window window, bool turnable = true) =>
        shown.TryGetValue((example, window, turnable), out var open) ? open
            : shown[(example, window, turnable)] = await Open(example, window, turnable);

    /// <summary>A report opened anew from the disk, as its reader does, for a test that changes it.</summary>
    /// <param name="example">Which example's.</param>
    /// <param name="window">Through which window.</param>
    /// <param name="turnable">
    /// Whether the page may draw its turnable model. A software renderer takes most of a test's time for it.
    /// </param>
    internal async Task<OpenReport> Open(string example, Window window, bool turnable = true)
    {
        var report = Report(example);
        var (width, height) = Looks.Size(window);
        if (!browsers.TryGetValue(turnable, out var browser)) browser = browsers[turnable] = await Launched(turnable);
        var context =
            await browser
                .NewContextAsync(
                    new() { ViewportSize = new() { Width = width, Height = height }, ReducedMotion = ReducedMotion.Reduce });
        if (!turnable) await context.AddInitScriptAsync(WithoutModel);
        var open = new OpenReport(context, await context.NewPageAsync(), new Uri(report).AbsoluteUri);
        await open.Load();
        return open;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var browser in browsers.Values) await browser.CloseAsync();
        playwright?.Dispose();
        scratch.Dispose();
    }

    /// <summary>Path of an example's report, made by the command line as its reader makes it.</summary>
    private string Report(string example)
    {
        if (reports.TryGetValue(example, out var made)) return made;
        var folder = scratch.File($"{example}/x")[..^2];
        var job = Path.Combine(RepositoryFolder.Path, "examples", example, "job.toml");
        var run = ToolOutput
            .Capture(new ProcessStartInfo("dotnet",
                [Path.Combine(AppContext.BaseDirectory, "buckgen.dll"), "make", job, "--out", folder]), TimeSpan.FromMinutes(2));
        Assert.True(run.ExitCode == 0, run.All);
        return reports[example] = Path.Combine(folder, "report.html");
    }

    private async Task<IBrowser> Launched(bool turnable)
    {
        if (Found() is not { } program)
        {
            Reference.Miss("chromium is not here: apt-get install chromium");
            throw new UnreachableException();
        }

        playwright ??= await Playwright.CreateAsync();
        // No graphics card is needed: a software renderer draws the turnable model, and without one pages are drawn sooner.
        return await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = program,
            Args = ["--no-sandbox", .. turnable
                ? (string[])["--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"] : ["--disable-gpu"]],
        });
    }

    private static string? Found() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(f => Path.Combine(f, "chromium"))
            .FirstOrDefault(File.Exists);
}

/// <summary>Tests that share the browser and the reports.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<ReportBrowser>
{
    public const string Name = "Browser";
}
