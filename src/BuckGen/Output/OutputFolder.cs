using System.Collections.Immutable;
using System.Text.Json;
using BuckGen.Reports;

namespace BuckGen.Output;

/// <summary>Puts finished files into a folder so that an interrupted run leaves the last complete result.</summary>
public static class OutputFolder
{
    /// <summary>Ending of the folder beside the output in which files wait until all are complete.</summary>
    private const string Unfinished = ".unfinished";

    /// <summary>Folders that hold nothing but files of this program.</summary>
    private static readonly ImmutableArray<string> OwnFolders = ["layers/", "cut/", "drill/", "jig/", "panel/", "model/", "templates/"];

    /// <summary>
    /// Writes all files beside the folder, removes the cut files that an earlier run listed in its summary and this run did not
    /// make, and moves the new ones into place with the summary last. Other files are left alone.
    /// </summary>
    /// <param name="folder">The output folder; made when missing.</param>
    /// <param name="files">The files.</param>
    /// <returns>What was removed, as paths below the folder.</returns>
    /// <exception cref="ArgumentException">The folder's name is empty.</exception>
    /// <exception cref="IOException">The folder can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static ImmutableArray<string> Write(string folder, ImmutableArray<OutputFile> files)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        var root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var stale = EarlierFiles(root).Except(files.Select(f => f.Path), StringComparer.Ordinal).ToImmutableArray();
        if (files.FirstOrDefault(f => Directory.Exists(Path.Combine(root, f.Path))) is { } blocked)
            throw new IOException($"{Path.Combine(root, blocked.Path)} is a folder where a file must go; move it away.");
        var staging = root + Unfinished;
        try
        {
            foreach (var file in files)
            {
                var path = Path.Combine(staging, file.Path);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, [.. file.Content]);
            }

            foreach (var file in files) Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(root, file.Path))!);
            foreach (var path in stale) File.Delete(Path.Combine(root, path));
            foreach (var file in files.OrderBy(f => f.Path == OutputFiles.SummaryPath))
                File.Move(Path.Combine(staging, file.Path), Path.Combine(root, file.Path), overwrite: true);
        }
        finally
        {
            if (Directory.Exists(staging)) Directory.Delete(staging, recursive: true);
        }

        return stale;
    }

    /// <summary>The cut files that a summary of ours in the folder lists and that are still there.</summary>
    private static IEnumerable<string> EarlierFiles(string root)
    {
        var summary = Path.Combine(root, OutputFiles.SummaryPath);
        if (!File.Exists(summary)) return [];
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(summary));
            return json.RootElement.ValueKind == JsonValueKind.Object
                && json.RootElement.TryGetProperty("schema", out var schema) && schema.ValueKind == JsonValueKind.String
                && schema.GetString()!.StartsWith(Summary.SchemaFamily, StringComparison.Ordinal)
                && json.RootElement.TryGetProperty("files", out var listed) && listed.ValueKind == JsonValueKind.Array
                ? [.. listed.EnumerateArray().Where(f => f.ValueKind == JsonValueKind.String).Select(f => f.GetString()!)
                    .Where(f => IsOurs(f) && File.Exists(Path.Combine(root, f)))]
                : [];
        }
        catch (JsonException)
        {
            // Not a summary of ours: nothing in the folder is known to be, so nothing is removed.
            return [];
        }
    }

    /// <summary>True for a path of the kind this program writes: one of its own folders and a plain file name.</summary>
    private static bool IsOurs(string path) => path is OutputFiles.ProcessCardPath or OutputFiles.ReportPath or OutputFiles.PreviewPath || OwnFolders.Any(folder =>
        path.StartsWith(folder, StringComparison.Ordinal)
        && path[folder.Length..].All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.') && !path.Contains("..", StringComparison.Ordinal));
}
