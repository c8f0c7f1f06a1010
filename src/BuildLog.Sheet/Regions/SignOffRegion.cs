using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>Lines to sign on.</summary>
internal static class SignOffRegion
{
    private static IReadOnlyList<Column> Columns => [new(Spoken("Role"), 1.5), new(Spoken("Name"), 2), new(Spoken("Signature"), 2.5), new(Spoken("Date"), 1.2)];

    private static readonly TableLook Look = new() { LeastRowHeight = 24, PadY = 7, WritingGap = 10, PadX = 10, KeepTogether = true };

    public static Block Of(SheetContent sheet) => Of(sheet.Signatures);

    public static Block Of(IReadOnlyList<SignatureLine> signatures) =>
        new Section(Spoken("Signatures"), signatures.Count == 0 ? Missing.Paragraph : new Table(Columns, [.. signatures.Select(RowOf)], Look))
        {
            KeepTogether = true,
        };

    private static IReadOnlyList<Cell> RowOf(SignatureLine line) =>
        [Missing.CellOf(line.Role, TypeScale.Body), Written(line.Name), new([]), Written(line.Date)];

    /// <summary>Blank is not "not recorded" here: it is where somebody writes.</summary>
    private static Cell Written(string? text) => new(new CellText(text ?? "", TypeScale.Body));
}
