using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Fonts;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Tests.Layout;

public sealed class PaginatorTests
{
    private static readonly TextStyle Style = new(SheetFonts.Regular, 10, default);
    private static readonly PageSetup Setup = PageSetup.A4;

    /// <summary>With this on it, a last page is worth its paper.</summary>
    private static Spacer HalfAPage => new(Setup.Body.Height / 2);

    [Fact]
    public void A_heading_is_never_the_last_thing_on_a_page()
    {
        var almostFull = new Spacer(Setup.FirstBody.Height - 35);

        var pages = Lay(almostFull, new Section("Findings", new Paragraph("first line", Style)), HalfAPage);

        Assert.DoesNotContain("Findings", TextsOf(pages[0]));
        Assert.Equal(["Findings", "first line"], TextsOf(pages[1]));
    }

    [Fact]
    public void Blocks_are_set_closer_where_that_saves_a_last_page_with_little_on_it()
    {
        var half = (Setup.FirstBody.Height - 30) / 2;

        Assert.Single(Lay(new Spacer(half), new Spacer(half) { SpaceBefore = 40 }));
        Assert.Equal(2, Lay(new Spacer(half), new Spacer(half) { SpaceBefore = 40 }, HalfAPage).Count);
    }

    [Fact]
    public void A_picture_moves_to_the_next_page_whole()
    {
        var pages = Lay(new Spacer(Setup.FirstBody.Height - 50), new Spacer(100));

        Assert.Equal(2, pages.Count);
    }

    [Fact]
    public void What_just_fits_stays()
    {
        var pages = Lay(new Spacer(Setup.FirstBody.Height - 100), new Spacer(100));

        Assert.Single(pages);
    }

    [Fact]
    public void What_is_taller_than_a_page_and_of_one_piece_is_drawn_all_the_same()
    {
        var pages = Lay(new Paragraph("before", Style), new Spacer(5000), new Paragraph("after", Style));

        Assert.Equal(["before"], TextsOf(pages[0]));
        Assert.Equal(["after"], TextsOf(pages[2]));
    }

    [Fact]
    public void A_section_kept_together_moves_whole_but_not_when_no_page_could_hold_it()
    {
        Block[] lines = [.. Enumerable.Range(1, 10).Select(i => new Paragraph($"line {i}", Style))];
        var room = new Spacer(Setup.FirstBody.Height - 100);

        var moved = Lay(room, new Section("Cautions", lines) { KeepTogether = true });
        var tooLong = Lay(new Section("Cautions", [.. Enumerable.Range(1, 200).Select(i => new Paragraph($"line {i}", Style))]) { KeepTogether = true });

        Assert.Empty(TextsOf(moved[0]));
        Assert.Equal(11, TextsOf(moved[1]).Count);
        Assert.Equal(201, tooLong.Sum(page => TextsOf(page).Count));
        Assert.True(tooLong.Count > 1);
    }

    private static IReadOnlyList<DrawnPage> Lay(params Block[] blocks) => Paginator.Lay(Setup, blocks, new PageFrame("Kestrel", "Shop", "today"));

    private static List<string> TextsOf(DrawnPage page) => ReadAloud.TextsOf(page.Operations);

    private sealed class Spacer(double height) : Block
    {
        public override IEnumerable<FlowItem> Items(double width) => [new FlowItem(height, (_, _, _) => { })];
    }
}
