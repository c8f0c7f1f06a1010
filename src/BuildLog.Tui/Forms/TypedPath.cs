using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>A path as it is typed: bare names belong to the folder the program was started in.</summary>
public static class TypedPath
{
    private const string Home = "~/";
    private const int Longest = 4096; // of a whole path, on the systems this runs on

    /// <summary>The whole path, or why no file can be called so.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="example">A name that would do.</param>
    public static Parsed<string> Read(string text, string example)
        => text.Trim().Length is 0 or > Longest || text.Trim().Any(char.IsControl)
            ? new Refusal("file", Spoken($"{Shown.Quoted(text)} is no name of a file: it has none, too many or invisible characters."), example)
            : Full(text);

    /// <summary>The whole path. A shell would put the home folder in place of <c>~/</c>; a form and a quoted argument have none.</summary>
    public static string Full(string text)
    {
        var typed = text.Trim();
        return Path.GetFullPath(typed.StartsWith(Home, StringComparison.Ordinal)
            ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile, Environment.SpecialFolderOption.DoNotVerify), typed[Home.Length..])
            : typed);
    }
}
