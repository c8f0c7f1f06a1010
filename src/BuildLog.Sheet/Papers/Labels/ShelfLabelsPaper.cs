using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Papers.Labels;

/// <summary>A page of labels: a small head that may be cut away, then rows of three.</summary>
internal static class ShelfLabelsPaper
{
    private const int Columns = 3;

    public static DrawnDocument Draw(ShelfLabels labels) => PlainPaper.Draw(labels, Spoken("shelf labels"),
        labels.Labels.Count == 0
            ? [new Section(Spoken("Labels"), new Paragraph(Spoken("no parts yet"), TypeScale.Missing))]
            : labels.Labels.Chunk(Columns).Select((row, i) => new LabelRow(row, Columns, first: i == 0, last: (i + 1) * Columns >= labels.Labels.Count) { SpaceBefore = i == 0 ? 10 : 0 }));
}
