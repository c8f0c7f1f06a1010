namespace BuildLog.Data.Files;

/// <summary>What the operating system meant: .NET hands its error number on in <see cref="Exception.HResult"/>.</summary>
/// <remarks>Source: errno(3) of Linux and macOS; Win32 system error codes 32, 112 and 19, as HRESULTs.</remarks>
internal static class IoErrors
{
    public static bool IsHeldByAnother(IOException error) => error.HResult is 11 or 35 or unchecked((int)0x80070020);

    public static bool IsDiskFull(IOException error) => error.HResult is 28 or unchecked((int)0x80070070);

    public static bool IsReadOnly(IOException error) => error.HResult is 30 or unchecked((int)0x80070013);
}
