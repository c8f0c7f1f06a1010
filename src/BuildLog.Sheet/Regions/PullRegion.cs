using BuildLog.Sheet.Charts;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the engine puts on the road in each gear, what the road asks, and the hills that leaves.</summary>
internal static class PullRegion
{
    private const double Height = 150;

    public static Block Of(SheetContent sheet) => new Section(Spoken("Pull and hills"), [.. Content(sheet)]) { KeepTogether = true };

    private static IEnumerable<Block> Content(SheetContent sheet)
    {
        if (sheet.Pull is not { } pull || !CurvePlate.CanDraw(pull.Power) || !CurvePlate.CanDraw(pull.Hill))
            return [sheet.PullLacks is { } lacks ? new Paragraph(Spoken($"not drawn without {lacks}"), TypeScale.Missing) : Missing.Paragraph];

        var charts = new PlateRow(Height, 2, [CurvePlate.Of(pull.Power), CurvePlate.Of(pull.Hill)]) { SpaceBefore = 2 };
        IEnumerable<Block> effort = pull.Effort is { } chart && CurvePlate.CanDraw(chart) ? [new PlateRow(Height, 2, [CurvePlate.Of(chart)]) { SpaceBefore = 2 }] : [];
        IEnumerable<Block> note = pull.Note is { } text ? [new Paragraph(text, TypeScale.Note) { SpaceBefore = 2 }] : [];
        return [charts, .. effort, .. note];
    }
}
