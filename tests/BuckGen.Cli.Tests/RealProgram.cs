using System.Diagnostics;

namespace BuckGen.Cli.Tests;

/// <summary>The program as a shell starts it, for what only shows in a process of its own.</summary>
internal static class RealProgram
{
    /// <summary>Nothing here may take as long.</summary>
    private static readonly TimeSpan Limit = TimeSpan.FromMinutes(3);

    public static Cli Run(string folder, params string[] args) => Run(folder, new Dictionary<string, string>(), args);

    public static Cli Run(string folder, Dictionary<string, string> environment, params string[] args)
    {
        using var process = Start(folder, environment, args);
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (!process.WaitForExit(Limit))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"buckgen {string.Join(' ', args)} did not end within {Limit}.");
        }

        return new(process.ExitCode, output.Result, error.Result);
    }

    /// <summary>Starts it and lets it run.</summary>
    public static Process Start(string folder, Dictionary<string, string> environment, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "buckgen.dll"), .. args])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // The maker's own folder of plug-ins takes no part.
        start.Environment["XDG_CONFIG_HOME"] = folder;
        foreach (var (key, value) in environment) start.Environment[key] = value;
        var process = Process.Start(start)!;
        process.StandardInput.Close();
        return process;
    }
}
