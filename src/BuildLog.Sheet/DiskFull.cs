namespace BuildLog.Sheet;

/// <summary>Tells a full disk from other trouble by the number the system gives.</summary>
internal static class DiskFull
{
    private const int UnixNoSpace = 28;                                    // ENOSPC
    private const int UnixQuota = 122;                                     // EDQUOT on Linux
    private const int WindowsDiskFull = unchecked((int)0x80070070);        // ERROR_DISK_FULL
    private const int WindowsHandleDiskFull = unchecked((int)0x80070027);  // ERROR_HANDLE_DISK_FULL

    public static bool Is(Exception trouble) =>
        trouble is IOException { HResult: UnixNoSpace or UnixQuota or WindowsDiskFull or WindowsHandleDiskFull };
}
