using BuckGen.Cli.Terminals;

namespace BuckGen.Cli.Commands;

/// <summary>Writes a single file whole or not at all.</summary>
internal static class AtomicFile
{
    /// <summary>Writes the file beside its place, flushes it and moves it there.</summary>
    /// <param name="path">Its place.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="replace">True when a file there may be replaced.</param>
    public static void Write(string path, ReadOnlySpan<byte> content, bool replace)
    {
        var place = Path.GetFullPath(path);
        var beside = Path.Combine(Path.GetDirectoryName(place)!, $".{Path.GetFileName(place)}.buckgen-new");
        // What a killed run left is the beginning of such a file; anything else isn't ours.
        if (File.Exists(beside) && !content.StartsWith(File.ReadAllBytes(beside)))
            throw new UsageException($"{beside} is in the way and not BuckGen's; move it away.");
        try
        {
            using (var file = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, place, replace);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            if (File.Exists(beside)) File.Delete(beside);
            throw new UsageException($"{path} can't be written ({failure.Message.TrimEnd('.')}); name another file.");
        }
    }
}
