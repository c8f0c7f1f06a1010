using System.Globalization;

namespace BuildLog.Data.Search;

/// <summary>The part of a text that shows why it was found.</summary>
/// <remarks>The index could cut it too, but goes through all its matches for each one.</remarks>
internal static class Excerpt
{
    private const int Longest = 90;
    private const int Before = 25;

    /// <summary>One line around the first word of the text that begins like one of the words typed; its beginning where none does.</summary>
    public static string Of(string text, string typed)
    {
        var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var line = string.Join(' ', words);
        if (line.Length <= Longest) return line;

        var from = Start(line, typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        from = from <= Before ? 0 : line.LastIndexOf(' ', from - Before) + 1;
        var to = line.Length - from <= Longest ? line.Length : line.LastIndexOf(' ', from + Longest, Longest);
        if (to <= from) to = Math.Min(from + Longest, line.Length);
        return $"{(from > 0 ? "…" : "")}{line[from..to]}{(to < line.Length ? "…" : "")}";
    }

    private static int Start(string line, IEnumerable<string> words)
    {
        // As the index compares: whatever the case and the accents.
        var compare = CultureInfo.InvariantCulture.CompareInfo;
        return words.Select(word => compare.IndexOf(line, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace)).Where(at => at >= 0).DefaultIfEmpty(0).Min();
    }
}
