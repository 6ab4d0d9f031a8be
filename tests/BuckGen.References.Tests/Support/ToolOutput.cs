using System.Diagnostics;

namespace BuckGen.References.Tests.Support;

/// <summary>What a program left behind.</summary>
internal sealed record ToolOutput(int ExitCode, string Output, string Error)
{
    /// <summary>Everything it printed.</summary>
    public string All => Output + Error;

    /// <summary>Runs a program to its end.</summary>
    public static ToolOutput Capture(ProcessStartInfo start, TimeSpan limit)
    {
        start.RedirectStandardOutput = start.RedirectStandardError = true;
        using var process = Process.Start(start)!;
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (!process.WaitForExit(limit))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException(
                $"{start.FileName} {string.Join(' ', start.ArgumentList)} did not end within {limit.TotalSeconds:F0} s");
        }

        return new(process.ExitCode, output.Result, error.Result);
    }
}
