namespace BuildLog.Data.Search;

/// <summary>What somebody types to find something.</summary>
internal static class TypedWords
{
    // More words than anybody types; each costs a look into the index.
    private const int Most = 20;

    /// <summary>The question to the index: all of the words, the last perhaps only begun; empty where no word is in the text.</summary>
    /// <remarks>
    /// The index has a language of its own, in which <c>AND</c>, <c>35"</c> or <c>(</c> mean something or are errors. In double quotes a word is nothing but a word.
    /// </remarks>
    /// <param name="typed">As typed.</param>
    /// <param name="begun">The words that the last one may become; null where its beginning had better be asked.</param>
    public static string Query(string typed, Func<string, IReadOnlyList<string>?> begun)
    {
        var words = string.Concat(typed.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? ' ' : c))
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Where(word => word.Any(char.IsLetterOrDigit))
            .Take(Most)
            .ToList();
        if (words.Count == 0) return "";

        // A blank after the last word says that it is whole.
        var last = char.IsWhiteSpace(typed[^1]) ? Quoted(words[^1])
            : begun(words[^1]) is { } whole ? $"({string.Join(" OR ", whole.Select(Quoted))})"
            : Quoted(words[^1]) + "*";
        return string.Join(" AND ", [.. words.SkipLast(1).Select(Quoted), last]);
    }

    private static string Quoted(string word) => $"\"{word.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
