using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Languages;

namespace BuildLog.Languages.Tests;

/// <summary>Every text that the program says to people has its Dutch, and no Dutch is left of what it says no more. BUILDLOG_WRITE_TEXTS=1 writes what is missing, empty, and drops the rest.</summary>
public sealed partial class CatalogueTests
{
    private const string Header = "msgid \"\"\nmsgstr \"\"\n\"Language: nl\\n\"\n\"MIME-Version: 1.0\\n\"\n\"Content-Type: text/plain; charset=UTF-8\\n\"\n\"Content-Transfer-Encoding: 8bit\\n\"\n";

    public static TheoryData<string> Projects => [.. SourceOfProject.All];

    [Theory, MemberData(nameof(Projects))]
    public void Every_text_that_is_said_is_translated_and_no_other(string project)
    {
        var said = SaidTexts.Own(project);
        var written = Written(project);
        if (Environment.GetEnvironmentVariable("BUILDLOG_WRITE_TEXTS") == "1") Write(project, said, written);

        Assert.Empty(said.Where(text => written.GetValueOrDefault(text.Text, "").Length == 0).Select(text => $"{text.File}: {text.Text}"));
        Assert.Empty(written.Keys.Except(said.Select(text => text.Text)));
    }

    [Theory, MemberData(nameof(Projects))]
    public void A_translation_has_the_same_places_and_is_glued_to_its_neighbours_alike(string project)
        => Assert.Empty(Written(project).Where(entry => entry.Value.Length > 0 && (!Places(entry.Key).SequenceEqual(Places(entry.Value)) || Glue(entry.Key) != Glue(entry.Value))).Select(entry => $"{entry.Key} → {entry.Value}"));

    private static Dictionary<string, string> Written(string project)
    {
        using var file = File.OpenText(SourceOfProject.Catalogue(project));
        return PoFile.Read(file).ToDictionary(entry => entry.Text, entry => entry.Translation, StringComparer.Ordinal);
    }

    private static void Write(string project, IReadOnlyList<SaidText> said, Dictionary<string, string> written)
    {
        var text = new StringBuilder(Header);
        foreach (var entry in said)
            text.Append(CultureInfo.InvariantCulture, $"\n#: {entry.File}\nmsgid {Quoted(entry.Text)}\nmsgstr {Quoted(written.GetValueOrDefault(entry.Text, ""))}\n");
        File.WriteAllText(SourceOfProject.Catalogue(project), text.ToString());
    }

    private static string Quoted(string text)
        => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal).Replace("\t", "\\t", StringComparison.Ordinal)}\"";

    private static IEnumerable<string> Places(string text) => Place().Matches(text).Select(place => place.Value).Order(StringComparer.Ordinal);

    // A blank before or behind parts it from what stands beside it.
    private static (bool Before, bool Behind) Glue(string text) => (text[0] == ' ', text[^1] == ' ');

    [GeneratedRegex(@"(?<!\{)\{\d+\}")]
    private static partial Regex Place();
}
