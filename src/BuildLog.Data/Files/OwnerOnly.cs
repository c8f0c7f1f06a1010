namespace BuildLog.Data.Files;

/// <summary>Files and folders that only their owner can read; on Windows the user's data folder is so already.</summary>
public static class OwnerOnly
{
    public static void CreateFolder(string path)
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(path);
        else Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    /// <summary>Opens or creates a file for this program alone.</summary>
    internal static FileStream OpenFile(string path)
    {
        var how = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.ReadWrite, Share = FileShare.None };
        if (!OperatingSystem.IsWindows()) how.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return new FileStream(path, how);
    }
}
