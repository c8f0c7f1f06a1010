using System.Globalization;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Reading;

public sealed class PagesTests
{
    // ISO 216: 210 × 297 mm; ANSI/ASME Y14.1: 8½ × 11 in. One inch is 72 points and 25.4 mm.
    [Theory]
    [InlineData(Content.Paper.A4, 210 / 25.4 * 72, 297 / 25.4 * 72)]
    [InlineData(Content.Paper.Letter, 8.5 * 72, 11 * 72)]
    public void A_page_has_the_size_of_its_paper(Content.Paper paper, double width, double height)
    {
        using var sheet = ReadBack.Of(KestrelPickup.Sheet with { Paper = paper });

        Assert.All(sheet.Pdf.GetPages(), page =>
        {
            Assert.Equal(width, page.Width, 0.01);
            Assert.Equal(height, page.Height, 0.01);
        });
    }

    [Theory]
    [InlineData(Content.Paper.A4)]
    [InlineData(Content.Paper.Letter)]
    public void The_whole_sample_takes_three_pages(Content.Paper paper)
    {
        using var sheet = ReadBack.Of(KestrelPickup.Sheet with { Paper = paper });

        Assert.Equal(3, sheet.Result.Pages);
        Assert.Equal(3, sheet.Pdf.NumberOfPages);
    }

    [Fact]
    public void Every_page_names_the_vehicle_and_the_printed_date_and_says_page_x_of_y()
    {
        using var sheet = ReadBack.Of(Sheets.WithHistory(100));

        Assert.True(sheet.Pages.Count > 3);
        Assert.All(sheet.Pages.Index(), page =>
        {
            Assert.Contains($"Page {page.Index + 1} of {sheet.Pages.Count}", page.Item, StringComparison.Ordinal);
            Assert.Contains("Kestrel pickup · build sheet", page.Item, StringComparison.Ordinal);
            Assert.Contains("printed 25 November 2026", page.Item, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(17)]
    [InlineData(500)]
    public void Every_history_row_is_printed_once_under_a_head(int rows)
    {
        using var sheet = ReadBack.Of(Sheets.WithHistory(rows));

        for (var i = 1; i <= rows; i++)
            Assert.Equal(2, sheet.Text.Split(string.Create(CultureInfo.InvariantCulture, $"day{i:000}")).Length);

        var pagesWithRows = sheet.Pages.Where(page => page.Contains("day", StringComparison.Ordinal)).ToList();
        Assert.All(pagesWithRows, page => Assert.Contains("What it changed", page, StringComparison.Ordinal));
    }

    [Fact]
    public void A_cell_longer_than_a_page_goes_on_under_a_repeated_head_and_loses_nothing()
    {
        var words = Enumerable.Range(1, 3000).Select(i => string.Create(CultureInfo.InvariantCulture, $"w{i:0000}")).ToList();
        using var sheet = ReadBack.Of(Sheets.Empty with { Findings = [new("watch", "Long matter", string.Join(' ', words))] });

        Assert.True(sheet.Result.Pages > 3);
        Assert.All(words, word => Assert.Equal(2, sheet.Text.Split(word).Length));
        Assert.True(sheet.Pages.Count(page => page.Contains("Verdict", StringComparison.Ordinal)) >= 3);
    }
}
