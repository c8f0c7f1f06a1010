using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What is fitted beside other parts: matters down, options across. Nobody who did not ask for it gets it.</summary>
internal static class OptionsRegion
{
    private static readonly TableLook Look = new() { PadY = 3.5 };

    public static Block? Of(SheetContent sheet)
        => sheet.Options is { } options ? new Section(Spoken("Options beside each other"), TableOf(options)) { KeepTogether = true } : null;

    /// <summary>The same on a paper of its own.</summary>
    public static Block TableOf(ComparedOptions compared)
    {
        IReadOnlyList<Column> columns = [new("", 1.5), .. compared.Options.Select(option => new Column(option, 1.2))];
        return compared.Rows.Count == 0 ? Missing.Paragraph : new Table(columns, [.. compared.Rows.Select(row => RowOf(row, compared.Options.Count))], Look);
    }

    private static IReadOnlyList<Cell> RowOf(ComparedRow row, int options) =>
    [
        Missing.CellOf(row.Matter, TypeScale.Strong),
        .. Enumerable.Range(0, options).Select(i => i < row.Values.Count ? row.Values[i] : null).Select(text =>
            row.AreVerdicts && !string.IsNullOrWhiteSpace(text) ? new Cell(VerdictBadge.Of(text)) : Missing.CellOf(text, TypeScale.Body)),
    ];
}
