namespace BuckGen.Output.Folders;

/// <summary>What a failure of the disk means; .NET hands on the system's own numbers.</summary>
internal static class DiskErrors
{
    // EAGAIN, ENOSPC, EROFS, EDQUOT, EEXIST of Linux and macOS; Windows' errors for a file in use, a full disk, one that is
    // write-protected, and a name that is taken.
    private const int LinuxHeld = 11, MacHeld = 35, WindowsShared = unchecked((int)0x80070020),
        WindowsLocked = unchecked((int)0x80070021);
    private const int Full = 28, LinuxQuota = 122, MacQuota = 69, WindowsFull = unchecked((int)0x80070070),
        WindowsHandleFull = unchecked((int)0x80070027);

    private const int ReadOnly = 30, WindowsReadOnly = unchecked((int)0x80070013);

    private const int Exists = 17, WindowsExists = unchecked((int)0x800700B7);

    /// <summary>True when something had the name of a folder that was to be made; it may be gone by now.</summary>
    public static bool WasTaken(Exception fault) => fault is IOException { HResult: Exists or WindowsExists };

    /// <summary>True when the disk is read-only.</summary>
    public static bool IsReadOnly(Exception fault) => fault is IOException { HResult: ReadOnly or WindowsReadOnly };

    /// <summary>True when another program holds the file.</summary>
    /// <remarks>Windows denies access to a file that is about to be deleted.</remarks>
    public static bool IsHeld(Exception fault) =>
        fault is IOException { HResult: LinuxHeld or MacHeld or WindowsShared or WindowsLocked }
            || (fault is UnauthorizedAccessException && OperatingSystem.IsWindows());

    /// <summary>True when there is no room left.</summary>
    public static bool IsFull(Exception fault) =>
        fault is IOException { HResult: Full or LinuxQuota or MacQuota or WindowsFull or WindowsHandleFull };
}
