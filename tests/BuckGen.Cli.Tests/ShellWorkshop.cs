using System.Diagnostics;

namespace BuckGen.Cli.Tests;

/// <summary>A workshop with a shell that starts the real program.</summary>
public abstract class ShellWorkshop : Workshop
{
    protected static string Program => $"dotnet \"{Path.Combine(AppContext.BaseDirectory, "buckgen.dll")}\"";

    protected Process Start(string shell, string command) =>
        Process.Start(
            new ProcessStartInfo(shell, ["-c", command])
            {
                WorkingDirectory = Folder,
                RedirectStandardError = true,
                RedirectStandardOutput = true
            })!;
}
