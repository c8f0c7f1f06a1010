using System.Runtime.InteropServices;

namespace BuildLog.Data.Files;

/// <summary>Gives a file that is whole and on the disk its name, so that the name outlives a power cut too.</summary>
/// <remarks>POSIX keeps a file's content when the file is synchronised, but its name only when the folder is; without that a copy that was said to be made could be gone.</remarks>
internal static partial class FinishedName
{
    public static void Give(string unfinished, string path, bool overwrite = true)
    {
        File.Move(unfinished, path, overwrite);
        if (OperatingSystem.IsWindows()) return; // NTFS keeps names in its own journal

        // The folder may be new itself, then its name stands in the one above.
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        Synchronise(folder);
        if (Path.GetDirectoryName(folder) is { } above) Synchronise(above);
    }

    // A folder that may not be opened for reading cannot be synchronised; the file is there all the same.
    private static void Synchronise(string folder)
    {
        var descriptor = Open(folder, 0);
        if (descriptor < 0) return;
        _ = Synchronise(descriptor);
        _ = Close(descriptor);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Synchronise(int descriptor);

    [LibraryImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Close(int descriptor);
}
