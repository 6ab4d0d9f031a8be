using System.Collections.Immutable;
using BuckGen.Output.Files;

namespace BuckGen.Output.Folders;

/// <summary>What a run does to a folder: which files come, which go. Whatever is named in neither list stays.</summary>
/// <param name="Incoming">The files to write, the record with them.</param>
/// <param name="Outgoing">What is replaced or removed, with the bytes it has now.</param>
/// <param name="Removed">Of those, what nothing replaces.</param>
/// <param name="Emptied">Folders that hold nothing afterwards, the deepest first.</param>
/// <param name="Left">Files with names like ours that this run doesn't write and that are not known to be ours: they stay, and
/// are named.</param>
internal sealed record Replacement(
    ImmutableArray<OutputFile> Incoming, ImmutableArray<FileSum> Outgoing, ImmutableArray<string> Removed,
    ImmutableArray<string> Emptied,
    ImmutableArray<string> Left)
{
    /// <summary>Maximum number of files named in a message.</summary>
    private const int MaxNamed = 3;

    /// <summary>Decides what a run does.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="view">What lies in it.</param>
    /// <param name="files">What the run made.</param>
    /// <param name="force">True to replace files that aren't known to be ours.</param>
    /// <exception cref="IOException">Something that isn't ours lies where a file must go.</exception>
    public static Replacement Plan(string root, FolderView view, ImmutableArray<OutputFile> files, bool force)
    {
        ImmutableArray<OutputFile> incoming = [.. files, FolderRecord.FromFiles(files).AsFile()];
        foreach (var file in incoming) RefuseIfBlocked(root, view, file.Path);
        var record = FolderRecord.In(root);
        var earlier = (record ?? FolderRecord.Empty).Files;

        var present = incoming.Where(f => view.At(f.Path) is not null)
            .Select(f => (File: Now(f.Path), New: Contents.Sum(f.Content.AsSpan()))).ToArray();
        string[] strange =
            [.. present.Where(f => (f.File.Sum != f.New && !IsOurs(f.File)) || !IsFile(f.File.Path)).Select(f => f.File.Path)];
        if (strange.Length > 0 && !force)
            throw new IOException(
                $"{root} holds what BuckGen did not write there, or what was changed since: {Named(strange)}. "
                + "Move it away, name another folder, or replace it with --force.");

        FileSum[] idle =
            [.. earlier.Keys.Except(incoming.Select(f => f.Path), StringComparer.Ordinal)
                .Where(f => FolderRecord.MayList(f) && IsFile(f)).Select(Now)];
        var removed = idle.Where(IsOurs).ToArray();
        ImmutableArray<FileSum> outgoing = [.. present.Select(f => f.File), .. removed];
        // Where files were replaced by force, the folder may hold more of the same; it must not be taken for this run's.
        var left = strange.Length > 0 ? view.Entries.Keys.Where(f => FolderRecord.MayList(f) && IsFile(f))
            : idle.Select(f => f.Path);
        return new(
            incoming, outgoing, [.. removed.Select(f => f.Path)], EmptiedBy(view, incoming, outgoing),
            [.. left.Except(outgoing.Select(f => f.Path), StringComparer.Ordinal)]);

        FileSum Now(string path) => new(path, Contents.Sum(Path.Combine(root, path)));
        bool IsOurs(FileSum file) =>
            earlier.GetValueOrDefault(file.Path) == file.Sum || (file.Path == FolderRecord.Path && record is not null);
        bool IsFile(string path) => view.At(path) is { Kind: EntryKind.File };
    }

    /// <summary>Names of a few files.</summary>
    public static string Named(IReadOnlyCollection<string> paths) =>
        string.Join(", ", paths.Take(MaxNamed)) + (paths.Count > MaxNamed ? $" and {paths.Count - MaxNamed} more" : "");

    private static void RefuseIfBlocked(string root, FolderView view, string path)
    {
        if (view.At(path) is { Kind: EntryKind.Folder })
            throw new IOException(
                $"{Path.Combine(root, path)} is a folder where a file must go; move it away or name another folder.");
        for (var above = Above(path); above.Length > 0; above = Above(above))
        {
            // A link could lead anywhere; what lies there isn't this folder's.
            if (view.At(above) is { Kind: EntryKind.Link })
                throw new IOException(
                    $"{Path.Combine(root, above)} is a link where a folder must go, and links are not followed; remove it "
                    + "or name another folder.");
            if (view.At(above) is { Kind: EntryKind.File })
                throw new IOException(
                    $"{Path.Combine(root, above)} is a file where a folder must go; move it away or name another folder.");
        }
    }

    private static ImmutableArray<string> EmptiedBy(FolderView view, ImmutableArray<OutputFile> incoming,
        ImmutableArray<FileSum> outgoing)
    {
        var gone = outgoing.Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        var staying = view.Entries.Keys.Except(gone, StringComparer.Ordinal).Concat(incoming.Select(f => f.Path))
            .ToHashSet(StringComparer.Ordinal);
        var emptied = ImmutableArray.CreateBuilder<string>();
        foreach (var folder in outgoing.SelectMany(f => AllAbove(f.Path)).Distinct(StringComparer.Ordinal)
            .OrderByDescending(f => f.Length))
        {
            if (staying.Any(s => s.StartsWith(folder + "/", StringComparison.Ordinal))) continue;
            emptied.Add(folder);
            staying.Remove(folder);
        }

        return emptied.ToImmutable();
    }

    /// <summary>The folder that a path lies in; empty for the output folder.</summary>
    public static string Above(string path) => path.LastIndexOf('/') is >= 0 and var end ? path[..end] : "";

    /// <summary>The folders that a path lies in, the nearest first, without the output folder.</summary>
    public static IEnumerable<string> AllAbove(string path)
    {
        for (var above = Above(path); above.Length > 0; above = Above(above)) yield return above;
    }
}
