namespace BuildLog.Tui.Forms;

/// <summary>A path as it is typed: bare names belong to the folder the program was started in.</summary>
public static class TypedPath
{
    private const string Home = "~/";

    /// <summary>The whole path. A shell would put the home folder in place of <c>~/</c>; a form and a quoted argument have none.</summary>
    public static string Full(string text)
    {
        var typed = text.Trim();
        return Path.GetFullPath(typed.StartsWith(Home, StringComparison.Ordinal)
            ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), typed[Home.Length..])
            : typed);
    }
}
