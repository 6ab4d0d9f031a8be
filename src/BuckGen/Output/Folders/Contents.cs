using System.Security.Cryptography;
using System.Text;

namespace BuckGen.Output.Folders;

/// <summary>What lies at a path, without following links.</summary>
internal static class Contents
{
    /// <summary>True when anything has this name: a file, a folder, a link that leads nowhere.</summary>
    public static bool Exists(string path) => (int)new FileInfo(path).Attributes != -1;

    /// <summary>True for a folder that is no link.</summary>
    public static bool IsFolder(string path) => new DirectoryInfo(path) is { Exists: true, LinkTarget: null };

    /// <summary>The sum of bytes, SHA-256 in small hexadecimal digits.</summary>
    public static string Sum(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));

    /// <summary>The sum of a file's bytes, or of where a link leads.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static string Sum(string path)
    {
        var file = new FileInfo(path);
        if (file.LinkTarget is { } target) return Sum(Encoding.UTF8.GetBytes($"link to {target}"));
        // Opening a pipe would wait for ever; its length is 0, and so is that of a device.
        if (file.Length == 0) return Sum([]);
        using var stream = Open(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    /// <summary>True when a file or link can be read.</summary>
    public static bool CanRead(string path)
    {
        try
        {
            if (new FileInfo(path) is { LinkTarget: null, Length: > 0 }) Open(path).Dispose();
            return true;
        }
        catch (Exception shut) when (shut is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Whoever works with the file may go on.</summary>
    private static FileStream Open(string path) =>
        new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
}
