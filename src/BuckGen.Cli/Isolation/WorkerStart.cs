using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>
/// The command line of the process with the plug-ins: a word, where it writes its lines, what is left out, and the command
/// itself.
/// </summary>
/// <param name="Pipe">The handle of the pipe.</param>
/// <param name="LeftOut">What is left out.</param>
/// <param name="Args">The command.</param>
internal sealed record WorkerStart(string Pipe, ImmutableArray<LeftOutPart> LeftOut, string[] Args)
{
    private const string Word = "isolated-run", EndOfLeftOut = "--";

    /// <summary>Half of the machine's memory, in the form the runtime reads: hexadecimal.</summary>
    private const string MemoryKey = "DOTNET_GCHeapHardLimitPercent", MemoryLimit = "32", OwnMemoryKey = "DOTNET_GCHeapHardLimit";

    /// <summary>Reads the arguments; null for those of a person.</summary>
    public static WorkerStart? Parse(string[] args)
    {
        if (args is not [Word, var pipe, .. var rest]) return null;
        var leftOut = ImmutableArray.CreateBuilder<LeftOutPart>();
        while (rest is [not EndOfLeftOut and var file, var part, var reason, .. var further])
        {
            leftOut.Add(new(file, part, reason));
            rest = further;
        }

        return new(pipe, leftOut.ToImmutable(), rest[1..]);
    }

    /// <summary>How this program is started again.</summary>
    public ProcessStartInfo Info()
    {
        var program = Environment.ProcessPath;
        var isOurs = Path.GetFileNameWithoutExtension(program) == "buckgen";
        var start = new ProcessStartInfo(isOurs ? program! : Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        IEnumerable<string> all =
            [.. isOurs ? [] : new[] { Path.Combine(AppContext.BaseDirectory, "buckgen.dll") }, Word, Pipe,
                .. LeftOut.SelectMany(l => new[] { l.File, l.Part, l.Reason }), EndOfLeftOut, .. Args];
        foreach (var argument in all) start.ArgumentList.Add(argument);
        if (!start.Environment.ContainsKey(OwnMemoryKey)) start.Environment.TryAdd(MemoryKey, MemoryLimit);
        return start;
    }
}
