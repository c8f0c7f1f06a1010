using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Papers.Accounts;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Sheet.Papers.Comparisons;
using BuildLog.Sheet.Papers.Labels;
using BuildLog.Sheet.Papers.Orders;
using BuildLog.Sheet.Papers.Sessions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using UglyToad.PdfPig.Tokens;

namespace BuildLog.Sheet.Tests.Papers;

public sealed class OtherPapersTests
{
    private static readonly Guid Id = new("3f0a4c51-6f54-4c0e-9a94-0d2a5c1d7e22");

    private static readonly DateTimeOffset Day = new(2026, 11, 25, 14, 30, 0, TimeSpan.Zero);

    public static TheoryData<string> Kinds => [.. All("Kestrel").Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_says_what_it_was_given_and_is_tagged(string kind)
    {
        using var pdf = Read(All("Kestrel")[kind]);

        Assert.Contains("Kestrel", TextOf(pdf), StringComparison.Ordinal);
        Assert.EndsWith($": {kind}", pdf.Information.Title, StringComparison.Ordinal);
        Assert.True(pdf.Structure.Catalog.CatalogDictionary.TryGet(NameToken.Create("StructTreeRoot"), out _));
        Assert.True(pdf.TryGetBookmarks(out _));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_is_printed_from_nothing_and_says_so(string kind)
    {
        using var pdf = Read(Empty()[kind]);

        Assert.Contains(kind == "shelf labels" ? "no parts yet" : "not recorded", TextOf(pdf), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void None_lets_text_run_off_the_page(string kind)
    {
        foreach (var text in new[] { new string('W', 10_000), "Ke\u0007st\u202Er\u200Bel", "Жук Ζέφυρος Šķūnis" })
        {
            var drawn = PaperWriter.Draw(All(text)[kind]);

            Assert.All(drawn.Pages, page => Assert.All(page.Operations.OfType<Drawing.DrawText>(), ink =>
            {
                Assert.InRange(ink.X, 0, page.Width);
                Assert.InRange(ink.Right, 0, page.Width);
                Assert.InRange(ink.Baseline, 0, page.Height);
            }));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_same_content_gives_the_same_bytes(string kind)
    {
        using MemoryStream one = new(), two = new();
        PaperWriter.Write(All("Kestrel")[kind], one);
        PaperWriter.Write(All("Kestrel")[kind], two);

        Assert.Equal(one.ToArray(), two.ToArray());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void A_comparison_has_two_to_four_columns(int options)
        => Assert.Throws<ArgumentException>(() => PaperWriter.Draw(new OptionsCompared { Id = Id, Created = Day } with { Options = [.. Enumerable.Repeat("axle", options)] }));

    private static Dictionary<string, PaperContent> Empty() => new()
    {
        ["propshaft order"] = new PropshaftOrder { Id = Id, Created = Day },
        ["measurement record"] = new SessionRecord { Id = Id, Created = Day },
        ["options compared"] = new OptionsCompared { Id = Id, Created = Day } with { Options = ["as it is", "other axle"] },
        ["time sheet"] = new TimeSheet { Id = Id, Created = Day },
        ["cost sheet"] = new CostSheet { Id = Id, Created = Day },
        ["shelf labels"] = new ShelfLabels { Id = Id, Created = Day },
        ["yard card"] = new YardCard { Id = Id, Created = Day },
    };

    private static Dictionary<string, PaperContent> All(string text) => new()
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
        ["options compared"] = new OptionsCompared { Id = Id, Created = Day } with { About = text, Goal = text, Options = [text, text, text], Rows = [new(text, [text, null]), new(text, ["clash", text], AreVerdicts: true)], Notes = [text] },
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

    private static PdfDocument Read(PaperContent content)
    {
        using var stream = new MemoryStream();
        PaperWriter.Write(content, stream);
        return PdfDocument.Open(stream.ToArray());
    }

    private static string TextOf(PdfDocument pdf) => string.Join('\n', pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)));
}
