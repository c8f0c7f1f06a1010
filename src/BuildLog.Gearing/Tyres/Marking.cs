using System.Globalization;

namespace BuildLog.Gearing.Tyres;

/// <summary>A tyre marking being read from left to right; spaces never matter.</summary>
internal sealed class Marking(string text)
{
    public string Text { get; } = text;

    public int Position { get; private set; }

    public bool AtEnd => Next >= Text.Length;

    public string Taken => Text[..Position].TrimEnd();

    public string Rest => Text[Next..];

    private int Next
    {
        get
        {
            var at = Position;
            while (at < Text.Length && char.IsWhiteSpace(Text[at])) at++;
            return at;
        }
    }

    public bool Take(string word)
    {
        if (!Text.AsSpan(Next).StartsWith(word, StringComparison.Ordinal)) return false;
        Position = Next + word.Length;
        return true;
    }

    /// <summary>Digits with at most one point, such as 205 or 17.5.</summary>
    public bool Number(out double value)
    {
        int start = Next, end = start;
        while (end < Text.Length && (char.IsAsciiDigit(Text[end]) || (Text[end] == '.' && end > start))) end++;
        if (!double.TryParse(Text.AsSpan(start, end - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)) return false;
        if (end - start > 6) return false;
        Position = end;
        return true;
    }

    /// <summary>A speed symbol: A1 to A8, or one letter.</summary>
    public string? Symbol()
    {
        var start = Next;
        if (start >= Text.Length || !char.IsAsciiLetterUpper(Text[start])) return null;
        var length = Text[start] == 'A' && start + 1 < Text.Length && char.IsAsciiDigit(Text[start + 1]) ? 2 : 1;
        Position = start + length;
        return Text[start..Position];
    }
}
