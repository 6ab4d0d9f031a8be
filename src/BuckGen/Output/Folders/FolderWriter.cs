using System.Collections.Immutable;
using BuckGen.Output.Files;

namespace BuckGen.Output.Folders;

/// <summary>
/// Writes a result into a folder on a disk: clears up after an interrupted run, plans the change and makes it in the safest way
/// there is.
/// </summary>
internal sealed class FolderWriter(IDisk disk)
{
    /// <summary>Writes; see <see cref="OutputFolder.Write"/>.</summary>
    public FolderChange Write(string folder, ImmutableArray<OutputFile> files, bool force, CancellationToken cancellation)
    {
        RefuseOddPaths(files);
        var target = TargetOf(folder);
        var missing = MissingAbove(target);
        try
        {
            return WriteTo(target, files, force, cancellation);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            foreach (var made in missing) RemoveIfEmpty(made);
            if (Describe(failed, target, files) is { } message) throw new IOException(message, failed);
            throw;
        }
    }

    private FolderChange WriteTo(string target, ImmutableArray<OutputFile> files, bool force, CancellationToken cancellation)
    {
        var remarks = ImmutableArray.CreateBuilder<string>();
        using var beside = ClaimBeside(target, cancellation);
        if (beside is not null) ClearUp(beside, target, remarks);
        if (Contents.Exists(WorkFolder.Inside(target)))
        {
            using var left = WorkFolder.Claim(disk, WorkFolder.Inside(target), target, cancellation);
            ClearUp(left, target, remarks);
        }

        var view = FolderView.Scan(target);
        var change = Replacement.Plan(target, view, files, force);
        cancellation.ThrowIfCancellationRequested();
        if (!Directory.Exists(target))
        {
            beside!.Stage(change.Incoming, cancellation);
            disk.Move(beside.New, target);
            disk.Flush(Path.GetDirectoryName(target)!);
        }
        else if (beside is not null && view.IsComplete && !IsMountPoint(target)
            && FolderSwap.Try(disk, beside, target, view, change, cancellation) is { } swapped)
        {
            remarks.AddRange(swapped);
        }
        else
        {
            using var inside = WorkFolder.Claim(disk, WorkFolder.Inside(target), target, cancellation);
            // Only now the folder is ours alone, where nothing could be claimed beside it.
            view = FolderView.Scan(target);
            change = Replacement.Plan(target, view, files, force);
            FileMoves.Do(disk, inside, target, view, change, cancellation);
        }

        if (change.Left.Length > 0)
            remarks.Add(
                $"Not made by this run, but left in the folder, because it is not what BuckGen wrote: "
                + $"{Replacement.Named(change.Left)}.");
        return new(change.Removed, remarks.ToImmutable());
    }

    /// <summary>Null where nothing may be made beside the folder, but the folder is there.</summary>
    private WorkFolder? ClaimBeside(string target, CancellationToken cancellation)
    {
        if (WorkFolder.Beside(target) is not { } path) return null;
        try
        {
            return WorkFolder.Claim(disk, path, target, cancellation);
        }
        catch (Exception shut)
            when ((shut is UnauthorizedAccessException or PathTooLongException || DiskErrors.IsReadOnly(shut))
                && Directory.Exists(target))
        {
            return null;
        }
    }

    private void ClearUp(WorkFolder work, string target, ImmutableArray<string>.Builder remarks)
    {
        if (work.Journal() is { Method: ChangeMethod.Swap } swap) remarks.AddRange(FolderSwap.Finish(disk, work, target, swap));
        if (work.Journal() is { Method: ChangeMethod.Moves } moves)
        {
            FileMoves.Undo(disk, work, target, moves);
            remarks.Add("An earlier run into this folder was interrupted; its changes were undone first.");
        }

        work.Clear();
    }

    private void RemoveIfEmpty(string folder)
    {
        try
        {
            if (Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any()) disk.DeleteFolder(folder);
        }
        catch (Exception unable) when (unable is IOException or UnauthorizedAccessException)
        {
            // An empty folder is left; the failure that is being reported matters more.
        }
    }

    /// <summary>The folder itself where a link names it, since it is the folder that is exchanged.</summary>
    private static string TargetOf(string folder)
    {
        var path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        for (var above = path; above is not null; above = Path.GetDirectoryName(above))
            if (File.Exists(above) && new FileInfo(above).LinkTarget is null)
                throw new IOException($"{above} is a file; name a folder.");
        if (new DirectoryInfo(path) is not { LinkTarget: not null } link) return path;
        return link.ResolveLinkTarget(returnFinalTarget: true) is DirectoryInfo { Exists: true } target
            ? Path.TrimEndingDirectorySeparator(target.FullName)
            : throw new IOException($"{path} is a link that leads to no folder; name a folder.");
    }

    /// <summary>What a failure of the system means for the folder; null for one that says so itself.</summary>
    private static string? Describe(Exception failed, string target, ImmutableArray<OutputFile> files)
    {
        // Our own work folder does not concern the user.
        var where = failed.Message.Contains(WorkFolder.InsideName, StringComparison.Ordinal) ? ""
            : $" ({failed.Message.TrimEnd('.')})";
        if (DiskErrors.IsFull(failed))
            return $"There is no room for the result in {target}: it takes {Kilobytes(files)} kB until the earlier one is "
                + "gone, which is untouched. "
                + "Free some room or name another folder.";
        if (failed is UnauthorizedAccessException || DiskErrors.IsReadOnly(failed))
            return $"{target} may not be written{where}; change the permissions there or name another folder.";
        if (failed is DirectoryNotFoundException or FileNotFoundException)
            return $"{target} can't be made{where}; name another folder.";
        return failed is PathTooLongException ? $"{target} is too long a name for this disk; name a shorter one." : null;
    }

    private static string[] MissingAbove(string target)
    {
        var missing = new List<string>();
        for (var above = Path.GetDirectoryName(target); above is not null
            && !Directory.Exists(above); above = Path.GetDirectoryName(above)) missing.Add(above);
        return [.. missing];
    }

    private static bool IsMountPoint(string folder) =>
        DriveInfo.GetDrives().Any(d => Path.TrimEndingDirectorySeparator(d.Name) == folder);

    private static long Kilobytes(ImmutableArray<OutputFile> files) => files.Sum(f => (f.Content.Length + 1023L) / 1024);

    private static void RefuseOddPaths(ImmutableArray<OutputFile> files)
    {
        foreach (var file in files)
            if (file.Path.Split('/').Any(part => part is "" or "." or "..") || file.Path.Any(char.IsControl)
                || Path.IsPathRooted(file.Path) || file.Path == FolderRecord.Path
                || file.Path.Split('/')[0] == WorkFolder.InsideName)
                throw new ArgumentException($"\"{file.Path}\" is not a path below a folder.", nameof(files));
        if (files.GroupBy(f => f.Path, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new ArgumentException($"\"{twice.Key}\" is there twice.", nameof(files));
    }
}
