namespace BuildLog.Gearing.Goals;

/// <summary>A goal that is typed in one line: what, at what, in which gear.</summary>
internal static class GoalLine
{
    private const string In = " in ";

    /// <summary>The line without its gear, and that; empty where none is said.</summary>
    public static (string Line, string Gear) InGear(string text)
        => text.LastIndexOf(In, StringComparison.OrdinalIgnoreCase) is > 0 and var at ? (text[..at].Trim(), text[(at + In.Length)..].Trim()) : (text.Trim(), "");

    /// <summary>What stands before the word at and behind it; null where it does not stand there once.</summary>
    public static (string Before, string Behind)? At(string line)
        => line.Split(" at ", StringSplitOptions.TrimEntries) is [{ Length: > 0 } before, { Length: > 0 } behind] ? (before, behind) : null;

    /// <summary>The line with other words before and behind its at, its gear as it was; any other text as it is.</summary>
    public static string Reworded(string text, Func<string, string> before, Func<string, string> behind)
    {
        var (line, gear) = InGear(text);
        return At(line) is not { } at ? text : $"{before(at.Before)} at {behind(at.Behind)}{(gear.Length == 0 ? "" : In + gear)}";
    }
}
