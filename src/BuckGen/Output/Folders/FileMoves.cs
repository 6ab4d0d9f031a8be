namespace BuckGen.Output.Folders;

/// <summary>
/// Changes a folder file by file, where it can't be exchanged: a mount point, a share without that call, Windows. Everything is
/// prepared in the folder's own disk first; a journal records the moves, and they are undone when one fails or the run is cut
/// off. What Windows promises: a file that a program holds open is tried for a second, then all moves are taken back and the run
/// says which it was.
/// </summary>
internal static class FileMoves
{
    /// <summary>Changes the folder.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="work">The work folder in it.</param>
    /// <param name="target">The folder.</param>
    /// <param name="view">What lies in it.</param>
    /// <param name="change">What comes and goes.</param>
    /// <param name="cancellation">Stops the work before the folder is touched.</param>
    /// <exception cref="IOException">It can't be changed; the earlier result lies there as before.</exception>
    public static void Do(IDisk disk, WorkFolder work, string target, FolderView view, Replacement change,
        CancellationToken cancellation)
    {
        work.Stage(change.Incoming, cancellation);
        var journal = Journal.Create(ChangeMethod.Moves, change, view);
        work.Begin(journal);
        try
        {
            foreach (var file in change.Outgoing)
            {
                MoveInto(disk, Path.Combine(target, file.Path), Path.Combine(work.Old, file.Path));
                if (Contents.Sum(Path.Combine(work.Old, file.Path)) != file.Sum)
                    throw new IOException($"{Path.Combine(target, file.Path)} was changed just now; run again.");
            }

            foreach (var folder in change.Emptied) disk.DeleteFolder(Path.Combine(target, folder));
            foreach (var file in change.Incoming)
                MoveInto(disk, Path.Combine(work.New, file.Path), Path.Combine(target, file.Path));
            FlushTouched(disk, target, journal);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            TakeBack(disk, work, target, journal, failed);
            throw;
        }

        work.End();
    }

    /// <summary>
    /// Puts the earlier result back, after a run that failed or was cut off. It may be cut off itself and done again.
    /// </summary>
    public static void Undo(IDisk disk, WorkFolder work, string target, Journal journal)
    {
        foreach (var file in journal.Incoming)
        {
            var place = Path.Combine(target, file.Path);
            var wasTaken = Contents.Exists(Path.Combine(work.Old, file.Path));
            // The old file never left its place, or nothing came to it.
            if ((!wasTaken && journal.Outgoing.Any(f => f.Path == file.Path)) || !Contents.Exists(place)) continue;
            if (Contents.Sum(place) == file.Sum) disk.Delete(place);
            // A user has changed it since, or put a file there.
            else if (wasTaken) DisplacedFiles.MoveToFreePath(disk, place, target, file.Path);
        }

        foreach (var folder in journal.Folders.Reverse())
            if (Contents.IsFolder(Path.Combine(target, folder))
                && !Directory.EnumerateFileSystemEntries(Path.Combine(target, folder)).Any())
                disk.DeleteFolder(Path.Combine(target, folder));
        foreach (var file in journal.Outgoing)
            if (Contents.Exists(Path.Combine(work.Old, file.Path)))
                MoveInto(disk, Path.Combine(work.Old, file.Path), Path.Combine(target, file.Path));
        FlushTouched(disk, target, journal);
        work.End();
    }

    private static void TakeBack(IDisk disk, WorkFolder work, string target, Journal journal, Exception failed)
    {
        try
        {
            Undo(disk, work, target, journal);
        }
        catch (Exception again) when (again is IOException or UnauthorizedAccessException)
        {
            throw new IOException(
                $"{failed.Message} The earlier result could not be put back yet ({again.Message}); the next run into the "
                + "folder does it.", again);
        }
    }

    private static void MoveInto(IDisk disk, string from, string to)
    {
        disk.MakeFolder(Path.GetDirectoryName(to)!);
        disk.Move(from, to);
    }

    private static void FlushTouched(IDisk disk, string target, Journal journal)
    {
        var folders = journal.Incoming.Concat(journal.Outgoing).SelectMany(f => Replacement.AllAbove(f.Path))
            .Distinct(StringComparer.Ordinal);
        foreach (var folder in folders.Select(f => Path.Combine(target, f)).Where(Directory.Exists)) disk.Flush(folder);
        disk.Flush(target);
    }
}
