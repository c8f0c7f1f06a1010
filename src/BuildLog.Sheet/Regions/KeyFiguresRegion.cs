using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The few numbers a reader looks for first, printed large, and the goal they are held against, and what the findings come to.</summary>
internal static class KeyFiguresRegion
{
    private const int MostColumns = 4;

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Key figures"), Figures(sheet.KeyFigures), Goal(sheet.CruiseGoal, sheet.Judged)) { KeepTogether = true };

    private static Block Figures(IReadOnlyList<KeyFigure> figures)
    {
        if (figures.Count == 0) return Missing.Paragraph;

        // The number stands above its label, so that the numbers line up whatever the labels need.
        List<Cell> cells = [.. figures.Select(figure =>
            new Cell(Missing.OrWords(figure.Value, TypeScale.Figure), Missing.OrWords(figure.Label, TypeScale.Label)))];
        return FigureGrid.Fitting(cells, Math.Min(figures.Count, MostColumns));
    }

    private static Panel Goal(string? goal, string? judged)
    {
        Block[] verdicts = string.IsNullOrWhiteSpace(judged) ? [] : [.. Told(Spoken("Findings"), judged)];
        return new Panel([.. Told(Spoken("Cruise goal"), goal), .. verdicts]) { SpaceBefore = 7 };
    }

    private static IEnumerable<Block> Told(string label, string? words)
    {
        var told = Missing.OrWords(words, TypeScale.Strong);
        return [new Paragraph(label, TypeScale.Label) { KeepWithNext = true }, new Paragraph(told.Text, told.Style)];
    }
}
