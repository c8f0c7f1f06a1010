using System.Globalization;

namespace BuildLog.Data.Search;

/// <summary>The part of a text that shows why it was found.</summary>
/// <remarks>The index could cut it too, but goes through all its matches for each one.</remarks>
internal static class Excerpt
{
    private const int Longest = 90;
    private const int Before = 25;

    /// <summary>One line around the first word of the text that begins like one of the words typed; its beginning where none does.</summary>
    /// <param name="text">What was typed into the record, a text a line.</param>
    /// <param name="typed">What is looked for.</param>
    public static string Of(string text, string typed)
    {
        var looked = typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var told = text.Split('\n').Where(each => !IsBareNumber(each) || Start(each, looked) is not null);
        var line = string.Join(' ', told.SelectMany(each => each.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        if (line.Length <= Longest) return line;

        var from = Start(line, looked) ?? 0;
        from = from <= Before ? 0 : line.LastIndexOf(' ', from - Before) + 1;
        var to = line.Length - from <= Longest ? line.Length : line.LastIndexOf(' ', from + Longest, Longest);
        if (to <= from) to = Math.Min(from + Longest, line.Length);
        return $"{(from > 0 ? "…" : "")}{line[from..to]}{(to < line.Length ? "…" : "")}";
    }

    // An odometer or a ratio without a word says nothing beside the others, unless it is what was looked for.
    private static bool IsBareNumber(string text) => text.All(c => char.IsDigit(c) || char.IsWhiteSpace(c) || c is '.' or ',');

    private static int? Start(string line, IEnumerable<string> words)
    {
        // As the index compares: whatever the case and the accents.
        var compare = CultureInfo.InvariantCulture.CompareInfo;
        return words.Select(word => compare.IndexOf(line, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace)).Where(at => at >= 0).Select(at => (int?)at).Min();
    }
}
