using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Papers.Accounts;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Sheet.Papers.Comparisons;
using BuildLog.Sheet.Papers.Labels;
using BuildLog.Sheet.Papers.Orders;
using BuildLog.Sheet.Papers.Sessions;

namespace BuildLog.Sheet.Tests.Samples;

/// <summary>The papers beside the build sheet, by their names.</summary>
internal static class PapersOf
{
    private static readonly Guid Id = new("3f0a4c51-6f54-4c0e-9a94-0d2a5c1d7e22");

    private static readonly DateTimeOffset Day = new(2026, 11, 25, 14, 30, 0, TimeSpan.Zero);

    public static OptionsCompared Comparison { get; } = new() { Id = Id, Created = Day };

    /// <summary>Each paper with nothing to say.</summary>
    public static Dictionary<string, PaperContent> Nothing() => new()
    {
        ["propshaft order"] = new PropshaftOrder { Id = Id, Created = Day },
        ["measurement record"] = new SessionRecord { Id = Id, Created = Day },
        ["options compared"] = Comparison with { Options = ["as it is", "other axle"] },
        ["time sheet"] = new TimeSheet { Id = Id, Created = Day },
        ["cost sheet"] = new CostSheet { Id = Id, Created = Day },
        ["shelf labels"] = new ShelfLabels { Id = Id, Created = Day },
        ["yard card"] = new YardCard { Id = Id, Created = Day },
    };

    /// <summary>Each paper with the same text wherever it takes one.</summary>
    public static Dictionary<string, PaperContent> Everything(string text) => new()
    {
        ["propshaft order"] = new PropshaftOrder { Id = Id, Created = Day } with { About = text, Shaft = text, Pieces = [new(text, text, text, text, text, text, text)], Facts = [new(text, text)] },
        ["measurement record"] = new SessionRecord { Id = Id, Created = Day } with
        {
            About = text,
            Method = text,
            Part = text,
            Date = text,
            Who = text,
            Conditions = [text],
            Readings = [text, text],
            Result = text,
            Interval95 = text,
            Says = [text],
            Budget = [new(text, text)],
        },
        ["options compared"] = Comparison with { About = text, Goal = text, Options = [text, text, text], Rows = [new(text, [text, null]), new(text, ["clash", text], AreVerdicts: true)], Notes = [text] },
        ["time sheet"] = new TimeSheet { Id = Id, Created = Day } with { About = text, Span = text, Work = new WorkDone([new(text, text, text, text)], text) },
        ["cost sheet"] = new CostSheet { Id = Id, Created = Day } with { About = text, Span = text, Costs = new MoneySpent([new(text, text, text, text, text)], [text, text]) },
        ["shelf labels"] = new ShelfLabels { Id = Id, Created = Day } with { About = text, Labels = [.. Enumerable.Range(0, 40).Select(_ => new ShelfLabel(Id, text, [text, text, text, text]))] },
        ["yard card"] = new YardCard { Id = Id, Created = Day } with
        {
            Paper = Content.Paper.A6,
            About = text,
            Part = text,
            Wanted = [text],
            Ways = [new(text, text, [new(text, text, text), new(text, null, text)])],
            Notes = [text],
            Blanks = [new(text, text, text)],
            Cautions = [text],
        },
    };
}
