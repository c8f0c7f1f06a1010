using System.Globalization;
using System.Text;

namespace BuildLog.Data.Search;

/// <summary>How well a record answers the words typed: a word in its title counts more than one in a name it speaks of, and that more than one in its text.</summary>
/// <remarks>The index could weigh too, but for each word it counts all its matches in the whole record first; what is known here comes to the same, as every match holds every word.</remarks>
internal sealed class Closeness(string typed)
{
    private readonly string[] words = typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    public int Of(string title, string about) => words.Sum(word => Holds(title, word) ? 4 : Holds(about, word) ? 2 : 1);

    // As the index compares: a beginning of a word, whatever the case and the accents.
    private static bool Holds(string text, string word)
    {
        var plain = Ascii.IsValid(text) && Ascii.IsValid(word);
        for (var at = Find(text, word, 0, plain); at >= 0; at = Find(text, word, at + 1, plain))
        {
            if (at == 0 || !char.IsLetterOrDigit(text[at - 1])) return true;
        }

        return false;
    }

    private static int Find(string text, string word, int from, bool plain)
    {
        if (from >= text.Length) return -1;
        var at = plain ? text.AsSpan(from).IndexOf(word, StringComparison.OrdinalIgnoreCase)
            : CultureInfo.InvariantCulture.CompareInfo.IndexOf(text.AsSpan(from), word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace);
        return at < 0 ? -1 : from + at;
    }
}
