using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The propshafts, piece by piece: tube, joints, and how far they stay from whipping.</summary>
internal static class PropshaftRegion
{
    private static IReadOnlyList<Column> Columns =>
    [
        new(Spoken("Piece"), 1), new(Spoken("Tube"), 1.3), new(Spoken("Joint to joint"), 1), new(Spoken("Joint angles"), 1.2), new(Spoken("Yokes"), 0.9), new(Spoken("Critical speed"), 1.2),
        new(Spoken("Fastest turn"), 1.4),
    ];

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Propshafts"), sheet.Propshafts.Count == 0 ? Missing.Paragraph : new Table(Columns, [.. sheet.Propshafts.Select(RowOf)]));

    private static IReadOnlyList<Cell> RowOf(PropshaftRow row)
    {
        string?[] texts = [row.Piece, row.Tube, row.Length, row.JointAngles, row.Yokes, row.CriticalSpeed, row.FastestTurn];
        return [.. texts.Select(text => Missing.CellOf(text, TypeScale.Body))];
    }
}
