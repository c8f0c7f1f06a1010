using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Layout;

public sealed class TagsTests
{
    [Fact]
    public void Every_mark_on_the_page_is_either_text_with_a_role_or_decoration()
    {
        var depth = 0;
        foreach (var operation in OperationsOf(60))
        {
            if (operation is BeginTag) depth++;
            else if (operation is EndTag) depth--;
            else if (operation is not Bookmark) Assert.True(depth > 0, $"{operation} stands outside all tags.");
        }
    }

    [Fact]
    public void Every_tag_that_opens_closes()
    {
        var operations = OperationsOf(60);

        Assert.Equal(operations.Count(operation => operation is BeginTag), operations.Count(operation => operation is EndTag));
    }

    [Fact]
    public void Every_row_of_a_table_stands_in_its_body_or_head()
    {
        var open = new Stack<Tag>();
        foreach (var operation in OperationsOf(60))
        {
            if (operation is EndTag) open.Pop();
            if (operation is not BeginTag { Info.Tag: var tag }) continue;

            if (tag == Tag.TR) Assert.Contains(open.Peek(), new[] { Tag.TBody, Tag.THead });
            if (tag is Tag.TBody or Tag.THead) Assert.Equal(Tag.Table, open.Peek());
            if (tag is Tag.TD or Tag.TH) Assert.Equal(Tag.TR, open.Peek());
            open.Push(tag);
        }
    }

    [Fact]
    public void A_head_that_repeats_is_read_aloud_once()
    {
        Assert.Single(ReadAloud.TextsOf(OperationsOf(60)), "What it changed");
    }

    [Fact]
    public void The_page_s_frame_is_not_read_aloud()
    {
        Assert.DoesNotContain(ReadAloud.TextsOf(OperationsOf(60)), text => text.StartsWith("Page ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_chart_has_words_for_those_who_cannot_see_it()
    {
        Assert.All(OperationsOf(2).OfType<BeginTag>().Where(tag => tag.Info.Tag == Tag.Figure), tag => Assert.False(string.IsNullOrWhiteSpace(tag.Info.AlternativeText)));
        var figure = OperationsOf(2).OfType<BeginTag>().Single(tag => tag.Info.AlternativeText?.StartsWith("Chart of engine speed", StringComparison.Ordinal) == true);

        Assert.Contains("3 from 25 to 114 km/h at 1000 to 4500 rev/min", figure.Info.AlternativeText, StringComparison.Ordinal);
        Assert.Contains("goal: 110 km/h", figure.Info.AlternativeText, StringComparison.Ordinal);
    }

    private static List<Operation> OperationsOf(int historyRows) =>
        [.. BuildSheet.Draw(Sheets.WithHistory(historyRows)).Pages.SelectMany(page => page.Operations)];
}
