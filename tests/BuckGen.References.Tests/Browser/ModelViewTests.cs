using System.Text.Json;
using Microsoft.Playwright;

namespace BuckGen.References.Tests.Browser;

/// <summary>The turnable model of the report.</summary>
[Collection(BrowserTests.Name)]
public class ModelViewTests(ReportBrowser browser)
{
    /// <summary>How many colours there are, the share of the commonest, and a sum that differs where the picture does.</summary>
    private const string Look = """
        canvas => {
          const copy = new OffscreenCanvas(canvas.width, canvas.height), page = copy.getContext('2d');
          page.drawImage(canvas, 0, 0);
          const data = new Uint32Array(page.getImageData(0, 0, copy.width, copy.height).data.buffer), seen = new Map();
          let sum = 0;
          for (let i = 0; i < data.length; i++) { seen.set(data[i], (seen.get(data[i]) || 0) + 1); sum = (sum * 31 + data[i]) | 0; }
          return { colours: seen.size, commonest: Math.max(...seen.values()) / data.length, sum };
        }
        """;

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task It_is_drawn_and_turns(string example, Window window)
    {
        var report = await browser.Show(example, window);
        var canvas = report.Page.Locator("#view");
        await canvas.ScrollIntoViewIfNeededAsync();

        var first = await Looked(canvas);
        Assert.True(first.Colours > 30, $"only {first.Colours} colours");
        Assert.True(first.Commonest < 0.9, $"{first.Commonest:P0} of it is one colour");

        await canvas.FocusAsync();
        await report.Page.Keyboard.PressAsync("ArrowRight");
        var turned = await Looked(canvas);
        Assert.NotEqual(first.Sum, turned.Sum);

        await report.Page.Keyboard.PressAsync("+");
        var nearer = await Looked(canvas);
        Assert.NotEqual(turned.Sum, nearer.Sum);

        var box = (await canvas.BoundingBoxAsync())!;
        await report.Page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await report.Page.Mouse.DownAsync();
        await report.Page.Mouse.MoveAsync(box.X + box.Width / 2 + 60, box.Y + box.Height / 2 + 20, new() { Steps = 4 });
        await report.Page.Mouse.UpAsync();
        Assert.NotEqual(nearer.Sum, (await Looked(canvas)).Sum);
        Assert.Empty(report.Errors);
    }

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task Sheet_and_buck_are_chosen_by_their_buttons(string example, Window window)
    {
        var report = await browser.Show(example, window);
        var (canvas, buttons) = (report.Page.Locator("#view"), report.Page.Locator("#view-choice button"));
        await canvas.ScrollIntoViewIfNeededAsync();
        Assert.Equal(["Formed sheet", "Buck"], await buttons.AllTextContentsAsync());
        Assert.Equal("true", await buttons.Nth(0).GetAttributeAsync("aria-pressed"));
        // Another test may have turned it nearer; a button shows the whole model.
        await buttons.Nth(0).ClickAsync();
        var sheet = await Looked(canvas);

        await buttons.Nth(1).FocusAsync();
        await report.Page.Keyboard.PressAsync("Enter");

        Assert.Equal("true", await buttons.Nth(1).GetAttributeAsync("aria-pressed"));
        var buck = await Looked(canvas);
        Assert.NotEqual(sheet.Sum, buck.Sum);
        Assert.True(buck.Commonest < 0.9, $"{buck.Commonest:P0} of the buck's picture is one colour");

        await buttons.Nth(0).ClickAsync();
        Assert.Equal(sheet.Sum, (await Looked(canvas)).Sum);
        Assert.Empty(report.Errors);
    }

    [Theory]
    [MemberData(nameof(Looks.All), MemberType = typeof(Looks))]
    public async Task Without_three_dimensions_the_still_picture_stands_alone(string example, Window window)
    {
        var report = await browser.Show(example, window, turnable: false);

        Assert.False(await report.Page.Locator("#view").IsVisibleAsync());
        Assert.False(await report.Page.Locator("#view-help").IsVisibleAsync());
        Assert.True(await report.Page.Locator("svg[aria-label='The layers lifted apart']").IsVisibleAsync());
        Assert.Empty(report.Errors);
    }

    private static async Task<(int Colours, double Commonest, int Sum)> Looked(ILocator canvas)
    {
        var look = await canvas.EvaluateAsync<JsonElement>(Look);
        return (look.GetProperty("colours").GetInt32(), look.GetProperty("commonest").GetDouble(),
            look.GetProperty("sum").GetInt32());
    }
}
