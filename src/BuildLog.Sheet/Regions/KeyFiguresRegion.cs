using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The few numbers a reader looks for first, printed large, and the goal they are held against.</summary>
internal static class KeyFiguresRegion
{
    private const int MostColumns = 4;

    public static Block Of(SheetContent sheet) =>
        new Section("Key figures", Figures(sheet.KeyFigures), Goal(sheet.CruiseGoal)) { KeepTogether = true };

    private static Block Figures(IReadOnlyList<KeyFigure> figures)
    {
        if (figures.Count == 0) return Missing.Paragraph;

        var lines = figures.Select(figure => new LabelledLine(figure.Label, figure.Value)).ToList();
        return FigureGrid.Of(lines, Math.Min(figures.Count, MostColumns), TypeScale.Figure);
    }

    private static Panel Goal(string? goal)
    {
        var told = Missing.OrWords(goal, TypeScale.Strong);
        return new Panel(
            new Paragraph("Cruise goal", TypeScale.Label) { KeepWithNext = true },
            new Paragraph(told.Text, told.Style))
        {
            SpaceBefore = 8,
        };
    }
}
