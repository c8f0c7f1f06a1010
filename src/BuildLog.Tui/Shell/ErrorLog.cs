using System.Globalization;
using BuildLog.Data.Files;

namespace BuildLog.Tui.Shell;

/// <summary>A file of what went wrong, for its owner's eyes: the sentence goes to the screen, the trace goes here.</summary>
public sealed class ErrorLog(string path)
{
    private readonly Lock gate = new();

    /// <summary>Where the entries are written.</summary>
    public string Path => path;

    /// <summary>The log in the user's folder for such things.</summary>
    /// <remarks>The XDG Base Directory Specification: state that outlives a run but is not worth a backup.</remarks>
    public static ErrorLog Usual()
    {
        if (OperatingSystem.IsWindows())
            return new(System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "BuildLog", "errors.log"));

        return new(System.IO.Path.Combine(XdgFolder.Of("XDG_STATE_HOME", ".local/state"), "buildlog", "errors.log"));
    }

    /// <summary>Appends one entry.</summary>
    /// <returns>False when the file cannot be written; the program goes on without it.</returns>
    public bool Write(Exception error)
    {
        try
        {
            lock (gate)
            {
                if (System.IO.Path.GetDirectoryName(path) is { Length: > 0 } folder) OwnerOnly.CreateFolder(folder);
                using var file = new FileStream(path, ForItsOwner());
                using var writer = new StreamWriter(file);
                var time = DateTimeOffset.Now.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture);
                writer.WriteLine($"{time}  {error}{Environment.NewLine}");
            }

            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static FileStreamOptions ForItsOwner()
    {
        var options = new FileStreamOptions { Mode = FileMode.Append, Access = FileAccess.Write, Share = FileShare.ReadWrite };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }
}
