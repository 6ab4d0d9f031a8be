using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace BuckGen.Output.Folders;

/// <summary>What .NET has no call for: exchanging two folders, second names, flushing a folder.</summary>
internal static partial class UnixCalls
{
    /// <summary>RENAME_EXCHANGE of linux/fs.h and RENAME_SWAP of Darwin's stdio.h; both are 2.</summary>
    private const uint Swap = 2;

    /// <summary>AT_FDCWD of Linux and of Darwin: paths are taken as they are.</summary>
    private static readonly int Here = OperatingSystem.IsLinux() ? -100 : -2;

    /// <summary>Exchanges two names of one file system in one step; false where the system or the file system can't.</summary>
    public static bool Exchange(string one, string other)
    {
        try
        {
            // The call of macOS is written from its manual and has not been tried on one.
            return OperatingSystem.IsLinux() ? RenameAt2(Here, one, Here, other, Swap) == 0
                : OperatingSystem.IsMacOS() && RenameX(one, other, Swap) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            // A C library older than the call.
            return false;
        }
    }

    /// <summary>Gives a file or a link, not what it leads to, a second name.</summary>
    /// <exception cref="IOException">The system or the file system can't.</exception>
    public static void Link(string path, string second)
    {
        if (OperatingSystem.IsWindows()) throw new IOException($"{path} can't get a second name here.");
        if (LinkAt(Here, path, Here, second, 0) != 0)
            throw new IOException($"{path} can't get the second name {second}: {Marshal.GetLastPInvokeErrorMessage()}.");
    }

    /// <summary>Flushes a folder's names. Windows keeps them with the files.</summary>
    /// <exception cref="IOException">The disk fails.</exception>
    public static void Flush(string folder)
    {
        if (OperatingSystem.IsWindows()) return;
        using var handle = Open(folder, 0);
        if (handle.IsInvalid) throw new IOException($"{folder} can't be flushed: {Marshal.GetLastPInvokeErrorMessage()}.");
        RandomAccess.FlushToDisk(handle);
    }

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int RenameAt2(int oneFolder, string one, int otherFolder, string other, uint how);

    [LibraryImport("libc", EntryPoint = "renamex_np", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int RenameX(string one, string other, uint how);

    [LibraryImport("libc", EntryPoint = "linkat", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int LinkAt(int oneFolder, string one, int otherFolder, string other, int how);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial SafeFileHandle Open(string path, int how);
}
