using System.Reflection;
using System.Text.RegularExpressions;

namespace BuildLog.Tui.Shell;

/// <summary>The help texts carried in the program: Help/NAME.md, and docs/checks/ID.md for each check; first line the title. Other languages have theirs in a folder of their code: Help/nl and docs/nl/checks.</summary>
/// <remarks>Marks understood: "# title", "## heading", "    formula" and plain paragraphs, one a line; in these *words as they are typed*, which are shown between quotes.</remarks>
public static partial class HelpText
{
    private const string Folder = "Help/";
    private const string IdOfCheck = "Id in JSON: ";

    /// <summary>Names of all pages.</summary>
    public static IReadOnlyList<string> Pages =>
    [
        .. typeof(HelpText).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^3])
            .Where(page => !Language.All.Any(language => page.StartsWith($"{language.Code}/", StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Name of the page of a check.</summary>
    public static string OfCheck(string id) => $"checks/{id}";

    public static string TitleOf(string page) => Read(page)[0].TrimStart('#', ' ');

    /// <summary>What F1 shows. What programs call a check by is for who reads the page as a document.</summary>
    public static IReadOnlyList<TextLine> Of(string page)
        => [.. Read(page).Skip(1).Where(line => !line.StartsWith(IdOfCheck, StringComparison.Ordinal)).SkipWhile(string.IsNullOrWhiteSpace).Select(Line)];

    /// <summary>Whether a language has the page in its own words.</summary>
    public static bool Has(string page, Language language)
    {
        using var stream = Translated(page, language);
        return stream is not null;
    }

    private static Stream? Translated(string page, Language language) => Written($"{language.Code}/{page}");

    private static Stream? Written(string page) => Assembly.GetExecutingAssembly().GetManifestResourceStream($"{Folder}{page}.md");

    private static TextLine Line(string line) =>
        line.StartsWith("## ", StringComparison.Ordinal) ? TextLine.Of(line[3..], Tone.Heading)
        : line.StartsWith("    ", StringComparison.Ordinal) ? TextLine.Of(line, Tone.Strong)
        : TextLine.Of(Typed().Replace(line, "'$1'"));

    // A sign that stands alone, such as the * beside a column, is itself.
    [GeneratedRegex(@"\*(\S(?:[^*]*\S)?)\*")]
    private static partial Regex Typed();

    private static string[] Read(string page)
    {
        // A page that is not translated yet is better read in English than not at all.
        using var stream = Translated(page, Language.Spoken) ?? Written(page)
            ?? throw new ArgumentException($"There is no help page “{page}”.", nameof(page));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().TrimEnd().Split('\n');
    }
}
