using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>The box that says what this sheet is not.</summary>
internal static class CautionsRegion
{
    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Cautions"), new Panel(Content(sheet.Cautions)) { Outlined = true, SpaceBefore = 3 }) { KeepTogether = true };

    private static Block Content(IReadOnlyList<string> cautions) =>
        cautions.Count == 0 ? Missing.Paragraph : new Bullets(cautions, TypeScale.Body);
}
