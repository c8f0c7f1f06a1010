namespace BuildLog.Data.Files;

/// <summary>How a person makes a folder that is not there. The program makes none: a name typed wrong would leave an empty shop where nobody looks for it.</summary>
internal static class NewFolder
{
    /// <summary><c>mkdir -p "/home/me/shop"</c>, to be pasted.</summary>
    public static string Command(string? folder) => OperatingSystem.IsWindows() ? $"mkdir \"{folder}\"" : $"mkdir -p \"{folder}\"";
}
