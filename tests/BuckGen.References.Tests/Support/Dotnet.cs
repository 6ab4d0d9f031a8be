using System.Diagnostics;

namespace BuckGen.References.Tests.Support;

/// <summary>The SDK's own program, with the settings of whoever runs the tests: packages come from where theirs do.</summary>
internal static class Dotnet
{
    /// <summary>Runs it to its end.</summary>
    /// <param name="folder">Where it runs.</param>
    /// <param name="packages">Its cache of packages; null for the machine's.</param>
    /// <param name="arguments">What it is to do.</param>
    public static ToolOutput Run(string folder, string? packages, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = folder };
        // A server left running would hold the output open for ever.
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        start.Environment["UseSharedCompilation"] = "false";
        start.Environment["DOTNET_CLI_USE_MSBUILD_SERVER"] = "0";
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        if (packages is not null) start.Environment["NUGET_PACKAGES"] = packages;
        return ToolOutput.Capture(start, TimeSpan.FromMinutes(5));
    }
}
