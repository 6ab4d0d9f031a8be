namespace BuckGen.Jobs;

/// <summary>The files beside a job file, found by their path from its folder.</summary>
/// <param name="Folder">The folder; empty for the current one.</param>
public sealed record JobFolder(string Folder) : IJobFiles
{
    /// <inheritdoc/>
    public Stream Open(string name, string what)
    {
        ArgumentNullException.ThrowIfNull(name);
        var path = Path.Combine(Folder, name);
        if (Directory.Exists(path)) throw new JobFileException($"{path} is a folder; name the {what} itself.");
        if (!File.Exists(path)) throw new JobFileException($"{path} does not exist; check the name of the {what}.");
        return File.OpenRead(path);
    }

    /// <inheritdoc/>
    public string PathOf(string name) => Path.GetFullPath(Path.Combine(Folder, name));
}
