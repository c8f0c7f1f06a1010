using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What an insurer asks first.</summary>
internal static class PowerAndValueRegion
{
    private const int MostColumns = 3;

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Power and value"), sheet.PowerAndValue.Count == 0 ? Missing.Paragraph : FigureGrid.Of(sheet.PowerAndValue.Select(CellOf), Math.Min(sheet.PowerAndValue.Count, MostColumns)))
        {
            KeepTogether = true,
        };

    private static Cell CellOf(LabelledLine line) => new(new CellText(line.Label, TypeScale.Label), Missing.OrWords(line.Value, TypeScale.Strong));
}
