namespace BuildLog.Data.Files;

/// <summary>Files and folders that only their owner can read; on Windows the user's data folder is so already.</summary>
public static class OwnerOnly
{
    public static void CreateFolder(string path)
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(path);
        else Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    /// <summary>Creates a file that is not there yet.</summary>
    public static FileStream NewFile(string path) => Open(path, FileMode.CreateNew);

    /// <summary>Opens or creates a file for this program alone.</summary>
    internal static FileStream OpenFile(string path) => Open(path, FileMode.OpenOrCreate);

    private static FileStream Open(string path, FileMode mode)
    {
        var how = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.None };
        if (!OperatingSystem.IsWindows()) how.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return new FileStream(path, how);
    }
}
