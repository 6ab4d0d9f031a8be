using System.Collections.Immutable;
using System.Text;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;

namespace BuckGen.Output.Folders;

/// <summary>
/// The record in an output folder of what was written there. Only what it lists, and only while it still has the same bytes,
/// counts as ours. A list can be forged or copied, but then it names what its author already has.
/// </summary>
/// <param name="Files">Sums by path.</param>
internal sealed record FolderRecord(ImmutableSortedDictionary<string, string> Files)
{
    /// <summary>Its name in the folder.</summary>
    public const string Path = ".buckgen-files";

    private const string Head =
        "# BuckGen wrote these files. It replaces and removes only those whose SHA-256 sums are still these.";
    private const string Tail = "# ";

    /// <summary>Folders that hold what this program writes.</summary>
    private static readonly ImmutableArray<string> KnownFolders =
        ["layers/", "cut/", "drill/", "jig/", "panel/", "model/", "templates/"];

    /// <summary>The record of an empty folder.</summary>
    public static FolderRecord Empty { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>The record of files.</summary>
    public static FolderRecord FromFiles(IEnumerable<OutputFile> files) =>
        new(files.ToImmutableSortedDictionary(f => f.Path, f => Contents.Sum(f.Content.AsSpan()), StringComparer.Ordinal));

    /// <summary>The record that lies in a folder; null when none does, or one that was changed or cut off.</summary>
    public static FolderRecord? In(string root)
    {
        var path = System.IO.Path.Combine(root, Path);
        // Nothing that follows a link, and no pipe.
        if (new FileInfo(path) is not { Exists: true, LinkTarget: null, Length: > 0 }) return null;
        return Parse(File.ReadAllText(path));
    }

    /// <summary>A record from its text; null when that isn't whole.</summary>
    public static FolderRecord? Parse(string text)
    {
        var lines = text.Split('\n');
        if (lines.Length < 3 || lines[0] != Head || lines[^1].Length > 0 || lines[^2] != Tail + SumOf(lines[..^2])) return null;
        var files = lines[1..^2].Select(FileSum.Parse).ToArray();
        return files.Any(f => f is null) || files.DistinctBy(f => f!.Value.Path).Count() < files.Length
            ? null
            : new(files.ToImmutableSortedDictionary(f => f!.Value.Path, f => f!.Value.Sum, StringComparer.Ordinal));
    }

    /// <summary>The record as a file; its last line proves the others.</summary>
    public OutputFile AsFile()
    {
        string[] lines = [Head, .. Files.Select(f => new FileSum(f.Key, f.Value).Line)];
        return new(Path, [.. Encoding.UTF8.GetBytes(string.Join('\n', [.. lines, Tail + SumOf(lines), ""]))]);
    }

    /// <summary>
    /// True for a path of the kind this program writes: one of its own folders and a plain file name. Nothing else is ever
    /// removed.
    /// </summary>
    public static bool MayList(string path) => OfFurtherBuck(path) is { } within
        ? within == OutputFiles.SummaryPath || MayListInOne(within)
        : MayListInOne(path);

    /// <summary>The rest of a path in the folder of a lid or of one buck of several; null for another path.</summary>
    private static string? OfFurtherBuck(string path) =>
        path.IndexOf('/', StringComparison.Ordinal) is var end and > 0 && BuckFolders.IsOne(path[..end])
            ? path[(end + 1)..] : null;

    private static bool MayListInOne(string path) =>
        path is OutputFiles.ProcessCardPath or OutputFiles.ReportPath or OutputFiles.PreviewPath || KnownFolders.Any(folder =>
            path.StartsWith(folder, StringComparison.Ordinal) && path.Length > folder.Length
            && path[folder.Length..].All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.')
            && !path.Contains("..", StringComparison.Ordinal));

    private static string SumOf(IEnumerable<string> lines) => Contents.Sum(Encoding.UTF8.GetBytes(string.Join('\n', lines)));
}
