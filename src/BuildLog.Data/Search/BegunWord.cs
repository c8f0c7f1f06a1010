using System.Text;
using BuildLog.Data.Changes;

namespace BuildLog.Data.Search;

/// <summary>The words of the index that a begun word may become.</summary>
/// <remarks>
/// Asked for a beginning, the index first gathers all matches of all such words; asked for the words themselves, it goes from the latest record back and
/// stops when enough are found. Beginnings of one to three letters have an index of their own and are as quick.
/// </remarks>
internal static class BegunWord
{
    private const int Shortest = 4;

    // More different words than one beginning has in any language; each costs a look into the index.
    private const int Most = 100;

    private const string Next = "SELECT term FROM \"FindableTerms\" WHERE term >= $0 LIMIT 1";

    /// <summary>The words, as the index spells them; null where the beginning itself had better be asked.</summary>
    public static IReadOnlyList<string>? Of(StoredRows rows, string beginning)
    {
        // Only here it is certain what the index makes of what was typed: one word, in small letters.
        if (beginning.Length < Shortest || !Ascii.IsValid(beginning) || !beginning.All(char.IsLetterOrDigit)) return null;

        var begun = string.Concat(beginning.Select(char.ToLowerInvariant));
        var words = new List<string>();
        for (var from = begun; rows.Ask(Next, from) is string word && word.StartsWith(begun, StringComparison.Ordinal); from = word + '\u0001')
        {
            if (words.Count == Most) return null;
            words.Add(word);
        }

        return words.Count == 0 ? null : words;
    }
}
