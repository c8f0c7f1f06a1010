using System.Text;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>A table as it leaves the workbench: as text with straight columns, or as CSV.</summary>
public sealed record TableText(IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    public string ToText()
    {
        IReadOnlyList<IReadOnlyList<string>> lines = [Headings, .. Rows];
        var widths = Headings.Select((_, column) => lines.Max(line => TextFit.Width(line[column]))).ToList();
        return string.Concat(lines.Select(line => string.Join("  ", line.Select((cell, column) => TextFit.Exactly(cell, widths[column]))).TrimEnd() + "\n"));
    }

    /// <summary>Fields with a comma, a quote or a line break are quoted (RFC 4180).</summary>
    public string ToCsv()
    {
        var csv = new StringBuilder();
        foreach (var line in Rows.Prepend(Headings)) csv.AppendJoin(',', line.Select(Field)).Append("\r\n");
        return csv.ToString();
    }

    private static string Field(string text)
        => text.AsSpan().IndexOfAny("\",\r\n") >= 0 ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
