using BuildLog.Sheet.Layout;

namespace BuildLog.Sheet.Paper;

/// <summary>How the sheet says that a fact is not there.</summary>
internal static class Missing
{
    public static string Words => Spoken("not recorded");

    public static string OrWords(string? text) => string.IsNullOrWhiteSpace(text) ? Words : text;

    /// <summary>The text in its style, or the words in theirs.</summary>
    public static CellText OrWords(string? text, Drawing.TextStyle style) =>
        string.IsNullOrWhiteSpace(text) ? new CellText(Words, TypeScale.Missing) : new CellText(text, style);

    public static Cell CellOf(string? text, Drawing.TextStyle style) => new(OrWords(text, style));

    public static Paragraph Paragraph => new(Words, TypeScale.Missing);
}
