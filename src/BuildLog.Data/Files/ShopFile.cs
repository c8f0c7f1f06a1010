namespace BuildLog.Data.Files;

/// <summary>The one file that holds the shop's record: where it lies, and how it is opened.</summary>
public static class ShopFile
{
    /// <summary>The file in the user's data folder.</summary>
    public static string DefaultPath() => DefaultPath(Environment.GetEnvironmentVariable, OperatingSystem.IsWindows());

    /// <summary>Opens the record, creating it where there is none and bringing an older one up to date after a backup.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="clock">Tells when a change was made; the machine's own where none is given.</param>
    /// <exception cref="RecordException">It cannot be opened; it was not touched.</exception>
    public static Shop Open(string path, TimeProvider? clock = null)
    {
        var full = Path.GetFullPath(path);
        return FileTroubles.Guard(full, () =>
        {
            return new Shop(full, OpeningCheck.Prepare(full, isDefault: full == DefaultPath()), clock ?? TimeProvider.System);
        });
    }

    internal static string DefaultPath(Func<string, string?> environment, bool windows)
    {
        if (windows)
            return Path.Combine(environment("LOCALAPPDATA") is { Length: > 0 } local ? local : Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "BuildLog", "shop.db");

        return Path.Combine(XdgFolder.Of("XDG_DATA_HOME", ".local/share", environment), "buildlog", "shop.db");
    }
}
