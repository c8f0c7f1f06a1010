using System.Text.RegularExpressions;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>docs/glossary.md: a symbol has one meaning, and the pages of the checks use it for that.</summary>
/// <remarks>What is explained on a page, <c>v road speed; n_P engine speed of peak power</c>, has to share a word with the glossary's line; that both mean the same is for a reader to see.</remarks>
public sealed partial class GlossaryTests
{
    private static readonly Dictionary<string, string> Symbols = Rows("Symbols").SelectMany(row => row[0].Split(", ").Select(symbol => (symbol, row[1]))).ToDictionary(StringComparer.Ordinal);

    public static TheoryData<string> CheckPages => [.. Pages.All.Where(name => name.StartsWith("docs/checks/", StringComparison.Ordinal))];

    [Fact]
    public void Each_word_and_each_symbol_stands_there_once()
    {
        Assert.True(Symbols.Count > 40);
        foreach (var part in (string[])["Words", "Symbols"])
        {
            var all = Rows(part).SelectMany(row => row[0].Split(", ")).ToList();
            Assert.Equal(all.Distinct(StringComparer.Ordinal), all);
        }
    }

    [Theory]
    [MemberData(nameof(CheckPages))]
    public void What_a_page_explains_is_what_the_glossary_says(string page)
        => Assert.All(ExplainedOn(page), explained =>
        {
            Assert.True(Symbols.TryGetValue(explained.Symbol, out var means), $"{page} explains {explained.Symbol}, the glossary does not have it.");
            Assert.True(!Words(explained.As).Any() || Words(explained.As).Intersect(Words(means!)).Any(), $"{page} has {explained.Symbol} for “{explained.As}”, the glossary for “{means}”.");
        });

    [Theory]
    [MemberData(nameof(CheckPages))]
    public void A_page_explains_the_same_symbols_in_both_languages(string page)
        => Assert.Equal(ExplainedOn(page).Select(explained => explained.Symbol), ExplainedOn(page.Replace("docs/", "docs/nl/", StringComparison.Ordinal)).Select(explained => explained.Symbol));

    [Fact]
    public void Explanations_are_found_at_all() => Assert.True(CheckPages.Sum(page => ExplainedOn(page.Data).Count()) > 50);

    // Lines of formulas, in their parts: "η 0.85 manual; D, d tube diameters" explains η, D and d; a part with an equals sign or a square is a formula.
    private static IEnumerable<(string Symbol, string As)> ExplainedOn(string page) =>
        from line in Pages.Lines(page)
        where line.StartsWith("    ", StringComparison.Ordinal)
        from part in Split().Split(line.Trim())
        let found = Explanation().Match(part)
        where found.Success && part.IndexOfAny(['=', '²']) < 0
        from symbol in found.Groups["symbols"].Value.Split(", ")
        select (Index().Replace(symbol, ""), found.Groups["as"].Value);

    // By their first four letters: turn and turns, rim and rim's.
    private static IEnumerable<string> Words(string text) => Word().Matches(text).Select(word => word.Value[..Math.Min(4, word.Length)]).Except(["the", "and", "for", "from", "with", "what", "that", "where"]);

    private static IEnumerable<string[]> Rows(string part) =>
        Pages.Read("docs/glossary.md").Split($"## {part}\n")[1].Split("\n## ")[0].Split('\n')
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(1)
            .Select(line => line.Trim('|', ' ').Split(" | "));

    [GeneratedRegex(@";\s+|,\s+(?=[A-Z][₁₂]? )")]
    private static partial Regex Split();

    [GeneratedRegex(@"^(?<symbols>(?:[A-Za-zα-ω][₁₂]?(?:_\w+)?|ET|Crr)(?:, [A-Za-z])*) (?<as>(?![·+−/≤≥|(])[\w½'].*)$")]
    private static partial Regex Explanation();

    [GeneratedRegex("_.*$|[₁₂]$")]
    private static partial Regex Index();

    [GeneratedRegex(@"\p{L}{3,}")]
    private static partial Regex Word();
}
