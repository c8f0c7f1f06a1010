using System.Globalization;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers.Sessions;

/// <summary>The measurement record of one session.</summary>
internal static class SessionRecordPaper
{
    private static IReadOnlyList<Column> ReadingColumns => [new(Spoken("No."), 0.4), new(Spoken("As typed"), 4)];

    private static IReadOnlyList<Column> BudgetColumns => [new(Spoken("Input"), 4), new(Spoken("Share of the variance"), 1.4, Align.Right)];

    public static DrawnDocument Draw(SessionRecord session) => PlainPaper.Draw(session, Spoken("measurement record"),
    [
        new Section(Spoken("What was measured"), FactTable.Of(
        [
            new(Spoken("Part"), session.Part),
            new(Spoken("Method"), session.Method),
            new(Spoken("Date"), session.Date),
            new(Spoken("Who"), session.Who),
            new(Spoken("Conditions"), string.Join("; ", session.Conditions)),
        ])),
        new Section(Spoken($"Readings, n = {session.Readings.Count.ToString(CultureInfo.InvariantCulture)}"), Readings(session)),
        new Section(Spoken("Result"), [.. Result(session)]),
        new Section(Spoken("What the uncertainty is made of"), Budget(session)),
        SignOffRegion.Of(session.Signatures),
    ]);

    private static IEnumerable<Block> Result(SessionRecord session) =>
    [
        FactTable.Of(
        [
            new(Spoken("Result"), session.Result),
            new(Spoken("95 % interval"), session.Interval95),
            new(Spoken("Expanded uncertainty"), session.ExpandedUncertainty),
        ]),
        .. session.Says.Select(sentence => new Paragraph(sentence, TypeScale.Body) { SpaceBefore = 3 }),
    ];

    private static Block Readings(SessionRecord session) =>
        session.Readings.Count == 0
            ? Missing.Paragraph
            : new Table(ReadingColumns, [.. session.Readings.Select((reading, i) => (IReadOnlyList<Cell>)
                [new(new CellText((i + 1).ToString(CultureInfo.InvariantCulture), TypeScale.Body)), Missing.CellOf(reading, TypeScale.Strong)])]);

    private static Block Budget(SessionRecord session) =>
        session.Budget.Count == 0
            ? Missing.Paragraph
            : new Table(BudgetColumns, [.. session.Budget.Select(Row)]);

    private static IReadOnlyList<Cell> Row(LabelledLine line) => [Missing.CellOf(line.Label, TypeScale.Body), Missing.CellOf(line.Value, TypeScale.Body)];
}
