namespace BuckGen.Output.Folders;

/// <summary>The disk itself.</summary>
internal sealed class Disk : IDisk
{
    /// <summary>
    /// How often a file that another program holds open is tried again, and how long each time, ms: a second in all.
    /// </summary>
    private const int Tries = 20, Pause = 50;

    /// <inheritdoc/>
    public void MakeFolder(string path, string? like = null)
    {
        Directory.CreateDirectory(path);
        if (like is not null && !OperatingSystem.IsWindows()) File.SetUnixFileMode(path, File.GetUnixFileMode(like));
    }

    /// <inheritdoc/>
    public void Write(string path, ReadOnlySpan<byte> content)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read, bufferSize: 0);
        file.Write(content);
        file.Flush(flushToDisk: true);
    }

    /// <inheritdoc/>
    public void Link(string path, string second) => UnixCalls.Link(path, second);

    /// <inheritdoc/>
    public void Move(string from, string to)
    {
        // Unix renames what is open. Windows refuses while a program holds the file without sharing its deletion: a viewer, a
        // scanner.
        for (var attempt = OperatingSystem.IsWindows() ? Tries : 1; ; attempt--)
        {
            try
            {
                if (IsRealFolder(from)) Directory.Move(from, to);
                else File.Move(from, to);
                return;
            }
            catch (Exception held) when (attempt > 1 && held is IOException or UnauthorizedAccessException)
            {
                Thread.Sleep(Pause);
            }
        }
    }

    /// <inheritdoc/>
    public bool Exchange(string one, string other) => UnixCalls.Exchange(one, other);

    /// <inheritdoc/>
    public void Delete(string path)
    {
        // Windows has links that are folders; only this deletes them, and never what they lead to.
        if (Directory.Exists(path)) Directory.Delete(path);
        else File.Delete(path);
    }

    /// <inheritdoc/>
    public void DeleteFolder(string path) => Directory.Delete(path);

    /// <inheritdoc/>
    public void Flush(string folder) => UnixCalls.Flush(folder);

    private static bool IsRealFolder(string path) => new DirectoryInfo(path) is { Exists: true, LinkTarget: null };
}
