using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Papers;

/// <summary>Labels with their values, one below the other.</summary>
internal static class FactTable
{
    private static IReadOnlyList<Column> Columns => [new(Spoken("What"), 1), new(Spoken("Value"), 2)];

    private static readonly TableLook Look = new() { ShowsHead = false, PadY = 2.6 };

    public static Block Of(IReadOnlyList<LabelledLine> facts) =>
        facts.Count == 0
            ? Missing.Paragraph
            : new Table(Columns, [.. facts.Select(fact => (IReadOnlyList<Cell>)[Missing.CellOf(fact.Label, TypeScale.Body), Missing.CellOf(fact.Value, TypeScale.Strong)])], Look);
}
