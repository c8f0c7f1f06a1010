using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Reference;

/// <summary>The list of keys, docs/keys.md: what F1 says about keys on each page, put together.</summary>
internal static class KeyPages
{
    private const string Heading = "Keys";

    // The order in which they are met; help pages that speak of no keys are not here.
    private static readonly string[] Pages = ["Workbench", "Speeds", "Measured", "Options", "Wanted", "Plans", "Forms", "TurnCount"];

    public static string Write()
        => "# Keys\n\nPut together from the program's help, where F1 shows the same. Everything works by keyboard alone; the keys that work now stand in the bottom line.\n"
            + string.Concat(Pages.SelectMany(Sections).Select(section => $"\n## {section.Title}\n\n{string.Concat(section.Lines.Select(line => $"    {line.Trim()}\n"))}"));

    /// <summary>The sections of a help page whose heading begins with "Keys".</summary>
    public static IEnumerable<(string Title, IReadOnlyList<string> Lines)> Sections(string page)
    {
        var lines = HelpText.Of(page);
        for (var i = 0; i < lines.Count; i++)
        {
            if (IsHeading(lines[i]) && lines[i].Text.StartsWith(Heading, StringComparison.Ordinal))
                yield return (lines[i].Text, [.. lines.Skip(i + 1).TakeWhile(line => !IsHeading(line) && line.Text.StartsWith("  ", StringComparison.Ordinal)).Select(line => line.Text)]);
        }
    }

    /// <summary>Key and meaning, of lines such as "  n   a new vehicle     e   edit the chosen one".</summary>
    public static IEnumerable<(string Key, string Does)> Entries(string page)
    {
        foreach (var line in Sections(page).SelectMany(section => section.Lines))
        {
            var parts = line.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            for (var i = 0; i + 1 < parts.Length; i += 2) yield return (parts[i], parts[i + 1]);
        }
    }

    private static bool IsHeading(TextLine line) => line.Runs is [{ Tone: Tone.Heading }, ..];
}
