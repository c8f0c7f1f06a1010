using System.Reflection;

namespace BuildLog.Tui.Shell;

/// <summary>The help texts carried in the program: Help/NAME.md, and docs/checks/ID.md for each check; first line the title. Other languages have theirs in Help/nl and docs/nl/checks.</summary>
/// <remarks>Marks understood: "# title", "## heading", "    formula" and plain paragraphs, one a line.</remarks>
public static class HelpText
{
    private const string Prefix = "BuildLog.Tui.Help.";

    /// <summary>Names of all pages.</summary>
    public static IReadOnlyList<string> Pages =>
    [
        .. typeof(HelpText).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => name[Prefix.Length..^3])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Name of the page of a check.</summary>
    public static string OfCheck(string id) => $"Checks.{id}";

    public static string TitleOf(string page) => Read(page)[0].TrimStart('#', ' ');

    public static IReadOnlyList<TextLine> Of(string page) => [.. Read(page).Skip(1).SkipWhile(string.IsNullOrWhiteSpace).Select(Line)];

    /// <summary>Whether a language has the page in its own words.</summary>
    public static bool Has(string page, Language language)
    {
        using var stream = Translated(page, language);
        return stream is not null;
    }

    private static Stream? Translated(string page, Language language) => Assembly.GetExecutingAssembly().GetManifestResourceStream($"BuildLog.Tui.{language.Code}.Help.{page}.md");

    private static TextLine Line(string line) =>
        line.StartsWith("## ", StringComparison.Ordinal) ? TextLine.Of(line[3..], Tone.Heading)
        : line.StartsWith("    ", StringComparison.Ordinal) ? TextLine.Of(line, Tone.Strong)
        : TextLine.Of(line);

    private static string[] Read(string page)
    {
        // A page that is not translated yet is better read in English than not at all.
        using var stream = Translated(page, Language.Spoken) ?? Assembly.GetExecutingAssembly().GetManifestResourceStream($"{Prefix}{page}.md")
            ?? throw new ArgumentException($"There is no help page “{page}”.", nameof(page));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().TrimEnd().Split('\n');
    }
}
