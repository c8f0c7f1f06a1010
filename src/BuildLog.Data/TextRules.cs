using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>What text an entry may hold: something in its title, one line where a list shows it, and nothing that steers a terminal.</summary>
internal static class TextRules
{
    private const int LongestLine = 200;
    private const int LongestText = 100_000;

    /// <summary>A line that must be there.</summary>
    /// <exception cref="RefusedException">It is empty, too long or more than a line.</exception>
    public static void CheckTitle(string text, Later what, string example)
    {
        if (text.Trim().Length == 0) throw new RefusedException(Code(what), Spoken($"The {what} is missing."), example);
        CheckLine(text, what, example);
    }

    /// <summary>A line that may be empty.</summary>
    /// <exception cref="RefusedException">It is too long or more than a line.</exception>
    public static void CheckLine(string? text, Later what, string example)
    {
        if (text is not null && (text.Length > LongestLine || text.Any(char.IsControl)))
            throw new RefusedException(Code(what), Spoken($"The {what} is one line of at most {LongestLine} characters."), example);
    }

    /// <summary>Text of several lines; it may be empty.</summary>
    /// <exception cref="RefusedException">It is too long, or holds signs that are no text.</exception>
    public static void CheckText(string text, Later what)
    {
        if (text.Length > LongestText)
            throw new RefusedException(Code(what), Spoken($"The {what} has {text.Length} characters; {LongestText} are the most: attach it as a file."), "");
        if (!IsText(text))
            throw new RefusedException(Code(what), Spoken($"The {what} holds signs that are no text; paste it as plain text."), "");
    }

    /// <summary>It brings no control signs but those that break lines: text is shown in a terminal one day, and must not bring what steers one.</summary>
    public static bool IsText(string text) => !text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t'));

    /// <summary>A day of this shop, if there is one.</summary>
    /// <exception cref="RefusedException">It lies outside any shop's life.</exception>
    public static void CheckDay(DateOnly? day, Later what)
    {
        if (day is { Year: < 1900 or > 2200 })
            throw new RefusedException(Code(what), Spoken($"{day:O} is no day of this shop: the year lies between 1900 and 2200."), "2026-05-03");
    }

    // Of the English text: programs know a refusal by it.
    private static string Code(Later what) => what.Text.Replace(' ', '-');
}
