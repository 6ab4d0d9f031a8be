using System.Text.Json;

namespace BuckGen.Dxf.Tests.Support;

/// <summary>The outline files that all test projects share, and what their manifest says of them.</summary>
internal static class CorpusFiles
{
    private static string Root { get; } = Path.Combine(SolutionFolder(), "tests", "corpus");

    public static IReadOnlyList<(string File, string Expect)> Manifest()
    {
        using var manifest = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Root, "manifest.json")));
        return [.. manifest.RootElement.GetProperty("files").EnumerateArray()
            .Select(file => (File: file.GetProperty("file").GetString()!, Expect: file.GetProperty("expect").GetString()!))
            .Where(file => file.File.EndsWith(".dxf", StringComparison.Ordinal))];
    }

    public static byte[] Bytes(string file) => File.ReadAllBytes(Path.Combine(Root, file));

    private static string SolutionFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "BuckGen.sln")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException("no BuckGen.sln above the tests");
    }
}
