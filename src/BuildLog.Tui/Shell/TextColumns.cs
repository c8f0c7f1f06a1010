namespace BuildLog.Tui.Shell;

/// <summary>Blocks of text side by side, row after row of them, each block wrapped to the width of its column.</summary>
internal static class TextColumns
{
    private const int Gap = 3;

    public static IReadOnlyList<TextLine> Of(IReadOnlyList<IReadOnlyList<TextLine>> blocks, int columns, int width)
    {
        var each = ((width + Gap) / columns) - Gap;
        return [.. blocks.Chunk(columns).SelectMany((row, i) => i == 0 ? Beside(row, each) : Beside(row, each).Prepend(TextLine.Empty))];
    }

    private static IEnumerable<TextLine> Beside(IReadOnlyList<TextLine>[] blocks, int width)
    {
        var wrapped = blocks.Select(block => block.SelectMany(line => TextPage.Wrap(line, width)).ToList()).ToList();
        for (var y = 0; y < wrapped.Max(block => block.Count); y++) yield return new TextLine([.. wrapped.SelectMany(block => Filled(block.ElementAtOrDefault(y) ?? TextLine.Empty, width))]);
    }

    private static IEnumerable<TextRun> Filled(TextLine line, int width)
        => line.Runs.Append(new TextRun(new string(' ', Math.Max(0, width - TextFit.Width(line.Text)) + Gap)));
}
