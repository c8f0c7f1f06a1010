namespace BuildLog.Tui.Commands;

/// <summary>Text on its way to a terminal.</summary>
internal static class Terminal
{
    /// <summary>Stored text can hold anything; nothing in it may steer the terminal.</summary>
    public static string Printable(string text)
        => text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)) : text;
}
