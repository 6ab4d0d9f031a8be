using System.Collections.Immutable;
using System.Text;
using BuckGen.Output.Files;

namespace BuckGen.Output.Folders;

/// <summary>
/// A folder in which one run prepares its files, locked against others for as long as it lives. It is known to be ours by a file
/// in it, not by its name. The system frees the lock when a run is killed; what such a run left is cleared up by the next.
/// </summary>
internal sealed class WorkFolder : IDisposable
{
    /// <summary>Its name in the output folder, where it can't lie beside it.</summary>
    public const string InsideName = ".buckgen-work";

    private const string LockName = "lock", MarkName = "about.txt", NewName = "new", OldName = "old", JournalName = "journal",
        UnfinishedName = "journal.part";
    private const string Mark =
        "BuckGen works here while it writes a result. The next run into the same folder clears this up.\n";

    /// <summary>
    /// How often a lock that another run holds is tried again, and how long each time, ms: five seconds in all.
    /// </summary>
    private const int Tries = 100, Pause = 50;

    private readonly IDisk disk;
    private readonly string path;
    private readonly FileStream held;

    private WorkFolder(IDisk disk, string path, FileStream held) => (this.disk, this.path, this.held) = (disk, path, held);

    /// <summary>Where new files wait.</summary>
    public string New => Path.Combine(path, NewName);

    /// <summary>Where old files wait.</summary>
    public string Old => Path.Combine(path, OldName);

    private string JournalPath => Path.Combine(path, JournalName);

    /// <summary>
    /// Where the work folder lies beside an output folder; null for a disk's own folder, which has nothing beside it.
    /// </summary>
    public static string? Beside(string folder) =>
        Path.GetDirectoryName(folder) is { } above ? Path.Combine(above, $".{Path.GetFileName(folder)}{InsideName}") : null;

    /// <summary>Where the work folder lies in an output folder.</summary>
    public static string Inside(string folder) => Path.Combine(folder, InsideName);

    /// <summary>Makes the folder, or takes over one that a killed run left; waits a while for a run that has it.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="path">Its path.</param>
    /// <param name="folder">The output folder, for messages.</param>
    /// <param name="cancellation">Stops the waiting.</param>
    /// <exception cref="IOException">It can't be made, another run keeps it, or something else has its name.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static WorkFolder Claim(IDisk disk, string path, string folder, CancellationToken cancellation)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                disk.MakeFolder(path);
                if (!IsOurs(path) && Contents.Exists(path))
                    throw new IOException($"{path} is in the way and not BuckGen's; move it away.");
                // Deleted when closed: .NET then makes sure that the locked file is the one that has the name.
                var held = new FileStream(Path.Combine(path, LockName), FileMode.OpenOrCreate, FileAccess.ReadWrite,
                    FileShare.None, 1, FileOptions.DeleteOnClose);
                var work = new WorkFolder(disk, path, held);
                work.WriteMark();
                return work;
            }
            catch (Exception gone)
                when ((gone is DirectoryNotFoundException or FileNotFoundException
                        || (DiskErrors.WasTaken(gone) && !Contents.Exists(path)))
                    && attempt < Tries && Directory.Exists(Path.GetDirectoryName(path)))
            {
                // The run that had it has just finished.
            }
            catch (Exception busy) when (DiskErrors.IsHeld(busy))
            {
                if (attempt == Tries)
                    throw new IOException(
                        $"{folder} is being written by another run of BuckGen; wait until it is done and run again.");
                if (cancellation.WaitHandle.WaitOne(Pause)) throw new OperationCanceledException(cancellation);
            }
        }
    }

    /// <summary>What a run that was cut off wanted; null when none was.</summary>
    public Journal? Journal() => File.Exists(JournalPath) ? Folders.Journal.Parse(File.ReadAllText(JournalPath)) : null;

    /// <summary>Writes all files and flushes them.</summary>
    public void Stage(ImmutableArray<OutputFile> files, CancellationToken cancellation)
    {
        disk.MakeFolder(New);
        foreach (var file in files)
        {
            cancellation.ThrowIfCancellationRequested();
            var place = Path.Combine(New, file.Path);
            disk.MakeFolder(Path.GetDirectoryName(place)!);
            disk.Write(place, file.Content.AsSpan());
        }

        FlushAll(New);
    }

    /// <summary>Writes the journal: from now on this folder holds more than what is ours.</summary>
    public void Begin(Journal journal)
    {
        var unfinished = Path.Combine(path, UnfinishedName);
        disk.Write(unfinished, journal.ToBytes());
        disk.Move(unfinished, JournalPath);
        disk.Flush(path);
    }

    /// <summary>Deletes the journal: from now on all that is in this folder may go.</summary>
    public void End()
    {
        disk.Delete(JournalPath);
        disk.Flush(path);
    }

    /// <summary>Deletes what was prepared.</summary>
    public void Clear()
    {
        foreach (var name in (string[])[NewName, OldName])
        {
            var folder = Path.Combine(path, name);
            if (!Directory.Exists(folder)) continue;
            DeleteAll(folder);
        }

        foreach (var name in (string[])[JournalName, UnfinishedName])
            if (File.Exists(Path.Combine(path, name))) disk.Delete(Path.Combine(path, name));
    }

    /// <summary>Flushes this folder's own names.</summary>
    public void Flush() => disk.Flush(path);

    /// <summary>Flushes a folder and those in it.</summary>
    public void FlushAll(string folder)
    {
        foreach (var (name, entry) in FolderView.Scan(folder).Entries)
            if (entry.Kind == EntryKind.Folder) disk.Flush(Path.Combine(folder, name));
        disk.Flush(folder);
    }

    /// <summary>Clears the folder up and frees it for others. With a journal in it everything stays for the next run.</summary>
    public void Dispose()
    {
        try
        {
            if (!File.Exists(JournalPath))
            {
                Clear();
                disk.Delete(Path.Combine(path, MarkName));
            }

            held.Dispose();
            disk.DeleteFolder(path);
        }
        catch (Exception unable) when (unable is IOException or UnauthorizedAccessException)
        {
            // Another run waits in it already, or the disk fails: the next run clears up.
        }
        finally
        {
            held.Dispose();
        }
    }

    private void WriteMark()
    {
        try
        {
            var mark = Path.Combine(path, MarkName);
            if (!File.Exists(mark)) disk.Write(mark, Encoding.UTF8.GetBytes(Mark));
            disk.Flush(path);
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    private void DeleteAll(string folder)
    {
        foreach (var (name, entry) in FolderView.Scan(folder).Entries.Reverse())
            if (entry.Kind == EntryKind.Folder) disk.DeleteFolder(Path.Combine(folder, name));
            else disk.Delete(Path.Combine(folder, name));
        disk.DeleteFolder(folder);
    }

    /// <summary>A real folder with our mark in it; or one in which nothing but an empty lock has been made yet.</summary>
    private static bool IsOurs(string path) =>
        Contents.IsFolder(path)
        && Directory.GetFileSystemEntries(path).Select(Path.GetFileName).ToArray() is var names
        && (names.Contains(MarkName) ? IsMark(Path.Combine(path, MarkName)) : names.All(n => n == LockName))
        && new FileInfo(Path.Combine(path, LockName)) is { Exists: false } or { Length: 0, LinkTarget: null };

    /// <summary>The mark, or the beginning of it where the power went.</summary>
    private static bool IsMark(string path) =>
        new FileInfo(path) is { LinkTarget: null, Length: <= 200 } file
            && Mark.StartsWith(file.Length == 0 ? "" : File.ReadAllText(path), StringComparison.Ordinal);
}
