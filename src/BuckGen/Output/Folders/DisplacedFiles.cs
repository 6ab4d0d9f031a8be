namespace BuckGen.Output.Folders;

/// <summary>Finds a place in the output folder for a file that isn't ours and whose own place is taken.</summary>
internal static class DisplacedFiles
{
    /// <summary>Moves a file or link to its place in the folder, or beside that under a name that says why.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="from">Where it lies.</param>
    /// <param name="root">The output folder.</param>
    /// <param name="path">Its place below the folder.</param>
    /// <returns>Where it lies now, below the folder.</returns>
    public static string MoveToFreePath(IDisk disk, string from, string root, string path)
    {
        var free = path;
        for (var number = 1; Contents.Exists(Path.Combine(root, free)); number++) free = FreeName(path, number);
        disk.MakeFolder(Path.GetDirectoryName(Path.Combine(root, free))!);
        disk.Move(from, Path.Combine(root, free));
        return free;
    }

    private static string FreeName(string path, int number)
    {
        var end = Path.GetExtension(path);
        return $"{path[..^end.Length]}.kept{(number == 1 ? "" : $"-{number}")}{end}";
    }
}
