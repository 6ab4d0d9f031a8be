using System.Collections.Immutable;
using System.Text;
using BuckGen.Cli.Printing;
using BuckGen.Jobs;
using BuckGen.Plugins;
using BuckGen.Quantities;
using Spectre.Console;

namespace BuckGen.Cli.Terminals;

/// <summary>The program's two streams: results go to the output, messages and progress to the error stream.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Error">Error lines and progress.</param>
/// <param name="OutRedirected">True when <paramref name="Out"/> is no terminal.</param>
/// <param name="ErrorRedirected">True when <paramref name="Error"/> is no terminal.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error, bool OutRedirected = true, bool ErrorRedirected = true)
{
    /// <summary>Columns used where the width of the window is not known.</summary>
    private const int DefaultWidth = 100;

    /// <summary>The maker's own folder of plug-ins; null for none.</summary>
    public string? PluginFolder { get; init; }

    /// <summary>How plug-ins are called.</summary>
    public PluginRun PluginRun { get; init; } = PluginRun.Default;

    /// <summary>A message to people, on the error stream: one line of visible characters.</summary>
    public void WriteMessage(string message) => Error.WriteLine(VisibleText.Escape(message, Printing.Printer.MaxMessageLength));

    /// <summary>A result for people, in one line of visible characters.</summary>
    public void WriteResult(string answer) => Out.WriteLine(VisibleText.Escape(answer));

    /// <summary>A result for a program.</summary>
    /// <param name="json">JSON in UTF-8, without hidden characters.</param>
    public void WriteJson(ImmutableArray<byte> json) => Out.Write(Encoding.UTF8.GetString(json.AsSpan()));

    /// <summary>What another process of this program printed, which is visible already.</summary>
    public void Relay(string answers, string messages)
    {
        Error.Write(messages);
        Out.Write(answers);
    }

    /// <summary>Prints results for people.</summary>
    public Printer Printer()
    {
        var console = AnsiConsole.Create(new()
        {
            Out = new AnsiConsoleOutput(Out),
            Ansi = OutRedirected ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = OutRedirected ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Interactive = InteractionSupport.No,
        });
        if (OutRedirected) console.Profile.Width = DefaultWidth;
        return new(console);
    }

    /// <summary>Does the work of a job; shows each step meanwhile, but only to a person.</summary>
    public T RunWithProgress<T>(string what, Func<IProgress<JobProgress>?, T> work)
    {
        if (ErrorRedirected) return work(null);
        var console = AnsiConsole.Create(new() { Out = new AnsiConsoleOutput(Error) });
        return console.Status().Start(StatusText(what), status => work(new StatusLine(status, what)));
    }

    /// <summary>Does some work; shows a line about it meanwhile, but only to a person.</summary>
    public T RunWithStatus<T>(string what, Func<T> work)
    {
        if (ErrorRedirected) return work();
        var console = AnsiConsole.Create(new() { Out = new AnsiConsoleOutput(Error) });
        return console.Status().Start(StatusText(what), _ => work());
    }

    private static string StatusText(string text) => Markup.Escape(VisibleText.Escape(text, Printing.Printer.MaxMessageLength));

    /// <summary>Shows steps at once; the usual receiver of progress would wait for another thread.</summary>
    private sealed class StatusLine(StatusContext status, string what) : IProgress<JobProgress>
    {
        public void Report(JobProgress value) =>
            status.Status(StatusText($"{what}: {value.Step} ({value.Number} of {value.Total})"));
    }
}
