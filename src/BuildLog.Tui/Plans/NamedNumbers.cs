using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Plans;

/// <summary>Numbers of one part typed one after the other, each behind its word: <c>length 1.30 m; tube 76 mm</c>.</summary>
internal static class NamedNumbers
{
    public const char Between = ';';

    public static string[] Parted(string text) => text.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>What stands behind the word; null where the number begins with another one.</summary>
    public static string? Behind(string word, string number)
        => number.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase) ? number[word.Length..].Trim() : null;

    /// <summary>The texts by their words, in the order typed.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="part">Whose numbers they are, as a sentence names it.</param>
    /// <param name="words">The words there are.</param>
    /// <param name="example">One that would be understood.</param>
    public static Parsed<IReadOnlyDictionary<string, string>> Read(string text, string part, IReadOnlyList<string> words, string example)
    {
        var found = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var number in Parted(text))
        {
            if (words.FirstOrDefault(each => Behind(each, number) is { Length: > 0 }) is not { } word)
                return new Refusal("number", Spoken($"{Shown.Quoted(number)} is no number of {part}: begin with {string.Join(", ", words.SkipLast(1))} or {words[^1]}."), example);
            if (!found.TryAdd(word, Behind(word, number)!))
                return new Refusal("number", Spoken($"{Shown.Quoted(number)} says the {word} a second time: say it once."), example);
        }

        return found;
    }
}
