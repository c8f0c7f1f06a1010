using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuildLog.Languages.Tests;

/// <summary>
/// Every text that the program says to people has its Dutch, and in no language is anything left of what it says no more. BUILDLOG_WRITE_TEXTS=1 writes what is missing,
/// empty, and drops the rest; a language that has no catalogue yet gets one.
/// </summary>
public sealed partial class CatalogueTests
{
    /// <summary>Those in which everything is said; any other says the rest in English.</summary>
    private static readonly IReadOnlyList<string> Whole = ["nl"];

    public static TheoryData<string, string> Catalogues => new(from language in CatalogueFile.Languages from project in SourceOfProject.All select (project, language));

    [Theory, MemberData(nameof(Catalogues))]
    public void Every_text_that_is_said_is_translated_and_no_other(string project, string language)
    {
        var said = SaidTexts.Own(project);
        var written = CatalogueFile.Of(project, language);
        if (Environment.GetEnvironmentVariable("BUILDLOG_WRITE_TEXTS") == "1") Write(project, language, said, written);

        if (Whole.Contains(language)) Assert.Empty(said.Where(text => written.GetValueOrDefault(text.Text, "").Length == 0).Select(text => $"{text.File}: {text.Text}"));
        Assert.Empty(written.Keys.Except(said.Select(text => text.Text)));
    }

    [Theory, MemberData(nameof(Catalogues))]
    public void A_translation_has_the_same_places_and_is_glued_to_its_neighbours_alike(string project, string language)
        => Assert.Empty(CatalogueFile.Of(project, language).Where(entry => entry.Value.Length > 0 && (!Places(entry.Key).SequenceEqual(Places(entry.Value)) || Glue(entry.Key) != Glue(entry.Value))).Select(entry => $"{entry.Key} → {entry.Value}"));

    private static void Write(string project, string language, IReadOnlyList<SaidText> said, IReadOnlyDictionary<string, string> written)
    {
        var text = new StringBuilder($"msgid \"\"\nmsgstr \"\"\n\"Language: {language}\\n\"\n\"MIME-Version: 1.0\\n\"\n\"Content-Type: text/plain; charset=UTF-8\\n\"\n\"Content-Transfer-Encoding: 8bit\\n\"\n");
        foreach (var entry in said)
            text.Append(CultureInfo.InvariantCulture, $"\n#: {entry.File}\nmsgid {Quoted(entry.Text)}\nmsgstr {Quoted(written.GetValueOrDefault(entry.Text, ""))}\n");
        File.WriteAllText(CatalogueFile.Path(project, language), text.ToString());
    }

    private static string Quoted(string text)
        => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal).Replace("\t", "\\t", StringComparison.Ordinal)}\"";

    private static IEnumerable<string> Places(string text) => Place().Matches(text).Select(place => place.Value).Order(StringComparer.Ordinal);

    // A blank before or behind parts it from what stands beside it.
    private static (bool Before, bool Behind) Glue(string text) => (text[0] == ' ', text[^1] == ' ');

    [GeneratedRegex(@"(?<!\{)\{\d+\}")]
    private static partial Regex Place();
}
