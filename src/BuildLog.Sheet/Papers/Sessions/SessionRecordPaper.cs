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
    private static readonly IReadOnlyList<Column> ReadingColumns = [new("No.", 0.4), new("As typed", 4)];

    private static readonly IReadOnlyList<Column> BudgetColumns = [new("Input", 4), new("Share of the variance", 1.4, Align.Right)];

    public static DrawnDocument Draw(SessionRecord session) => PlainPaper.Draw(session, "measurement record",
    [
        new Section("What was measured", FactTable.Of(
        [
            new("Part", session.Part),
            new("Method", session.Method),
            new("Date", session.Date),
            new("Who", session.Who),
            new("Conditions", string.Join("; ", session.Conditions)),
        ])),
        new Section($"Readings, n = {session.Readings.Count.ToString(CultureInfo.InvariantCulture)}", Readings(session)),
        new Section("Result", [.. Result(session)]),
        new Section("What the uncertainty is made of", Budget(session)),
        SignOffRegion.Of(session.Signatures),
    ]);

    private static IEnumerable<Block> Result(SessionRecord session) =>
    [
        FactTable.Of(
        [
            new("Result", session.Result),
            new("95 % interval", session.Interval95),
            new("Expanded uncertainty", session.ExpandedUncertainty),
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
