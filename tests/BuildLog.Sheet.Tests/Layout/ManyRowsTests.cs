using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Layout;

public sealed class ManyRowsTests
{
    [Theory]
    [InlineData(0, Content.Paper.A4)]
    [InlineData(1, Content.Paper.Letter)]
    [InlineData(500, Content.Paper.A4)]
    [InlineData(500, Content.Paper.Letter)]
    public void No_text_lies_on_another_and_no_row_is_lost(int rows, Content.Paper paper)
    {
        var pages = BuildSheet.Draw(Sheets.WithHistory(rows) with { Paper = paper, Reader = SheetReader.Own }).Pages;
        var texts = pages.Select(page => page.Operations.OfType<DrawText>().Where(text => text.Text.Trim().Length > 0).ToList()).ToList();

        Assert.Equal(rows, texts.Sum(page => page.Count(text => text.Text.StartsWith("day", StringComparison.Ordinal))));
        Assert.All(texts, page =>
        {
            var boxes = page.Select(BoxOf).ToList();
            for (var i = 0; i < boxes.Count; i++)
                for (var k = i + 1; k < boxes.Count; k++)
                    Assert.False(boxes[i].Overlaps(boxes[k]), $"'{page[i].Text}' lies on '{page[k].Text}'.");
        });
    }

    [Fact]
    public void Each_page_of_a_long_table_has_its_head()
    {
        var pages = BuildSheet.Draw(Sheets.WithHistory(500)).Pages;

        Assert.All(
            pages.Where(page => page.Operations.OfType<DrawText>().Any(text => text.Text.StartsWith("day", StringComparison.Ordinal))),
            page => Assert.Single(page.Operations.OfType<DrawText>(), text => text.Text == "What it changed"));
    }

    /// <summary>The letters without what hangs below the line, a hair smaller than they are.</summary>
    private static Box BoxOf(DrawText text)
    {
        var height = text.Face.CapHeight * text.Size - 0.2;
        return new Box(text.X + 0.1, text.Baseline - height, Math.Max(0, text.Right - text.X - 0.2), height);
    }
}
