using System.Collections.Immutable;
using System.Text.Json;

namespace BuckGen.Output;

/// <summary>Puts finished files into a folder so that an interrupted run leaves the last complete result.</summary>
public static class OutputFolder
{
    /// <summary>Ending of files that are not complete yet.</summary>
    private const string Unfinished = ".unfinished";

    /// <summary>
    /// Writes all files under temporary names, moves them into place with the summary last, and removes what an earlier
    /// run of this program listed in its summary and this run did not make. Other files are left alone.
    /// </summary>
    /// <param name="folder">The output folder; made when missing.</param>
    /// <param name="files">The files.</param>
    /// <exception cref="IOException">The folder can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void Write(string folder, ImmutableArray<OutputFile> files)
    {
        var root = Path.GetFullPath(folder);
        var stale = EarlierFiles(root).Except(files.Select(f => f.Path), StringComparer.Ordinal).ToArray();
        foreach (var file in files)
        {
            var path = Path.Combine(root, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path + Unfinished, [.. file.Content]);
        }

        foreach (var file in files.OrderBy(f => f.Path == OutputFiles.SummaryPath))
            File.Move(Path.Combine(root, file.Path) + Unfinished, Path.Combine(root, file.Path), overwrite: true);
        foreach (var path in stale) File.Delete(Path.Combine(root, path));
    }

    /// <summary>The files that the summary in the folder lists, as far as they lie inside it.</summary>
    private static IEnumerable<string> EarlierFiles(string root)
    {
        var summary = Path.Combine(root, OutputFiles.SummaryPath);
        if (!File.Exists(summary)) return [];
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(summary));
            if (json.RootElement.ValueKind != JsonValueKind.Object || !json.RootElement.TryGetProperty("files", out var listed) || listed.ValueKind != JsonValueKind.Array) return [];
            return [.. listed.EnumerateArray()
                .Where(f => f.ValueKind == JsonValueKind.String).Select(f => f.GetString()!)
                .Where(f => Path.GetFullPath(Path.Combine(root, f)).StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal))];
        }
        catch (JsonException)
        {
            // Not a summary of ours: nothing in the folder is known to be, so nothing is removed.
            return [];
        }
    }
}
