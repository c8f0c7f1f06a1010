using BuildLog.Gearing.Languages;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Tests.Samples;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using UglyToad.PdfPig.Tokens;

namespace BuildLog.Sheet.Tests.Papers;

public sealed class OtherPapersTests
{
    public static TheoryData<string> Kinds => [.. PapersOf.Everything("Kestrel").Keys];

    [Fact]
    public void Every_paper_is_among_them()
    {
        var papers = typeof(PaperContent).Assembly.GetTypes().Where(type => !type.IsAbstract && type.IsSubclassOf(typeof(PaperContent))).Select(type => type.Name).Order();
        Assert.Equal(papers, PapersOf.Everything("Kestrel").Values.Select(paper => paper.GetType().Name).Order());
        Assert.Equal(papers, PapersOf.Nothing().Values.Select(paper => paper.GetType().Name).Order());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_says_what_it_was_given_and_is_tagged(string kind)
    {
        using var pdf = Read(PapersOf.Everything("Kestrel")[kind]);

        Assert.Contains("Kestrel", TextOf(pdf), StringComparison.Ordinal);
        Assert.EndsWith($": {kind}", pdf.Information.Title, StringComparison.Ordinal);
        Assert.True(pdf.Structure.Catalog.CatalogDictionary.TryGet(NameToken.Create("StructTreeRoot"), out _));
        Assert.True(pdf.TryGetBookmarks(out _));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_is_printed_from_nothing_and_says_so(string kind)
    {
        using var pdf = Read(PapersOf.Nothing()[kind]);

        Assert.Contains(kind == "shelf labels" ? "no parts yet" : "not recorded", TextOf(pdf), StringComparison.Ordinal);
    }

    [Fact]
    public void A_propshaft_order_asks_in_the_language_spoken()
    {
        using var spoken = Language.Dutch.Speak();
        using var pdf = Read(PapersOf.Nothing()["propshaft order"]);

        Assert.Contains("Klant, telefoon", TextOf(pdf), StringComparison.Ordinal);
        Assert.All(["Customer", "flange", "Joint size", "Balanced to", "Wanted by"], asked => Assert.DoesNotContain(asked, TextOf(pdf), StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void None_lets_text_run_off_the_page(string kind)
    {
        foreach (var text in new[] { new string('W', 10_000), "Ke\u0007st\u202Er\u200Bel", "Жук Ζέφυρος Šķūnis" })
        {
            var drawn = PaperWriter.Draw(PapersOf.Everything(text)[kind]);

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
        PaperWriter.Write(PapersOf.Everything("Kestrel")[kind], one);
        PaperWriter.Write(PapersOf.Everything("Kestrel")[kind], two);

        Assert.Equal(one.ToArray(), two.ToArray());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void A_comparison_has_two_to_four_columns(int options)
        => Assert.Throws<ArgumentException>(() => PaperWriter.Draw(PapersOf.Comparison with { Options = [.. Enumerable.Repeat("axle", options)] }));

    private static PdfDocument Read(PaperContent content)
    {
        using var stream = new MemoryStream();
        PaperWriter.Write(content, stream);
        return PdfDocument.Open(stream.ToArray());
    }

    private static string TextOf(PdfDocument pdf) => string.Join('\n', pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)));
}
