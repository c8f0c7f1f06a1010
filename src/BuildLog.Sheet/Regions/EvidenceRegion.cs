using System.Globalization;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>What the numbers rest on: one row a measurement session, with the readings as they were typed.</summary>
internal static class EvidenceRegion
{
    private static IReadOnlyList<Column> Columns =>
        [new(Spoken("Measured"), 1.5), new(Spoken("How"), 2), new(Spoken("Readings"), 1.9), new(Spoken("Result"), 1.6)];

    private static readonly TableLook Look = new() { PadY = 3.5 };

    private static string Legend =>
        Spoken("Behind ± stands the expanded uncertainty: the truth lies no further off, 95 times of 100. It is k times the standard uncertainty, which the scatter of the readings and the conditions make (JCGM 100:2008).");

    public static Block Of(SheetContent sheet) => new Section(Spoken("Measurement evidence"), sheet.Evidence.Count == 0
        ? [Missing.Paragraph]
        : [new Paragraph(Legend, TypeScale.Note) { KeepWithNext = true }, new Table(Columns, [.. sheet.Evidence.Select(RowOf)], Look) { SpaceBefore = 4 }]);

    private static IReadOnlyList<Cell> RowOf(EvidenceEntry entry) =>
    [
        new(Missing.OrWords(entry.What, TypeScale.Strong), Labelled(Spoken("Date"), entry.Date), Labelled(Spoken("Who"), entry.Who)),
        new(Missing.OrWords(entry.Method, TypeScale.Body), Labelled(Spoken("Conditions"), entry.Conditions)),
        new([.. Readings(entry.Readings)]),
        new(Missing.OrWords(entry.Result, TypeScale.Strong), Labelled(Spoken("95 % interval"), entry.Interval95), Labelled(Spoken("Expanded uncertainty ±"), entry.ExpandedUncertainty)),
    ];

    private static IEnumerable<CellText> Readings(IReadOnlyList<string> readings) =>
        readings.Count == 0
            ? [Missing.OrWords(null, TypeScale.Body)]
            : [.. readings.Select(reading => Missing.OrWords(reading, TypeScale.Body)), Labelled("n", readings.Count.ToString(CultureInfo.InvariantCulture))];

    private static CellText Labelled(string label, string? text) =>
        new($"{label}: {Missing.OrWords(text)}", TypeScale.Label);
}
