using System.Text.RegularExpressions;

namespace BuildLog.Sheet.Pdf;

/// <summary>The little of PDF's syntax (ISO 32000-1, 7.2 and 7.3) that finishing a file needs.</summary>
internal static partial class PdfSyntax
{
    /// <summary>The length entry of a stream's dictionary.</summary>
    [GeneratedRegex(@"/Length\s+(\d+)")]
    public static partial Regex Length();

    /// <summary>The position after the value that starts here. Strings may hold anything, brackets too.</summary>
    public static int EndOfValue(string text, int start)
    {
        var depth = 0;
        for (var at = start; ; at++)
        {
            switch (text[at])
            {
                case '(':
                    at = EndOfLiteral(text, at);
                    break;
                case '<' when text[at + 1] == '<':
                    depth++;
                    at++;
                    break;
                case '<':
                    at = text.IndexOf('>', at);
                    break;
                case '>':
                    at++;
                    if (--depth == 0) return at + 1;
                    break;
                case '[':
                    depth++;
                    break;
                case ']':
                    if (--depth == 0) return at + 1;
                    break;
                case 'e' when depth == 0 && string.CompareOrdinal(text, at, "endobj", 0, "endobj".Length) == 0:
                    return at;
            }
        }
    }

    /// <summary>The closing bracket of a literal string; inner brackets balance, a backslash takes the next sign's meaning away.</summary>
    private static int EndOfLiteral(string text, int at)
    {
        for (var open = 1; open > 0;)
        {
            at++;
            if (text[at] == '\\') at++;
            else if (text[at] == '(') open++;
            else if (text[at] == ')') open--;
        }

        return at;
    }
}
