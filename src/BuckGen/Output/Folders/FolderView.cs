using System.Collections.Immutable;
using System.IO.Enumeration;

namespace BuckGen.Output.Folders;

/// <summary>What lies in a folder.</summary>
internal enum EntryKind
{
    /// <summary>A file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A link to a file or a folder.</summary>
    Link,
}

/// <summary>Something in a folder.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Length">Bytes; 0 for what is no file.</param>
internal readonly record struct Entry(EntryKind Kind, long Length);

/// <summary>Everything in a folder, as it was at one moment. Links are not followed; our own work folder is left out.</summary>
/// <param name="Entries">By path below the folder, with forward slashes; a folder stands before what it holds.</param>
/// <param name="IsComplete">False when a folder in it could not be looked into.</param>
internal sealed record FolderView(ImmutableSortedDictionary<string, Entry> Entries, bool IsComplete)
{
    /// <summary>Looks into a folder; one that isn't there is empty.</summary>
    public static FolderView Scan(string root)
    {
        if (!Directory.Exists(root)) return new(ImmutableSortedDictionary<string, Entry>.Empty, true);
        try
        {
            return new(Read(root, evenIfShut: false), true);
        }
        catch (UnauthorizedAccessException)
        {
            return new(Read(root, evenIfShut: true), false);
        }
    }

    /// <summary>What lies at a path; null for nothing.</summary>
    public Entry? At(string path) => Entries.TryGetValue(path, out var entry) ? entry : null;

    private static ImmutableSortedDictionary<string, Entry> Read(string root, bool evenIfShut) =>
        new FileSystemEnumerable<(string Path, Entry Entry)>(
            root,
            (ref FileSystemEntry e) =>
                (Path.GetRelativePath(root, e.ToFullPath()).Replace(Path.DirectorySeparatorChar, '/'), EntryOf(ref e)),
            new() { AttributesToSkip = 0, RecurseSubdirectories = true, IgnoreInaccessible = evenIfShut })
        {
            ShouldRecursePredicate = (ref FileSystemEntry e) => EntryOf(ref e).Kind == EntryKind.Folder && !IsOurWork(ref e),
            ShouldIncludePredicate = (ref FileSystemEntry e) => !IsOurWork(ref e),
        }.ToImmutableSortedDictionary(e => e.Path, e => e.Entry, StringComparer.Ordinal);

    private static bool IsOurWork(ref FileSystemEntry entry) =>
        entry.FileName.SequenceEqual(WorkFolder.InsideName) && entry.Directory.Length == entry.RootDirectory.Length;

    private static Entry EntryOf(ref FileSystemEntry entry) =>
        entry.Attributes.HasFlag(FileAttributes.ReparsePoint) ? new(EntryKind.Link, 0)
        : entry.IsDirectory ? new(EntryKind.Folder, 0)
        : new(EntryKind.File, entry.Length);
}
