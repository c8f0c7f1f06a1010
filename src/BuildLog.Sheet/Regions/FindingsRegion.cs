using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the checks say, the verdict's word first.</summary>
internal static class FindingsRegion
{
    private static IReadOnlyList<Column> Columns => [new(Spoken("Verdict"), 1), new(Spoken("Finding"), 7)];

    public static Block Of(SheetContent sheet) =>
        new Section(
            Spoken("Findings"),
            sheet.Findings.Count == 0 ? [Missing.Paragraph] : [new Paragraph(Verdicts, TypeScale.Note) { KeepWithNext = true }, new Table(Columns, [.. sheet.Findings.Select(RowOf)], Look) { SpaceBefore = 2 }]);

    private static string Verdicts => Spoken("fits: inside what is wanted for certain; clash: outside for certain; watch: too near a limit to tell, or against common practice; open: something is not known yet.");

    private static readonly TableLook Look = new() { PadY = 3.5 };

    private static IReadOnlyList<Cell> RowOf(SheetFinding finding)
    {
        List<CellText> said =
        [
            Missing.OrWords(finding.Title, TypeScale.Strong),
            Missing.OrWords(finding.Sentence, TypeScale.Body),
        ];
        if (!string.IsNullOrWhiteSpace(finding.Cure)) said.Add(new CellText(Spoken($"Cure: {finding.Cure}"), TypeScale.Body));
        if (!string.IsNullOrWhiteSpace(finding.SettledBy)) said.Add(new CellText(Spoken($"To settle it: {finding.SettledBy}"), TypeScale.Note));

        return [new Cell(VerdictBadge.Of(Missing.OrWords(finding.Verdict))), new Cell(said)];
    }
}
