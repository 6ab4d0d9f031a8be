using Microsoft.Playwright;

namespace BuckGen.References.Tests.Browser;

/// <summary>A report in a browser, and what it complained of and asked for since it was opened.</summary>
internal sealed class OpenReport : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly string address;
    private readonly List<string> errors = [], requests = [];

    public OpenReport(IBrowserContext context, IPage page, string address)
    {
        (this.context, Page, this.address) = (context, page, address);
        page.Console += (_, said) => { if (said.Type is "error" or "warning") errors.Add($"{said.Type}: {said.Text}"); };
        page.PageError += (_, error) => errors.Add(error);
        context.Request += (_, request) => requests.Add(request.Url);
    }

    public IPage Page { get; }

    /// <summary>Errors and warnings of the page and its script.</summary>
    public IReadOnlyList<string> Errors => errors;

    /// <summary>What was asked for beside the report itself.</summary>
    public IEnumerable<string> ExternalRequests =>
        requests.Where(r => r.Split('#')[0] != address && !r.StartsWith("data:", StringComparison.Ordinal)
            && !r.StartsWith("blob:", StringComparison.Ordinal));

    public async Task Load() => await Page.GotoAsync(address);

    /// <summary>Lines that a script finds wanting on the page.</summary>
    public Task<string[]> Faults(string script) => Page.EvaluateAsync<string[]>(script);

    public async ValueTask DisposeAsync() => await context.CloseAsync();
}
