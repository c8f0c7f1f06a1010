namespace BuildLog.Sheet.Preview;

/// <summary>A table as text: in columns where it fits the width, otherwise each row as its name with the other cells below, named by their heads.</summary>
internal sealed class TextTable
{
    private const int Gap = 2;

    private readonly List<List<string>> rows = [];
    private IReadOnlyList<string> heads = [];

    public void StartRow() => rows.Add([]);

    /// <summary>A cell of a table without heads is a label with its value, and goes on one line.</summary>
    public void EndCell(string text) => rows[^1].Add(heads.Count == 0 ? text.Replace("\n", " · ", StringComparison.Ordinal) : text);

    public void EndHead()
    {
        heads = rows[^1];
        rows.Clear();
    }

    /// <summary>The rows so far; those of the next page come under the same heads.</summary>
    public IReadOnlyList<string> TakeLines(int width)
    {
        if (rows.Count == 0) return [];

        List<IReadOnlyList<string>> all = heads.Count > 0 ? [heads, .. rows] : [.. rows];
        var columns = all.Max(row => row.Count);
        var widths = Enumerable.Range(0, columns).Select(c => all.Max(row => c < row.Count ? row[c].Length : 0)).ToList();
        var inColumns = widths.Sum() + Gap * (columns - 1) <= width && all.All(row => row.All(cell => !cell.Contains('\n', StringComparison.Ordinal)));
        IReadOnlyList<string> lines = inColumns
            ? [.. all.Select(row => string.Join(new string(' ', Gap), row.Select((cell, c) => cell.PadRight(widths[c]))).TrimEnd())]
            : [.. rows.SelectMany(row => OneBelowTheOther(row, width))];
        rows.Clear();
        return lines;
    }

    private IEnumerable<string> OneBelowTheOther(IReadOnlyList<string> row, int width)
    {
        for (var c = 0; c < row.Count; c++)
        {
            if (row[c].Length == 0) continue;

            var head = c < heads.Count && heads[c].Length > 0 && c > 0 ? $"{heads[c]}: " : "";
            var indent = heads.Count == 0 || c == 0 ? "" : "  ";
            foreach (var line in TextWrap.Lines(head + row[c], width, indent, indent + "  ")) yield return line;
        }
    }
}
