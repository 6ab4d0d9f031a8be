using System.Collections.Immutable;

namespace BuckGen.Output.Folders;

/// <summary>
/// Changes a folder in one step: a second folder is prepared with the new files and second names of everything that isn't ours,
/// and both are exchanged. Then the old folder is brought to the same state and exchanged back. So the folder keeps its rights,
/// its watchers and whoever stands in it. Whoever looks at any moment sees the whole old or the whole new result.
/// </summary>
internal static class FolderSwap
{
    /// <summary>What is given second names: enough for notes and pictures, not for a whole project.</summary>
    private const int MaxCarriedEntries = 1000;

    /// <summary>What may be read to make sure that nothing is lost, bytes.</summary>
    private const long MaxCarriedBytes = 100_000_000;

    /// <summary>Changes the folder.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="work">The work folder beside it.</param>
    /// <param name="target">The folder.</param>
    /// <param name="view">What lies in it.</param>
    /// <param name="change">What comes and goes.</param>
    /// <param name="cancellation">Stops the work before the folder is touched.</param>
    /// <returns>Remarks; null, with nothing changed, where the system can't.</returns>
    public static ImmutableArray<string>? Try(IDisk disk, WorkFolder work, string target, FolderView view, Replacement change,
        CancellationToken cancellation)
    {
        if (!CanCarry(target, Staying(view, change))) return null;
        disk.MakeFolder(work.New, target);
        disk.MakeFolder(work.Old, target);
        if (!disk.Exchange(work.New, work.Old)) return null;
        var journal = Journal.Create(ChangeMethod.Swap, change, view);
        try
        {
            work.Stage(change.Incoming, cancellation);
            work.Begin(journal);
            if (!Carry(disk, work, target, view, change) || !disk.Exchange(work.New, target))
            {
                work.Clear();
                return null;
            }
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            work.Clear();
            throw;
        }

        return Settle(disk, work, target, change, journal);
    }

    /// <summary>
    /// Clears up after a run that was cut off. The output folder is whole, the old or the new one; the other lies in the work
    /// folder.
    /// </summary>
    /// <returns>Remarks.</returns>
    public static ImmutableArray<string> Finish(IDisk disk, WorkFolder work, string target, Journal journal)
    {
        var remarks = ImmutableArray.CreateBuilder<string>();
        foreach (var (path, entry) in FolderView.Scan(work.New).Entries.Reverse())
        {
            var (rest, place) = (Path.Combine(work.New, path), Path.Combine(target, path));
            if (entry.Kind == EntryKind.Folder)
            {
                disk.DeleteFolder(rest);
                continue;
            }

            var sum = Contents.Sum(rest);
            // What isn't ours may go only when the folder has it as well.
            if (journal.Contains(new(path, sum)) || (IsFileOrLink(place) && Contents.Sum(place) == sum)) disk.Delete(rest);
            else remarks.Add(
                $"{path} was changed while the files were written; it is kept as "
                + $"{DisplacedFiles.MoveToFreePath(disk, rest, target, path)}.");
        }

        work.Clear();
        return remarks.ToImmutable();
    }

    private static IEnumerable<KeyValuePair<string, Entry>> Staying(FolderView view, Replacement change)
    {
        var gone = change.Outgoing.Select(f => f.Path).Concat(change.Emptied).ToHashSet(StringComparer.Ordinal);
        return view.Entries.Where(e => !gone.Contains(e.Key));
    }

    private static bool CanCarry(string target, IEnumerable<KeyValuePair<string, Entry>> staying)
    {
        var (count, bytes) = (0, 0L);
        foreach (var (path, entry) in staying)
        {
            (count, bytes) = (count + 1, bytes + entry.Length);
            if (count > MaxCarriedEntries || bytes > MaxCarriedBytes
                || (entry.Kind == EntryKind.File && !Contents.CanRead(Path.Combine(target, path)))) return false;
        }

        return true;
    }

    /// <summary>
    /// Gives everything that stays a second name in the new folder; false where the file system can't, or where another disk is
    /// mounted.
    /// </summary>
    private static bool Carry(IDisk disk, WorkFolder work, string target, FolderView view, Replacement change)
    {
        try
        {
            foreach (var (path, entry) in Staying(view, change))
                if (entry.Kind == EntryKind.Folder) disk.MakeFolder(Path.Combine(work.New, path), Path.Combine(target, path));
                else disk.Link(Path.Combine(target, path), Path.Combine(work.New, path));
        }
        catch (Exception unable) when (unable is IOException or UnauthorizedAccessException)
        {
            return false;
        }

        work.FlushAll(work.New);
        return true;
    }

    /// <summary>The new result counts from here on, whatever happens: what fails now is cleared up by the next run.</summary>
    private static ImmutableArray<string> Settle(IDisk disk, WorkFolder work, string target, Replacement change, Journal journal)
    {
        try
        {
            FlushBoth(disk, work, target);
            if (TryRenew(disk, work, target, change, journal) && disk.Exchange(work.New, target)) FlushBoth(disk, work, target);
            return Finish(disk, work, target, journal);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return [$"What was prepared beside the folder could not be cleared up ({failed.Message}); the next run does it."];
        }
    }

    /// <summary>Brings the old folder to the state of the new one; false where it can't be.</summary>
    private static bool TryRenew(IDisk disk, WorkFolder work, string target, Replacement change, Journal journal)
    {
        try
        {
            // A user may have changed a file since it was checked; Finish keeps it.
            foreach (var file in change.Outgoing)
                if (Contents.Sum(Path.Combine(work.New, file.Path)) != file.Sum) return false;
            foreach (var file in change.Outgoing) disk.Delete(Path.Combine(work.New, file.Path));
            foreach (var folder in change.Emptied) disk.DeleteFolder(Path.Combine(work.New, folder));
            foreach (var folder in journal.Folders) disk.MakeFolder(Path.Combine(work.New, folder));
            foreach (var file in change.Incoming) disk.Link(Path.Combine(target, file.Path), Path.Combine(work.New, file.Path));
            work.FlushAll(work.New);
            return true;
        }
        catch (Exception unable) when (unable is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static void FlushBoth(IDisk disk, WorkFolder work, string target)
    {
        disk.Flush(Path.GetDirectoryName(target)!);
        work.Flush();
    }

    private static bool IsFileOrLink(string path) => Contents.Exists(path) && !Contents.IsFolder(path);
}
