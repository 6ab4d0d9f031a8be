namespace BuckGen.Output.Folders;

/// <summary>All that changes a disk. It is a seam: a test can cut the power after any step.</summary>
internal interface IDisk
{
    /// <summary>Makes a folder and those above it, if they aren't there.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="like">A folder whose permissions it gets; null for the usual ones.</param>
    void MakeFolder(string path, string? like = null);

    /// <summary>Writes a file that isn't there yet and flushes it.</summary>
    void Write(string path, ReadOnlySpan<byte> content);

    /// <summary>Gives a file or a link a second name on the same disk; follows no link.</summary>
    void Link(string path, string second);

    /// <summary>Renames a file, a link or a folder; replaces nothing.</summary>
    void Move(string from, string to);

    /// <summary>Exchanges two folders in one step.</summary>
    /// <returns>False, with nothing changed, where the system can't.</returns>
    bool Exchange(string one, string other);

    /// <summary>Deletes a file or a link, not what the link leads to.</summary>
    void Delete(string path);

    /// <summary>Deletes an empty folder.</summary>
    void DeleteFolder(string path);

    /// <summary>Makes sure that the names in a folder outlast a power cut.</summary>
    void Flush(string folder);
}
