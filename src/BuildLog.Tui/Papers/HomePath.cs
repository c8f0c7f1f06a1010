namespace BuildLog.Tui.Papers;

/// <summary>A path as people type it: ~ is their home.</summary>
internal static class HomePath
{
    public static string Of(string path)
        => path == "~" || path.StartsWith("~/", StringComparison.Ordinal) ? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + path[1..] : path;
}
