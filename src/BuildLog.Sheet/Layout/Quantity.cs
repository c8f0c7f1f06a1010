using BuildLog.Gearing.Quantities;

namespace BuildLog.Sheet.Layout;

/// <summary>Numbers with their units in a line of text, which are read as one: <c>2928 ± 12 rev/min</c>, <c>k = 1.96</c>, <c>310.00 EUR</c>.</summary>
internal static class Quantity
{
    private const int CurrencyLetters = 3;

    private static readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> Spellings =
        new HashSet<string>(Units.All.SelectMany(unit => unit.Spellings.Append(unit.Symbol)), StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Whether the words before and after a space belong to one quantity.</summary>
    public static bool HoldsTogether(string text, int space)
    {
        var before = text.AsSpan(0, space);
        var after = text.AsSpan(space + 1);
        if (before.IsEmpty || after.IsEmpty) return false;
        if (IsSign(before[^1]) && (before.Length == 1 || before[^2] == ' ')) return true;
        if (IsSign(after[0]) && (after.Length == 1 || after[1] == ' ')) return true;

        return char.IsAsciiDigit(before[^1]) && IsUnit(FirstWord(after));
    }

    private static bool IsSign(char sign) => sign is '±' or '=' or '×';

    private static ReadOnlySpan<char> FirstWord(ReadOnlySpan<char> text)
    {
        var end = text.IndexOf(' ');
        return (end < 0 ? text : text[..end]).TrimEnd(",;.:)");
    }

    private static bool IsUnit(ReadOnlySpan<char> word) => !word.IsEmpty && (IsCurrency(word) || Spellings.Contains(word));

    private static bool IsCurrency(ReadOnlySpan<char> word) => word.Length == CurrencyLetters && !word.ContainsAnyExceptInRange('A', 'Z');
}
