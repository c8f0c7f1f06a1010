namespace BuildLog.Sheet.Preview;

/// <summary>A table as text: in columns where its cells fit them, broken to several lines if need be; otherwise each row as its name with the other cells below, named by their heads.</summary>
internal sealed class TextTable
{
    private const int Gap = 2;
    private const int LeastForWords = 28; // a column that breaks its cells gets at least so much, and at most a line that is easily read

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

    /// <summary>The rows so far as a table of their own; those of the next page come under the same heads. Null where there are none.</summary>
    public TextTable? TakeRows()
    {
        if (rows.Count == 0) return null;

        var taken = new TextTable { heads = heads };
        taken.rows.AddRange(rows);
        rows.Clear();
        return taken;
    }

    public IEnumerable<string> Lines(int width)
    {
        List<IReadOnlyList<string>> all = heads.Count > 0 ? [heads, .. rows] : [.. rows];
        return Columns(all, width) is { } widths ? all.SelectMany(row => Beside(row, widths)) : rows.SelectMany(row => OneBelowTheOther(row, width));
    }

    // As wide as their longest cells; where that is too much, the widest give way to one width. Null where that is too narrow for words.
    private static List<int>? Columns(List<IReadOnlyList<string>> all, int width)
    {
        var wished = Enumerable.Range(0, all.Max(row => row.Count)).Select(c => all.Max(row => c < row.Count ? row[c].Split('\n').Max(line => line.Length) : 0)).ToList();
        var room = width - (Gap * (wished.Count - 1));
        var most = Math.Min(wished.Max(), PreviewSetup.LongestLine);
        while (most > 0 && wished.Sum(wish => Math.Min(wish, most)) > room) most--;
        return most >= Math.Min(wished.Max(), LeastForWords) ? [.. wished.Select(wish => Math.Min(wish, most))] : null;
    }

    private static IEnumerable<string> Beside(IReadOnlyList<string> row, List<int> widths)
    {
        var cells = row.Select((cell, c) => TextWrap.Lines(cell, widths[c]).ToList()).ToList();
        return Enumerable.Range(0, cells.Max(lines => lines.Count)).Select(y => string.Join(new string(' ', Gap), cells.Select((lines, c) => (lines.ElementAtOrDefault(y) ?? "").PadRight(widths[c]))).TrimEnd());
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
